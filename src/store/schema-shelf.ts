import type { At } from './schema.js'

export interface LotRow {
  bench_id: string
  id: string
  code: string
  product_id: string
  /** JSON list: 1 + 4 is `[1,4]`; null for stock. */
  parts: string | null
  mixed_at: At
  mixed_by: string
  /** Microlitres. */
  mixed: number
  note: string
  /** Everything that words are looked for in, small letters. */
  searched: string
}

/** What a portion is counted in: whole microlitres or milligrams, and millionths of a roll. */
export interface PortionColumns {
  held: number
  basis: number
  worked: number
  met: number
}

/** A container as its ledger leaves it, kept beside the entries so that one statement can look and change at once. */
export interface ContainerRow extends PortionColumns {
  bench_id: string
  id: string
  kind: string
  unit: string
  room: number | null
  lot_id: string | null
  seq: number
  changed_at: At
}

export interface ShelfEntryRow {
  bench_id: string
  id: string
  at: At
  noted_at: At
  done_by: string
  kind: string
  /** JSON. */
  told: string
  note: string
  retracts: string | null
}

export interface ShelfLegRow extends PortionColumns {
  bench_id: string
  entry_id: string
  position: number
  container_id: string
  lot_id: string | null
}
