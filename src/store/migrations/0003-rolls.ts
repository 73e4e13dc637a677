import type { Kysely } from 'kysely'
import type { ColumnTypes, Migration } from './migration.js'
import { table } from './table.js'

/** Rolls with their numbers, states and orders; films; tanks, reels and graduates. */
export const rollTables: Migration = {
  name: '0003-rolls',
  async up(db, types) {
    await statements(db, types)
    await rolls(db, types)
    await numbers(db, types)
    await orders(db, types)
  },
}

async function rolls(db: Kysely<unknown>, types: ColumnTypes): Promise<void> {
  const records = table(db, types, 'rolls', {
    bench_id: 'text',
    id: 'text',
    year: 'integer',
    n: 'integer',
    number: 'text',
    twin: 'integer?',
    taken_in_at: 'instant',
    taken_in_by: 'text',
    revision: 'integer',
    order_id: 'text?',
    film_key: 'text',
    whose_key: 'text?',
    process: 'text',
    due: 'text?',
    state: 'text',
    state_at: 'instant',
    run_id: 'text?',
    hook: 'text',
    searched: 'text',
    statement: 'text',
  })
  records.key('bench_id', 'id')
  records.unique('bench_id', 'number')
  records.unique('bench_id', 'year', 'n')
  records.refers(['bench_id'], 'benches', ['id'])
  await records.make()
  for (const columns of [['state'], ['film_key'], ['whose_key'], ['order_id'], ['run_id']] as const)
    await db.schema
      .createIndex(`rolls_by_${columns[0]}`)
      .on('rolls')
      .columns(['bench_id', ...columns, 'year', 'n'])
      .execute()

  const revisions = table(db, types, 'roll_revisions', {
    bench_id: 'text',
    roll_id: 'text',
    revision: 'integer',
    saved_at: 'instant',
    saved_by: 'text',
    order_id: 'text?',
    batch_id: 'text?',
    statement: 'text',
  })
  revisions.key('bench_id', 'roll_id', 'revision')
  revisions.refers(['bench_id', 'roll_id'], 'rolls', ['bench_id', 'id'])
  await revisions.make()
  await db.schema
    .createIndex('roll_revisions_by_batch')
    .on('roll_revisions')
    .columns(['bench_id', 'batch_id'])
    .execute()

  const events = table(db, types, 'roll_events', {
    bench_id: 'text',
    id: 'text',
    roll_id: 'text',
    at: 'instant',
    done_by: 'text',
    state: 'text?',
    run_id: 'text?',
    hook: 'text',
    reason: 'text',
    batch_id: 'text?',
    retracts: 'text?',
  })
  events.key('bench_id', 'id')
  events.refers(['bench_id', 'roll_id'], 'rolls', ['bench_id', 'id'])
  await events.make()
  await db.schema.createIndex('roll_events_by_roll').on('roll_events').columns(['bench_id', 'roll_id', 'at']).execute()
  await db.schema.createIndex('roll_events_by_batch').on('roll_events').columns(['bench_id', 'batch_id']).execute()
}

async function numbers(db: Kysely<unknown>, types: ColumnTypes): Promise<void> {
  const counters = table(db, types, 'number_counters', {
    bench_id: 'text',
    kind: 'text',
    year: 'integer',
    last: 'integer',
  })
  counters.key('bench_id', 'kind', 'year')
  counters.refers(['bench_id'], 'benches', ['id'])
  await counters.make()

  const blocks = table(db, types, 'number_blocks', {
    bench_id: 'text',
    id: 'text',
    device: 'text',
    pattern: 'text',
    year: 'integer',
    first: 'integer',
    last: 'integer',
    reserved_at: 'instant',
  })
  blocks.key('bench_id', 'id')
  blocks.refers(['bench_id'], 'benches', ['id'])
  await blocks.make()

  const patterns = table(db, types, 'number_patterns', { bench_id: 'text', pattern: 'text' })
  patterns.key('bench_id')
  patterns.refers(['bench_id'], 'benches', ['id'])
  await patterns.make()
}

async function orders(db: Kysely<unknown>, types: ColumnTypes): Promise<void> {
  const counts = table(db, types, 'order_counts', {
    bench_id: 'text',
    order_id: 'text',
    counted_out: 'integer',
    at: 'instant',
    done_by: 'text',
  })
  counts.key('bench_id', 'order_id')
  counts.refers(['bench_id', 'order_id'], 'statements', ['bench_id', 'id'])
  await counts.make()

  const links = table(db, types, 'order_links', {
    bench_id: 'text',
    id: 'text',
    order_id: 'text',
    token_hash: 'text',
    made_at: 'instant',
    expires_at: 'instant',
    revoked_at: 'instant?',
  })
  links.key('bench_id', 'id')
  links.unique('bench_id', 'token_hash')
  links.refers(['bench_id', 'order_id'], 'statements', ['bench_id', 'id'])
  await links.make()
}

/** Films, vessels, orders and saved views: revisions of what was stated, as JSON. */
async function statements(db: Kysely<unknown>, types: ColumnTypes): Promise<void> {
  const records = table(db, types, 'statements', { bench_id: 'text', id: 'text', kind: 'text', created_at: 'instant' })
  records.key('bench_id', 'id')
  records.refers(['bench_id'], 'benches', ['id'])
  await records.make()

  const revisions = table(db, types, 'statement_revisions', {
    bench_id: 'text',
    statement_id: 'text',
    revision: 'integer',
    kind: 'text',
    saved_at: 'instant',
    saved_by: 'text',
    removed: 'integer',
    statement: 'text',
  })
  revisions.key('bench_id', 'statement_id', 'revision')
  revisions.refers(['bench_id', 'statement_id'], 'statements', ['bench_id', 'id'])
  await revisions.make()
  await db.schema
    .createIndex('statement_revisions_by_kind')
    .on('statement_revisions')
    .columns(['bench_id', 'kind', 'statement_id'])
    .execute()
}
