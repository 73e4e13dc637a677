import { failed, instantText, ok, problem, type Result } from '../../kernel/index.js'
import type {
  ContainerRecord,
  ContainerStatement,
  LotHead,
  OnShelf,
  Posted,
  ProductStatement,
  ShelfEntry,
} from '../../wire/index.js'
import type { Context } from '../context.js'
import { type Stated, standingOf } from '../statements.js'
import type { Rooms } from '../store.js'
import { fromLedger, toRolls } from './amounts.js'
import { costOfLot } from './costs.js'
import { type Contents, EMPTY, foldLedger, shapeOf } from './ledger.js'
import { leftIn, leftInPackage } from './left.js'
import type { Bath } from './limits.js'
import type { Container, LedgerEntry, Lot } from './port.js'
import { containersOf } from './posting.js'
import { productsOf } from './products.js'

export const recordOf = (container: Container, said: Stated<ContainerStatement>): ContainerRecord => ({
  ...standingOf(said),
  statement: said.statement,
  unit: container.unit,
  held: fromLedger(container.held),
  lot_id: container.lotId,
})

export const headOf = (lot: Lot, product: ProductStatement): LotHead => ({
  id: lot.id,
  code: lot.code,
  product_id: lot.productId,
  product: product.name,
  role: product.role,
  parts: lot.parts === null ? null : [...lot.parts],
  mixed_at: instantText(lot.mixedAt),
  mixed_by: lot.mixedBy,
  mixed_ml: fromLedger(lot.mixed),
  note: lot.note,
})

export function entryView(
  entry: LedgerEntry,
  unitOf: (containerId: string) => Container['unit'],
  retracted: boolean,
): ShelfEntry {
  return {
    id: entry.id,
    at: instantText(entry.at),
    by: entry.by,
    told: entry.told,
    note: entry.note,
    legs: entry.legs.map((leg) => ({
      container_id: leg.containerId,
      lot_id: leg.lotId,
      unit: unitOf(leg.containerId),
      change: fromLedger(leg.held),
      rolls: toRolls(leg.met),
    })),
    retracts: entry.retracts,
    retracted,
  }
}

/** What is looked up once to show containers: what is said of them, lots, products, and fresh clearing times. */
export interface Known {
  readonly said: ReadonlyMap<string, Stated<ContainerStatement>>
  readonly containers: readonly Container[]
  readonly lots: ReadonlyMap<string, Lot>
  readonly products: ReadonlyMap<string, ProductStatement>
  readonly contents: ReadonlyMap<string, Contents>
  readonly fresh: ReadonlyMap<string, Bath['fresh']>
}

const NEVER: Bath['fresh'] = { ordinary: null, tabular: null, 'high-iodide': null }

/** Everything that these containers need to be shown, and no more: a booking touches one or two. */
export async function knownOf(rooms: Rooms, containers: readonly Container[]): Promise<Known> {
  const lotIds = [...new Set(containers.flatMap(({ lotId }) => lotId ?? []))]
  const lots = new Map((await rooms.shelf.lots(lotIds)).map((lot) => [lot.id, lot]))
  const entries = await rooms.shelf.entriesOfLots(lotIds)
  // Where a portion stood before it was poured over counts too.
  const stood = [
    ...containers.map(({ id }) => id),
    ...entries.flatMap(({ legs }) => legs.map((leg) => leg.containerId)),
  ]
  const said = new Map((await rooms.shelf.containers.newestOf([...new Set(stood)])).map((one) => [one.id, one]))
  const productIds = new Set([...lots.values()].map(({ productId }) => productId))
  for (const { statement } of said.values()) if (statement.kind === 'package') productIds.add(statement.product_id)
  const products = await productsOf(rooms, productIds)
  const shapes = new Map([...said].map(([id, { statement }]) => [id, shapeOf(statement)]))
  const contents = new Map<string, Contents>()
  for (const lotId of lotIds) {
    const own = entries.filter(({ legs }) => legs.some((leg) => leg.lotId === lotId))
    for (const [id, state] of foldLedger(own, shapes)) if (state.lotId === lotId) contents.set(id, state)
  }
  const known = { said, containers, lots, products, contents }
  return {
    ...known,
    fresh: await freshClearing(rooms, [...new Set([...lots.values()].map(({ productId }) => productId))]),
  }
}

/** The newest clearing time of a fresh bath, by product and family of film. */
async function freshClearing(rooms: Rooms, productIds: readonly string[]): Promise<Map<string, Bath['fresh']>> {
  const fresh = new Map<string, Bath['fresh']>()
  for (const { productId, entry } of await rooms.shelf.testsOfProducts(productIds)) {
    const { told } = entry
    if (told.kind !== 'tested' || told.test.of !== 'clearing' || !told.test.fresh) continue
    fresh.set(productId, { ...(fresh.get(productId) ?? NEVER), [told.test.family]: told.test.clears_s })
  }
  return fresh
}

/** A bath with what its ledger and its product say of it; null for a package, a jug and an empty bottle. */
export function bathIn(known: Known, container: Container): (Bath & { readonly lot: Lot }) | null {
  const lot = container.lotId === null ? undefined : known.lots.get(container.lotId)
  const product = lot === undefined ? undefined : known.products.get(lot.productId)
  if (lot === undefined || product === undefined) return null
  const contents = known.contents.get(container.id) ?? EMPTY
  return { contents, product, parts: lot.parts, fresh: known.fresh.get(lot.productId) ?? NEVER, lot }
}

/** A container as the shelf shows it. */
export function onShelf(context: Context, known: Known, container: Container): OnShelf | null {
  const said = known.said.get(container.id)
  if (said === undefined) return null
  const now = context.clock.now()
  const { statement } = said
  const record = recordOf(container, said)
  if (statement.kind === 'package') {
    const product = known.products.get(statement.product_id)
    const left = product === undefined ? null : leftInPackage(statement, product, record.held, now)
    return { ...record, lot: null, product: product?.name ?? '', since: null, station: null, left, book: null }
  }
  const bath = bathIn(known, container)
  if (bath === null) return { ...record, lot: null, product: '', since: null, station: null, left: null, book: null }
  const { contents, product, lot } = bath
  return {
    ...record,
    lot: headOf(lot, product),
    product: product.name,
    since: contents.since === null ? null : instantText(contents.since),
    station: contents.station,
    left: leftIn(bath, now),
    book: {
      added_ml: fromLedger(contents.added),
      discarded_ml: fromLedger(contents.discarded),
      carried_out_ml: fromLedger(contents.carriedOut),
    },
  }
}

/** What an entry did, with the containers as they stand after it; or why it was not booked. */
export async function posted(
  context: Context,
  rooms: Rooms,
  booked: Result<LedgerEntry>,
  lot: Lot | null = null,
): Promise<Result<Posted>> {
  if (!booked.ok) return booked
  const entry = booked.value
  const touched = await containersOf(rooms, entry.legs)
  const known = await knownOf(rooms, touched)
  const product = lot === null ? null : ((await rooms.products.newest(lot.productId))?.statement ?? null)
  return ok({
    entry: entryView(entry, (id) => touched.find((one) => one.id === id)?.unit ?? 'ml', false),
    containers: touched.flatMap((container) => onShelf(context, known, container) ?? []),
    lot: lot === null || product === null ? null : headOf(lot, product),
  })
}

/** A lot with where it stands and everything that happened to it, oldest first. */
export async function lotView(context: Context, rooms: Rooms, lot: Lot | null, what: string) {
  if (lot === null) return failed(problem('shelf.lot-unknown', { code: what }))
  const here = await rooms.shelf.holding(lot.id)
  const known = await knownOf(rooms, here)
  const product = (await rooms.products.newest(lot.productId))?.statement
  if (product === undefined) throw new Error(`Lot ${lot.code} is of product ${lot.productId}, which is not there.`)
  const entries = await rooms.shelf.entriesOfLots([lot.id])
  const retracted = new Set(entries.map(({ retracts }) => retracts))
  const touched = new Set(entries.flatMap(({ legs }) => legs.map(({ containerId }) => containerId)))
  const units = new Map((await rooms.shelf.some([...touched])).map(({ id, unit }) => [id, unit]))
  return ok({
    lot: headOf(lot, product),
    containers: here.flatMap((container) => onShelf(context, known, container) ?? []),
    cost: await costOfLot(rooms, lot, product, entries),
    history: entries.map((entry) => entryView(entry, (id) => units.get(id) ?? 'ml', retracted.has(entry.id))),
  })
}
