import type { Kysely } from 'kysely'
import type {
  NumberBlockRow,
  NumberCounterRow,
  NumberPatternRow,
  OrderCountRow,
  OrderLinkRow,
  RollEventRow,
  RollRevisionRow,
  RollRow,
  StatementRevisionRow,
} from './schema-rolls.js'
import type { ContainerRow, LotRow, ShelfEntryRow, ShelfLegRow } from './schema-shelf.js'

/** Whole thousandths of a degree Celsius. */
type MilliCelsius = number
/** Milliseconds since 1970, UTC. */
export type At = number
/** Booleans are 0 and 1 in both engines, so that backups are the same. */
type Flag = 0 | 1

export interface BenchRow {
  id: string
  kind: 'own' | 'demo'
  name: string
  units: 'metric' | 'us'
  paper: 'A4' | 'Letter'
  zone: string
  created_at: At
  /** Number of the last feed row. Raised under this row's lock. */
  feed_seq: number
}

export interface RecordRow {
  bench_id: string
  id: string
  created_at: At
}

export interface RevisionColumns {
  bench_id: string
  revision: number
  saved_at: At
  saved_by: string
  removed: Flag
}

export interface TimeRevisionRow extends RevisionColumns {
  time_id: string
  film: string
  exposure_index: number | null
  developer: string
  /** JSON list: 1 + 4 is `[1,4]`. */
  dilution_parts: string | null
  agitation: string
  kind: string
  law: string
  developer_class: string
  coefficient: number | null
  usable_from_mc: MilliCelsius | null
  usable_to_mc: MilliCelsius | null
  window_from_mc: MilliCelsius | null
  window_to_mc: MilliCelsius | null
  source_words: string
  source_origin: string
  note: string
}

export interface TimePointRow {
  bench_id: string
  time_id: string
  revision: number
  /** Place in the list as stated, from 0. */
  position: number
  temperature_mc: MilliCelsius
  duration_ms: number
}

export interface ThermometerRevisionRow extends RevisionColumns {
  thermometer_id: string
  name: string
  kind: string
  scale_low_mc: MilliCelsius
  scale_high_mc: MilliCelsius
  note: string
}

export interface CheckRow {
  bench_id: string
  id: string
  thermometer_id: string
  at: At
  done_by: string
  method: string
  read_mc: MilliCelsius
  true_mc: MilliCelsius
  set_id: string | null
}

export interface WithdrawalRow {
  bench_id: string
  id: string
  check_id: string
  at: At
  done_by: string
}

export interface DeviceRow {
  bench_id: string
  id: string
  name: string
  token_hash: string
  paired_at: At
  last_seen_at: At | null
  removed_at: At | null
}

export interface PairingCodeRow {
  bench_id: string
  code_hash: string
  made_at: At
  expires_at: At
  used_at: At | null
}

export interface FeedRow {
  bench_id: string
  seq: number
  kind: string
  subject: string
  at: At
}

export interface WriteKeyRow {
  bench_id: string
  key: string
  fingerprint: string
  /** The answer as JSON; null while the write runs, and for an answer that is no value. */
  response: string | null
  made_at: At
}

export interface RecipeRevisionRow extends RevisionColumns {
  recipe_id: string
  name: string
  copied_from: string | null
  /** The list as stated, JSON. */
  statement: string
}

export interface RunRow {
  bench_id: string
  id: string
  planned_at: At
  planned_by: string
  /** How many times as fast a practice run goes; null for a run that counts. */
  practice: number | null
  /** The plan with its copies of lists and times, JSON. Never changed. */
  plan: string
  state: string
  started_at: At | null
  ended_at: At | null
  /** By what the run stands in the list: when it began, else when it was planned. */
  listed_at: At
  /** Number of the newest event. Raised under this row's lock. */
  last_seq: number
}

export interface RunReelRow {
  bench_id: string
  run_id: string
  tank: string
  position: number
  film: string
  /** The film as it is looked for: small letters. */
  film_key: string
  exposure_index: number | null
  label: string
}

export interface RunEventRow {
  bench_id: string
  run_id: string
  /** Counts the events of a run in the order in which they came in. */
  seq: number
  id: string
  received_at: At
  received_by: string
  kind: string
  tank: string
  bath: number | null
  device: string
  life: string
  monotonic_ms: number
  wall_ms: At
  server_offset_ms: number | null
  stated_ms: At | null
  actor: string
  /** The event as it was sent, JSON; the columns beside it are for looking things up. */
  happening: string
}

export interface RunVerdictRow {
  bench_id: string
  run_id: string
  /** Counts what was said of a run, from 1; the newest of a tank stands. */
  position: number
  id: string
  at: At
  said_by: string
  tank: string
  density: string | null
  /** JSON list. */
  marks: string
  note: string
}

export interface Schema {
  data_version: { version: number; applied_at: At }
  benches: BenchRow
  reference_times: RecordRow
  reference_time_revisions: TimeRevisionRow
  reference_time_points: TimePointRow
  thermometers: RecordRow
  thermometer_revisions: ThermometerRevisionRow
  thermometer_checks: CheckRow
  thermometer_check_withdrawals: WithdrawalRow
  recipes: RecordRow
  recipe_revisions: RecipeRevisionRow
  runs: RunRow
  run_reels: RunReelRow
  run_events: RunEventRow
  run_verdicts: RunVerdictRow
  statements: RecordRow & { kind: string }
  statement_revisions: StatementRevisionRow
  rolls: RollRow
  roll_revisions: RollRevisionRow
  roll_events: RollEventRow
  number_counters: NumberCounterRow
  number_blocks: NumberBlockRow
  number_patterns: NumberPatternRow
  order_counts: OrderCountRow
  order_links: OrderLinkRow
  lots: LotRow
  containers: ContainerRow
  shelf_entries: ShelfEntryRow
  shelf_legs: ShelfLegRow
  devices: DeviceRow
  pairing_codes: PairingCodeRow
  feed: FeedRow
  write_keys: WriteKeyRow
}

export type TableName = Exclude<keyof Schema, 'data_version'>
/** A database or one transaction of it. */
export type Db = Kysely<Schema>
