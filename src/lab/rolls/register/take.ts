import { failed, nameKey, ok, problem, type Result } from '../../../kernel/index.js'
import type { ImportedRegister, RollRegister } from '../../../wire/index.js'
import type { Context } from '../../context.js'
import type { Stated, StatementsPort } from '../../statements.js'
import type { Change, Rooms } from '../../store.js'
import type { NumberCounter, RollEvent, RollRecord } from '../port.js'
import { whereabouts } from '../states.js'

/**
 * Takes a register in, all of it or nothing. Rolls, orders and films that are there already, by their ids, stay as they
 * are here, so that a register taken in twice is there once. A film that goes by a name that is kept here is left out.
 */
export async function importRegister(
  context: Context,
  rooms: Rooms,
  register: RollRegister,
): Promise<Result<ImportedRegister>> {
  const sound = checkRegister(register)
  if (!sound.ok) return sound
  const films = await takeFilms(context, rooms, register.films)
  const orders = await takeOrders(context, rooms, register.orders)
  const rolls = await takeRolls(context, rooms, register.rolls)
  if (!rolls.ok) return rolls
  if (register.pattern !== null && (await rooms.rolls.pattern()) === null)
    await rooms.rolls.setPattern(register.pattern)
  for (const { kind, year, last } of countersOf(register)) await rooms.rolls.raiseCounter(kind, year, last)
  return ok({ rolls: rolls.value, orders, films, there: register.rolls.length - rolls.value })
}

/** The last number of each kind and year; a register made by hand may count less than its own rolls. */
function countersOf({ counters, rolls }: RollRegister): NumberCounter[] {
  const all: NumberCounter[] = [
    ...counters,
    ...rolls.map(({ year, n }) => ({ kind: 'roll' as const, year, last: n })),
    ...rolls.flatMap(({ twin }) => (twin === null ? [] : [{ kind: 'twin' as const, year: 0, last: twin }])),
  ]
  const highest = new Map<string, NumberCounter>()
  for (const counter of all) {
    const key = `${counter.kind} ${counter.year}`
    if (counter.last > (highest.get(key)?.last ?? 0)) highest.set(key, counter)
  }
  return [...highest.values()]
}

/** Every id once, every number once, and nothing that leads nowhere. */
function checkRegister({ films, orders, rolls }: RollRegister): Result<null> {
  const wrong = (where: string, reason: string) => failed(problem('register.unreadable', { where, reason }))
  const steps = rolls.flatMap((roll) => roll.steps)
  for (const [what, ids] of [
    ['film', films.map(({ id }) => id)],
    ['order', orders.map(({ id }) => id)],
    ['roll', rolls.map(({ id }) => id)],
    ['step', steps.map(({ id }) => id)],
    ['roll', rolls.map(({ number }) => number)],
    ['roll', rolls.map(({ year, n }) => `${year}-${n}`)],
  ] as const) {
    const twice = firstTwice(ids)
    if (twice !== undefined) return wrong(`${what} ${twice}`, 'it stands there twice')
  }
  const known = new Set(orders.map(({ id }) => id))
  for (const { number, order_id, steps: own } of rolls) {
    if (order_id !== null && !known.has(order_id)) return wrong(`roll ${number}`, 'its order is not in the register')
    const ids = new Set(own.map(({ id }) => id))
    const lost = own.find(({ state, retracts }) => (retracts === null ? state === null : !ids.has(retracts)))
    if (lost !== undefined) return wrong(`roll ${number}`, `its step ${lost.id} takes back nothing of it`)
  }
  return ok(null)
}

function firstTwice(ids: readonly string[]): string | undefined {
  const seen = new Set<string>()
  return ids.find((id) => seen.has(id) || !seen.add(id))
}

type Entry<S> = { readonly id: string; readonly saved_at: string; readonly saved_by: string; readonly statement: S }

const recordOf = <S>({ id, saved_at, saved_by, statement }: Entry<S>): Stated<S> => ({
  id,
  revision: 1,
  savedAt: Date.parse(saved_at),
  savedBy: saved_by,
  removed: false,
  statement,
})

async function takeStated<S>(
  context: Context,
  rooms: Rooms,
  port: StatementsPort<S>,
  kind: Change['kind'],
  entry: Entry<S>,
): Promise<boolean> {
  if ((await port.newest(entry.id)) !== null) return false
  await port.addRevision(recordOf(entry))
  await rooms.feed.tell({ kind, subject: entry.id }, context.clock.now())
  return true
}

async function takeFilms(context: Context, rooms: Rooms, films: RollRegister['films']): Promise<number> {
  const names = new Set((await rooms.films.all()).map(({ statement }) => nameKey(statement.name)))
  let taken = 0
  for (const film of films) {
    const name = nameKey(film.statement.name)
    if (!names.has(name) && (await takeStated(context, rooms, rooms.films, 'films', film))) taken++
    names.add(name)
  }
  return taken
}

async function takeOrders(context: Context, rooms: Rooms, orders: RollRegister['orders']): Promise<number> {
  let taken = 0
  for (const order of orders) {
    if (!(await takeStated(context, rooms, rooms.orders, 'orders', order))) continue
    taken++
    const { counted_out: counted } = order
    if (counted !== null) await rooms.orders.countOut({ orderId: order.id, ...counted, at: Date.parse(counted.at) })
  }
  return taken
}

async function takeRolls(context: Context, rooms: Rooms, rolls: RollRegister['rolls']): Promise<Result<number>> {
  const here = await idsHere(rooms, rolls)
  let taken = 0
  for (const entry of rolls) {
    if (here.has(entry.id)) continue
    const events = entry.steps.map((step) => eventOf(entry.id, step))
    const roll = rollOf(entry, events)
    if ((await rooms.rolls.add(roll)) === 'taken')
      return failed(problem('register.number-taken', { number: entry.number }))
    for (const event of events) await rooms.rolls.addEvent(event, roll)
    await rooms.feed.tell({ kind: 'rolls', subject: roll.id }, context.clock.now())
    taken++
  }
  return ok(taken)
}

/** Rolls that are looked up at once. */
const AT_ONCE = 500

/** Those of the rolls that are on this bench already. */
async function idsHere(rooms: Rooms, rolls: RollRegister['rolls']): Promise<ReadonlySet<string>> {
  const here = new Set<string>()
  for (let from = 0; from < rolls.length; from += AT_ONCE)
    for (const { id } of await rooms.rolls.hold(rolls.slice(from, from + AT_ONCE).map((roll) => roll.id))) here.add(id)
  return here
}

function rollOf(entry: RollRegister['rolls'][number], events: readonly RollEvent[]): RollRecord {
  const takenInAt = Date.parse(entry.taken_in_at)
  return {
    id: entry.id,
    number: { year: entry.year, n: entry.n, text: entry.number },
    twin: entry.twin,
    takenInAt,
    takenInBy: entry.taken_in_by,
    revision: 1,
    orderId: entry.order_id,
    statement: entry.statement,
    ...whereabouts(takenInAt, events),
  }
}

type Step = RollRegister['rolls'][number]['steps'][number]

const eventOf = (rollId: string, { at, run_id, batch_id, ...step }: Step): RollEvent => ({
  ...step,
  rollId,
  at: Date.parse(at),
  runId: run_id,
  batchId: batch_id,
})
