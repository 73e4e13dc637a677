import type { At, RevisionColumns } from './schema.js'

export interface StatementRevisionRow extends RevisionColumns {
  statement_id: string
  /** `film`, `vessel`, `order`, `view`: which kind of record. */
  kind: string
  /** What was stated, JSON. */
  statement: string
}

/** A roll as it stands: its newest words and where it is, kept beside revisions and events so that it can be found. */
export interface RollRow {
  bench_id: string
  id: string
  /** 0 where the bench's pattern has no year. */
  year: number
  n: number
  number: string
  twin: number | null
  taken_in_at: At
  taken_in_by: string
  revision: number
  order_id: string | null
  film_key: string
  whose_key: string | null
  process: string
  /** A day, as text. */
  due: string | null
  state: string
  state_at: At
  run_id: string | null
  hook: string
  /** Everything that words are looked for in, small letters. */
  searched: string
  /** The newest statement, JSON. */
  statement: string
}

export interface RollRevisionRow {
  bench_id: string
  roll_id: string
  revision: number
  saved_at: At
  saved_by: string
  order_id: string | null
  batch_id: string | null
  statement: string
}

export interface RollEventRow {
  bench_id: string
  id: string
  roll_id: string
  at: At
  done_by: string
  /** Null for one that retracts another. */
  state: string | null
  run_id: string | null
  hook: string
  reason: string
  batch_id: string | null
  retracts: string | null
}

export interface NumberCounterRow {
  bench_id: string
  kind: 'roll' | 'twin' | 'lot'
  year: number
  last: number
}

export interface NumberBlockRow {
  bench_id: string
  id: string
  device: string
  pattern: string
  year: number
  first: number
  last: number
  reserved_at: At
}

export interface NumberPatternRow {
  bench_id: string
  pattern: string
}

export interface OrderCountRow {
  bench_id: string
  order_id: string
  counted_out: number
  at: At
  done_by: string
}

export interface OrderLinkRow {
  bench_id: string
  id: string
  order_id: string
  token_hash: string
  made_at: At
  expires_at: At
  revoked_at: At | null
}
