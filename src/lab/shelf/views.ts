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
import { type Contents, EMPTY, foldLedger, shapeOf } from './ledger.js'
import { leftIn, leftInPackage } from './left.js'
import type { Bath } from './limits.js'
import type { Container, LedgerEntry, Lot } from './port.js'
import { containersOf } from './posting.js'

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

/** Everything that these containers need to be shown. */
export async function knownOf(rooms: Rooms, containers: readonly Container[]): Promise<Known> {
  const said = new Map((await rooms.shelf.containers.all()).map((one) => [one.id, one]))
  const lotIds = [...new Set(containers.flatMap(({ lotId }) => lotId ?? []))]
  const lots = new Map((await rooms.shelf.lots(lotIds)).map((lot) => [lot.id, lot]))
  const productIds = new Set([...lots.values()].map(({ productId }) => productId))
  for (const { statement } of said.values()) if (statement.kind === 'package') productIds.add(statement.product_id)
  const products = await productsOf(rooms, productIds)
  const shapes = new Map([...said].map(([id, { statement }]) => [id, shapeOf(statement)]))
  const entries = await rooms.shelf.entriesOfLots(lotIds)
  const contents = new Map<string, Contents>()
  for (const lotId of lotIds) {
    const own = entries.filter(({ legs }) => legs.some((leg) => leg.lotId === lotId))
    for (const [id, state] of foldLedger(own, shapes)) if (state.lotId === lotId) contents.set(id, state)
  }
  const known = { said, containers, lots, products, contents }
  return { ...known, fresh: await freshClearing(rooms, [...lots.values()]) }
}

/** What is said of these products; a removed one still stands on the shelf. */
export async function productsOf(rooms: Rooms, ids: Iterable<string>): Promise<Map<string, ProductStatement>> {
  const kept = new Map((await rooms.products.all()).map((product) => [product.id, product.statement]))
  const products = new Map<string, ProductStatement>()
  for (const id of new Set(ids)) {
    const product = kept.get(id) ?? (await rooms.products.newest(id))?.statement
    if (product !== undefined) products.set(id, product)
  }
  return products
}

/** The newest clearing time of a fresh bath, by product and family of film. */
async function freshClearing(rooms: Rooms, lots: readonly Lot[]): Promise<Map<string, Bath['fresh']>> {
  const fresh = new Map<string, Bath['fresh']>()
  const productOf = new Map(lots.map(({ id, productId }) => [id, productId]))
  const tests = await rooms.shelf.entriesTold('tested')
  const retracted = new Set((await rooms.shelf.entriesTold('taken-back')).map(({ retracts }) => retracts))
  const others = tests
    .flatMap(({ legs }) => legs.flatMap(({ lotId }) => lotId ?? []))
    .filter((id) => !productOf.has(id))
  for (const lot of await rooms.shelf.lots([...new Set(others)])) productOf.set(lot.id, lot.productId)
  for (const { id, told, legs } of tests) {
    if (told.kind !== 'tested' || told.test.of !== 'clearing' || !told.test.fresh || retracted.has(id)) continue
    const productId = productOf.get(legs[0]?.lotId ?? '')
    if (productId === undefined) continue
    fresh.set(productId, { ...(fresh.get(productId) ?? NEVER), [told.test.family]: told.test.clears_s })
  }
  return fresh
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
    return { ...record, lot: null, product: product?.name ?? '', since: null, station: null, left }
  }
  const lot = container.lotId === null ? undefined : known.lots.get(container.lotId)
  const product = lot === undefined ? undefined : known.products.get(lot.productId)
  if (lot === undefined || product === undefined)
    return { ...record, lot: null, product: '', since: null, station: null, left: null }
  const contents = known.contents.get(container.id) ?? EMPTY
  const fresh = known.fresh.get(lot.productId) ?? NEVER
  return {
    ...record,
    lot: headOf(lot, product),
    product: product.name,
    since: contents.since === null ? null : instantText(contents.since),
    station: contents.station,
    left: leftIn({ contents, product, parts: lot.parts, fresh }, now),
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
  const touched = await containersOf(rooms, entry)
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
  const all = await rooms.shelf.all()
  const here = all.filter(({ lotId }) => lotId === lot.id)
  const known = await knownOf(rooms, here)
  const product = (await rooms.products.newest(lot.productId))?.statement
  if (product === undefined) throw new Error(`Lot ${lot.code} is of product ${lot.productId}, which is not there.`)
  const entries = await rooms.shelf.entriesOfLots([lot.id])
  const retracted = new Set(entries.map(({ retracts }) => retracts))
  const units = new Map(all.map(({ id, unit }) => [id, unit]))
  return ok({
    lot: headOf(lot, product),
    containers: here.flatMap((container) => onShelf(context, known, container) ?? []),
    history: entries.map((entry) => entryView(entry, (id) => units.get(id) ?? 'ml', retracted.has(entry.id))),
  })
}
