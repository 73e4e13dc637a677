import type { Ids } from '../../kernel/index.js'
import type { Container, LedgerEntry, Leg, Lot, Rooms } from '../../lab/index.js'
import { type ContainerStatement, type ProductStatement, schemas } from '../../wire/index.js'

export const PRODUCT: ProductStatement = schemas.ProductStatement.parse({
  name: 'Ammonium fixer',
  role: 'fixer',
  use: 'reusable',
  fixer: { salt: 'ammonium-thiosulfate', alkaline: false },
})

export const bottleNamed = (name: string): ContainerStatement =>
  schemas.ContainerStatement.parse({ kind: 'bottle', name, holds_ml: 1000 })

export const lotOf = (id: string, productId: string, at: number, changes: Partial<Lot> = {}): Lot => ({
  id,
  code: `26-${id.slice(-6)}`,
  productId,
  parts: [1, 4.5],
  mixedAt: at,
  mixedBy: 'owner',
  mixed: 1_000_000,
  note: 'from tap water, 100 %',
  ...changes,
})

export const containerOf = (id: string, at: number, changes: Partial<Container> = {}): Container => ({
  id,
  kind: 'bottle',
  unit: 'ml',
  room: 1_000_000,
  lotId: null,
  held: 0,
  basis: 0,
  worked: 0,
  met: 0,
  seq: 0,
  changedAt: at,
  ...changes,
})

export const legTo = (containerId: string, lotId: string | null, held: number, changes: Partial<Leg> = {}): Leg => ({
  containerId,
  lotId,
  held,
  basis: held,
  worked: 0,
  met: 0,
  ...changes,
})

export const entryAt = (
  id: string,
  at: number,
  legs: readonly Leg[],
  changes: Partial<LedgerEntry> = {},
): LedgerEntry => ({
  id,
  at,
  notedAt: at + 1,
  by: 'owner',
  told: { kind: 'moved' },
  note: '',
  legs,
  retracts: null,
  ...changes,
})

/** A product, a lot in a bottle with room for `room`, and what the ledger says of it. */
export async function filledBottle(rooms: Rooms, ids: Ids, at: number, held: number) {
  const [productId, bottleId, lotId] = [ids.next(), ids.next(), ids.next()]
  const stated = { revision: 1, savedAt: at, savedBy: 'owner', removed: false }
  await rooms.products.addRevision({ ...stated, id: productId, statement: PRODUCT })
  await rooms.shelf.containers.addRevision({ ...stated, id: bottleId, statement: bottleNamed('Brown 1') })
  await rooms.shelf.addContainer(containerOf(bottleId, at))
  const lot = lotOf(lotId, productId, at)
  await rooms.shelf.addLot(lot, PRODUCT.name)
  const mixed = entryAt(ids.next(), at, [legTo(bottleId, lotId, held)], { told: { kind: 'mixed', parts: [1, 4] } })
  await rooms.shelf.post({ entry: mixed, demands: {} })
  return { productId, bottleId, lot, mixed }
}
