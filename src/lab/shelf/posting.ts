import { failed, type Instant, instantText, ok, type Problem, problem, type Result } from '../../kernel/index.js'
import type { ContainerStatement, EntryTold, ProductStatement } from '../../wire/index.js'
import type { Context } from '../context.js'
import type { Rooms } from '../store.js'
import { fromLedger, NOTHING, toRolls } from './amounts.js'
import type { Container, Demand, LedgerEntry, Leg, Lot, Portion } from './port.js'

export const CONTAINER = 'container'

/** A container with what is said of it, and what stands in it. */
export interface Standing {
  readonly container: Container
  readonly statement: ContainerStatement
  readonly lot: Lot | null
  /** What it holds: of its lot, or of its package; null for an empty bottle and for a jug. */
  readonly product: ProductStatement | null
}

export const nameOf = ({ statement, product }: Pick<Standing, 'statement' | 'product'>): string =>
  statement.kind === 'package' ? statement.name || (product?.name ?? 'the package') : statement.name

export async function standingContainer(rooms: Rooms, id: string, field: string): Promise<Result<Standing>> {
  const [container, said] = [await rooms.shelf.container(id), await rooms.shelf.containers.newest(id)]
  if (container === null || said === null) return failed(problem('record.not-found', { what: CONTAINER, id }, field))
  if (said.removed) return failed(problem('record.removed', { what: CONTAINER }, field))
  const { statement } = said
  const lot = container.lotId === null ? null : await rooms.shelf.lot(container.lotId)
  const productId = statement.kind === 'package' ? statement.product_id : (lot?.productId ?? null)
  const product = productId === null ? null : ((await rooms.products.newest(productId))?.statement ?? null)
  return ok({ container, statement, lot, product })
}

/** One that holds a bath or a package's contents; an empty one and a jug are refused. */
export async function holdingContainer(
  rooms: Rooms,
  id: string,
  field: string,
): Promise<Result<Standing & { product: ProductStatement }>> {
  const found = await standingContainer(rooms, id, field)
  if (!found.ok) return found
  const { product, container } = found.value
  if (found.value.statement.kind === 'jug')
    return failed(problem('shelf.jug-holds-waste', { name: nameOf(found.value) }, field))
  if (container.held <= 0 || product === null)
    return failed(problem('shelf.empty', { name: nameOf(found.value) }, field))
  return ok({ ...found.value, product })
}

export async function bottleFor(rooms: Rooms, id: string, field: string): Promise<Result<Standing>> {
  const found = await standingContainer(rooms, id, field)
  if (!found.ok || found.value.statement.kind === 'bottle') return found
  return failed(problem('shelf.not-a-bottle', { name: nameOf(found.value) }, field))
}

/** When something happened to these containers: now, or when it is said to have been, after all that happened before. */
export function happenedAt(context: Context, asked: string | null, containers: readonly Container[]): Result<Instant> {
  const now = context.clock.now()
  const last = Math.max(0, ...containers.filter(({ seq }) => seq > 0).map(({ changedAt }) => changedAt))
  if (asked === null) return ok(Math.max(now, last + 1))
  const at = Date.parse(asked)
  if (at > now) return failed(problem('shelf.in-future', { at: asked }, 'at'))
  if (at < last) return failed(problem('shelf.before-last', { last: instantText(last) }, 'at'))
  return ok(Math.max(at, last + 1))
}

/** The containers that an entry books in. */
export async function containersOf(rooms: Rooms, legs: readonly Pick<Leg, 'containerId'>[]): Promise<Container[]> {
  const ids = [...new Set(legs.map(({ containerId }) => containerId))]
  const found = new Map((await rooms.shelf.some(ids)).map((container) => [container.id, container]))
  return ids.flatMap((id) => found.get(id) ?? [])
}

/** More is wanted than there is. */
export function notEnough(standing: Standing, wanted: number, field?: string): Problem {
  const { unit, held } = standing.container
  const details = {
    name: nameOf(standing),
    unit: unitWord(unit),
    wanted: fromLedger(wanted),
    held: fromLedger(held),
  }
  return problem('shelf.not-enough', details, field)
}

const unitWord = (unit: Container['unit']): string => (unit === 'ml' ? 'mL' : 'g')

export const legOf = (container: Container, change: Partial<Portion>, lotId = container.lotId): Leg => ({
  ...NOTHING,
  ...change,
  containerId: container.id,
  lotId,
})

interface Booking {
  readonly at: Instant
  readonly told: EntryTold
  readonly note: string
  readonly legs: readonly Leg[]
  readonly demands?: Readonly<Record<string, Demand>>
  readonly retracts?: string
}

/** Books an entry, or says which container would not have it and why; then nothing of the write is kept. */
export async function book(context: Context, rooms: Rooms, booking: Booking): Promise<Result<LedgerEntry>> {
  const { at, told, note, legs, demands = {}, retracts = null } = booking
  const entry: LedgerEntry = {
    id: context.ids.next(),
    at,
    notedAt: context.clock.now(),
    by: context.actor.id,
    told,
    note,
    legs,
    retracts,
  }
  const posted = await rooms.shelf.post({ entry, demands })
  if (posted !== 'posted') return refusal(rooms, legs, posted.refusedBy, demands)
  await rooms.feed.tell({ kind: 'shelf', subject: entry.id }, context.clock.now())
  return ok(entry)
}

async function refusal(
  rooms: Rooms,
  legs: readonly Leg[],
  id: string,
  demands: Readonly<Record<string, Demand>>,
): Promise<Result<never>> {
  const found = await standingContainer(rooms, id, CONTAINER)
  if (!found.ok) return found
  const { container, lot } = found.value
  const leg = legs.find(({ containerId }) => containerId === id) as Leg
  const name = nameOf(found.value)
  const carries = demands[id]?.carries
  if (container.held + leg.held < 0) return failed(notEnough(found.value, -leg.held))
  if (container.room !== null && container.held + leg.held > container.room)
    return failed(
      problem('shelf.too-full', {
        name,
        unit: unitWord(container.unit),
        wanted: fromLedger(leg.held),
        free: fromLedger(container.room - container.held),
      }),
    )
  if (carries !== undefined && container.worked + leg.worked > carries)
    return failed(await carriesNoMore(rooms, found.value, leg, carries))
  if (container.lotId !== null && container.lotId !== leg.lotId)
    return failed(problem('shelf.other-lot', { name, code: lot?.code ?? '' }))
  return failed(problem('shelf.changed-meanwhile', { name }))
}

/** Refused with the ways out: fewer rolls, another lot that carries them, or a fresh mix. */
export async function carriesNoMore(rooms: Rooms, standing: Standing, leg: Leg, carries: number) {
  const left = toRolls(Math.max(0, carries - standing.container.worked))
  const others: string[] = []
  for (const other of await rooms.shelf.all()) {
    if (other.lotId === null || other.id === standing.container.id || other.held <= 0) continue
    const there = await standingContainer(rooms, other.id, CONTAINER)
    if (there.ok && there.value.product?.role === standing.product?.role) others.push(nameOf(there.value))
  }
  const out =
    others.length === 0 ? 'mix fresh' : `take ${others.slice(0, 3).join(' or ')} if it carries them, or mix fresh`
  return problem('shelf.carries-no-more', {
    name: nameOf(standing),
    left: Math.floor(left * 100) / 100,
    asked: Math.round(toRolls(leg.worked) * 100) / 100,
    out,
  })
}
