import type { Kysely } from 'kysely'
import type { ColumnTypes, Migration } from './migration.js'
import { table } from './table.js'

/** Lists of baths of one's own; runs, what happened in them, and what was said of their negatives. */
export const runTables: Migration = {
  name: '0002-runs',
  async up(db, types) {
    await recipes(db, types)
    await runs(db, types)
    await whatHappened(db, types)
    await verdicts(db, types)
  },
}

async function recipes(db: Kysely<unknown>, types: ColumnTypes): Promise<void> {
  const records = table(db, types, 'recipes', { bench_id: 'text', id: 'text', created_at: 'instant' })
  records.key('bench_id', 'id')
  records.refers(['bench_id'], 'benches', ['id'])
  await records.make()

  const revisions = table(db, types, 'recipe_revisions', {
    bench_id: 'text',
    recipe_id: 'text',
    revision: 'integer',
    saved_at: 'instant',
    saved_by: 'text',
    removed: 'integer',
    name: 'text',
    copied_from: 'text?',
    statement: 'text',
  })
  revisions.key('bench_id', 'recipe_id', 'revision')
  revisions.refers(['bench_id', 'recipe_id'], 'recipes', ['bench_id', 'id'])
  await revisions.make()
}

async function runs(db: Kysely<unknown>, types: ColumnTypes): Promise<void> {
  const records = table(db, types, 'runs', {
    bench_id: 'text',
    id: 'text',
    planned_at: 'instant',
    planned_by: 'text',
    practice: 'integer?',
    plan: 'text',
    state: 'text',
    started_at: 'instant?',
    ended_at: 'instant?',
    listed_at: 'instant',
    last_seq: 'integer',
  })
  records.key('bench_id', 'id')
  records.refers(['bench_id'], 'benches', ['id'])
  await records.make()
  await db.schema.createIndex('runs_newest').on('runs').columns(['bench_id', 'listed_at', 'id']).execute()

  const tanks = table(db, types, 'run_reels', {
    bench_id: 'text',
    run_id: 'text',
    tank: 'text',
    position: 'integer',
    film: 'text',
    film_key: 'text',
    exposure_index: 'integer?',
    label: 'text',
  })
  tanks.key('bench_id', 'run_id', 'tank', 'position')
  tanks.refers(['bench_id', 'run_id'], 'runs', ['bench_id', 'id'])
  await tanks.make()
  await db.schema.createIndex('run_reels_by_film').on('run_reels').columns(['bench_id', 'film_key']).execute()
}

async function whatHappened(db: Kysely<unknown>, types: ColumnTypes): Promise<void> {
  const events = table(db, types, 'run_events', {
    bench_id: 'text',
    run_id: 'text',
    seq: 'integer',
    id: 'text',
    received_at: 'instant',
    received_by: 'text',
    kind: 'text',
    tank: 'text',
    bath: 'integer?',
    device: 'text',
    life: 'text',
    monotonic_ms: 'instant',
    wall_ms: 'instant',
    server_offset_ms: 'instant?',
    stated_ms: 'instant?',
    actor: 'text',
    happening: 'text',
  })
  events.key('bench_id', 'run_id', 'seq')
  events.unique('bench_id', 'id')
  events.refers(['bench_id', 'run_id'], 'runs', ['bench_id', 'id'])
  await events.make()
}

async function verdicts(db: Kysely<unknown>, types: ColumnTypes): Promise<void> {
  const said = table(db, types, 'run_verdicts', {
    bench_id: 'text',
    run_id: 'text',
    position: 'integer',
    id: 'text',
    at: 'instant',
    said_by: 'text',
    tank: 'text',
    density: 'text?',
    marks: 'text',
    note: 'text',
  })
  said.key('bench_id', 'run_id', 'position')
  said.refers(['bench_id', 'run_id'], 'runs', ['bench_id', 'id'])
  await said.make()
}
