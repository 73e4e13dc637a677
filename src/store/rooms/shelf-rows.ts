import { nameKey } from '../../kernel/index.js'
import type { Container, LedgerEntry, Leg, Lot, Portion } from '../../lab/index.js'
import type { ContainerRow, LotRow, PortionColumns, ShelfEntryRow, ShelfLegRow } from '../schema-shelf.js'

const portionOf = ({ held, basis, worked, met }: Portion | PortionColumns): Portion => ({ held, basis, worked, met })

export const containerRow = (bench: string, container: Container): ContainerRow => ({
  bench_id: bench,
  id: container.id,
  kind: container.kind,
  unit: container.unit,
  room: container.room,
  lot_id: container.lotId,
  ...portionOf(container),
  seq: container.seq,
  changed_at: container.changedAt,
})

export const containerRecord = (row: ContainerRow): Container => ({
  id: row.id,
  kind: row.kind as Container['kind'],
  unit: row.unit as Container['unit'],
  room: row.room,
  lotId: row.lot_id,
  ...portionOf(row),
  seq: row.seq,
  changedAt: row.changed_at,
})

export const lotRow = (bench: string, lot: Lot, product: string): LotRow => ({
  bench_id: bench,
  id: lot.id,
  code: lot.code,
  product_id: lot.productId,
  parts: lot.parts === null ? null : JSON.stringify(lot.parts),
  mixed_at: lot.mixedAt,
  mixed_by: lot.mixedBy,
  mixed: lot.mixed,
  note: lot.note,
  searched: nameKey([lot.code, product, lot.note].join('\n')),
})

export const lotRecord = (row: LotRow): Lot => ({
  id: row.id,
  code: row.code,
  productId: row.product_id,
  parts: row.parts === null ? null : (JSON.parse(row.parts) as number[]),
  mixedAt: row.mixed_at,
  mixedBy: row.mixed_by,
  mixed: row.mixed,
  note: row.note,
})

export const entryRow = (bench: string, entry: LedgerEntry): ShelfEntryRow => ({
  bench_id: bench,
  id: entry.id,
  at: entry.at,
  noted_at: entry.notedAt,
  done_by: entry.by,
  kind: entry.told.kind,
  told: JSON.stringify(entry.told),
  note: entry.note,
  retracts: entry.retracts,
})

export const legRows = (bench: string, entry: LedgerEntry): ShelfLegRow[] =>
  entry.legs.map((leg, position) => ({
    bench_id: bench,
    entry_id: entry.id,
    position,
    container_id: leg.containerId,
    lot_id: leg.lotId,
    ...portionOf(leg),
  }))

const legRecord = (row: ShelfLegRow): Leg => ({
  containerId: row.container_id,
  lotId: row.lot_id,
  ...portionOf(row),
})

export const entryRecord = (row: ShelfEntryRow, legs: readonly ShelfLegRow[]): LedgerEntry => ({
  id: row.id,
  at: row.at,
  notedAt: row.noted_at,
  by: row.done_by,
  told: JSON.parse(row.told) as LedgerEntry['told'],
  note: row.note,
  legs: legs.map(legRecord),
  retracts: row.retracts,
})
