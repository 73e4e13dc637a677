import { nameKey } from '../../kernel/index.js'
import type { NumberBlock, RollEvent, RollRecord, RollRevision } from '../../lab/index.js'
import type { NumberBlockRow, RollEventRow, RollRevisionRow, RollRow } from '../schema-rolls.js'

/** What the newest words of a roll fill in, beside its number and where it is. */
export const statementColumns = (roll: RollRecord) => ({
  revision: roll.revision,
  order_id: roll.orderId,
  film_key: nameKey(roll.statement.film),
  whose_key: roll.statement.whose === null ? null : nameKey(roll.statement.whose),
  process: roll.statement.process,
  due: roll.statement.due,
  searched: nameKey(
    [roll.number.text, roll.statement.film, roll.statement.whose ?? '', roll.statement.note].join('\n'),
  ),
  statement: JSON.stringify(roll.statement),
})

export const rollRow = (bench: string, roll: RollRecord): RollRow => ({
  bench_id: bench,
  id: roll.id,
  year: roll.number.year,
  n: roll.number.n,
  number: roll.number.text,
  twin: roll.twin,
  taken_in_at: roll.takenInAt,
  taken_in_by: roll.takenInBy,
  ...statementColumns(roll),
  state: roll.state,
  state_at: roll.stateAt,
  run_id: roll.runId,
  hook: roll.hook,
})

export const rollRecord = (row: RollRow): RollRecord => ({
  id: row.id,
  number: { year: row.year, n: row.n, text: row.number },
  twin: row.twin,
  takenInAt: row.taken_in_at,
  takenInBy: row.taken_in_by,
  revision: row.revision,
  orderId: row.order_id,
  statement: JSON.parse(row.statement) as RollRecord['statement'],
  state: row.state as RollRecord['state'],
  stateAt: row.state_at,
  runId: row.run_id,
  hook: row.hook,
})

export const revisionRow = (bench: string, revision: RollRevision): RollRevisionRow => ({
  bench_id: bench,
  roll_id: revision.rollId,
  revision: revision.revision,
  saved_at: revision.savedAt,
  saved_by: revision.savedBy,
  order_id: revision.orderId,
  batch_id: revision.batchId,
  statement: JSON.stringify(revision.statement),
})

export const revisionRecord = (row: RollRevisionRow): RollRevision => ({
  rollId: row.roll_id,
  revision: row.revision,
  savedAt: row.saved_at,
  savedBy: row.saved_by,
  orderId: row.order_id,
  batchId: row.batch_id,
  statement: JSON.parse(row.statement) as RollRevision['statement'],
})

export const rollEventRow = (bench: string, event: RollEvent): RollEventRow => ({
  bench_id: bench,
  id: event.id,
  roll_id: event.rollId,
  at: event.at,
  done_by: event.by,
  state: event.state,
  run_id: event.runId,
  hook: event.hook,
  reason: event.reason,
  batch_id: event.batchId,
  retracts: event.retracts,
})

export const rollEventRecord = (row: RollEventRow): RollEvent => ({
  id: row.id,
  rollId: row.roll_id,
  at: row.at,
  by: row.done_by,
  state: row.state as RollEvent['state'],
  runId: row.run_id,
  hook: row.hook,
  reason: row.reason,
  batchId: row.batch_id,
  retracts: row.retracts,
})

export const blockRow = (bench: string, block: NumberBlock): NumberBlockRow => ({
  bench_id: bench,
  id: block.id,
  device: block.device,
  pattern: block.pattern,
  year: block.year,
  first: block.first,
  last: block.last,
  reserved_at: block.reservedAt,
})

export const blockRecord = (row: NumberBlockRow): NumberBlock => ({
  id: row.id,
  device: row.device,
  pattern: row.pattern,
  year: row.year,
  first: row.first,
  last: row.last,
  reservedAt: row.reserved_at,
})
