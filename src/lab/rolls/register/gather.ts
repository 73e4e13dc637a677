import { instantText, nameKey } from '../../../kernel/index.js'
import type { FilmStatement, OrderStatement, RollRegister } from '../../../wire/index.js'
import type { Stated } from '../../statements.js'
import type { Rooms } from '../../store.js'
import type { CountedOut } from '../orders-port.js'
import type { RollEvent, RollRecord } from '../port.js'

/** Rolls whose steps are looked up at once. */
const AT_ONCE = 500

/** The whole register as it stands: rolls in the order of their numbers, the rest in the order of their ids. */
export async function rollRegister(rooms: Rooms): Promise<RollRegister> {
  const rolls = await rooms.rolls.all()
  const events = await eventsOf(rooms, rolls)
  const orders = byId(await rooms.orders.all())
  const counts = new Map((await rooms.orders.countsOut(orders.map(({ id }) => id))).map((one) => [one.orderId, one]))
  const standing = new Set(orders.map(({ id }) => id))
  const named = new Set(rolls.map(({ statement }) => nameKey(statement.film)))
  const films = byId(await rooms.films.all()).filter(({ statement }) => named.has(nameKey(statement.name)))
  return {
    register: 'rolls',
    version: 1,
    pattern: await rooms.rolls.pattern(),
    counters: await rooms.rolls.counters(),
    films: films.map(filmEntry),
    orders: orders.map((order) => orderEntry(order, counts.get(order.id))),
    rolls: rolls.map((roll) => rollEntry(roll, standing, events.get(roll.id) ?? [])),
  }
}

async function eventsOf(rooms: Rooms, rolls: readonly RollRecord[]): Promise<Map<string, RollEvent[]>> {
  const events = new Map<string, RollEvent[]>()
  for (let from = 0; from < rolls.length; from += AT_ONCE)
    for (const event of await rooms.rolls.events(rolls.slice(from, from + AT_ONCE).map(({ id }) => id)))
      events.set(event.rollId, [...(events.get(event.rollId) ?? []), event])
  return events
}

const byId = <S>(records: readonly Stated<S>[]): Stated<S>[] => [...records].sort((a, b) => (a.id < b.id ? -1 : 1))

const entryOf = <S>({ id, savedAt, savedBy, statement }: Stated<S>) => ({
  id,
  saved_at: instantText(savedAt),
  saved_by: savedBy,
  statement,
})

const filmEntry = (film: Stated<FilmStatement>): RollRegister['films'][number] => entryOf(film)

const orderEntry = (
  order: Stated<OrderStatement>,
  counted: CountedOut | undefined,
): RollRegister['orders'][number] => ({
  ...entryOf(order),
  counted_out: counted === undefined ? null : { count: counted.count, at: instantText(counted.at), by: counted.by },
})

/** An order that was taken back belongs to nobody any more. */
const rollEntry = (
  roll: RollRecord,
  orders: ReadonlySet<string>,
  events: readonly RollEvent[],
): RollRegister['rolls'][number] => ({
  id: roll.id,
  number: roll.number.text,
  year: roll.number.year,
  n: roll.number.n,
  twin: roll.twin,
  order_id: roll.orderId !== null && orders.has(roll.orderId) ? roll.orderId : null,
  taken_in_at: instantText(roll.takenInAt),
  taken_in_by: roll.takenInBy,
  statement: roll.statement,
  steps: events.map(({ id, at, by, state, runId, hook, reason, batchId, retracts }) => ({
    id,
    at: instantText(at),
    by,
    state,
    run_id: runId,
    hook,
    reason,
    batch_id: batchId,
    retracts,
  })),
})
