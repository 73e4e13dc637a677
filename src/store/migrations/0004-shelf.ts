import type { Kysely } from 'kysely'
import type { ColumnTypes, Migration } from './migration.js'
import { table } from './table.js'

/** The shelf: containers, lots, and the ledger of what went where. */
export const shelfTables: Migration = {
  name: '0004-shelf',
  async up(db, types) {
    await lots(db, types)
    await containers(db, types)
    await ledger(db, types)
  },
}

async function lots(db: Kysely<unknown>, types: ColumnTypes): Promise<void> {
  const records = table(db, types, 'lots', {
    bench_id: 'text',
    id: 'text',
    code: 'text',
    product_id: 'text',
    parts: 'text?',
    mixed_at: 'instant',
    mixed_by: 'text',
    mixed: 'amount',
    note: 'text',
    searched: 'text',
  })
  records.key('bench_id', 'id')
  records.unique('bench_id', 'code')
  records.refers(['bench_id', 'product_id'], 'statements', ['bench_id', 'id'])
  await records.make()
  await db.schema.createIndex('lots_by_day').on('lots').columns(['bench_id', 'mixed_at', 'id']).execute()
}

async function containers(db: Kysely<unknown>, types: ColumnTypes): Promise<void> {
  const records = table(db, types, 'containers', {
    bench_id: 'text',
    id: 'text',
    kind: 'text',
    unit: 'text',
    room: 'amount?',
    lot_id: 'text?',
    held: 'amount',
    basis: 'amount',
    worked: 'amount',
    met: 'amount',
    seq: 'integer',
    changed_at: 'instant',
  })
  records.key('bench_id', 'id')
  records.refers(['bench_id', 'id'], 'statements', ['bench_id', 'id'])
  records.refers(['bench_id', 'lot_id'], 'lots', ['bench_id', 'id'])
  await records.make()
  await db.schema.createIndex('containers_by_lot').on('containers').columns(['bench_id', 'lot_id']).execute()
}

async function ledger(db: Kysely<unknown>, types: ColumnTypes): Promise<void> {
  const entries = table(db, types, 'shelf_entries', {
    bench_id: 'text',
    id: 'text',
    at: 'instant',
    noted_at: 'instant',
    done_by: 'text',
    kind: 'text',
    told: 'text',
    note: 'text',
    retracts: 'text?',
  })
  entries.key('bench_id', 'id')
  // One entry is taken back once: a second one would take out what the first put back.
  entries.unique('bench_id', 'retracts')
  entries.refers(['bench_id'], 'benches', ['id'])
  await entries.make()
  await db.schema.createIndex('shelf_entries_by_kind').on('shelf_entries').columns(['bench_id', 'kind', 'at']).execute()

  const legs = table(db, types, 'shelf_legs', {
    bench_id: 'text',
    entry_id: 'text',
    position: 'integer',
    container_id: 'text',
    lot_id: 'text?',
    held: 'amount',
    basis: 'amount',
    worked: 'amount',
    met: 'amount',
  })
  legs.key('bench_id', 'entry_id', 'position')
  legs.refers(['bench_id', 'entry_id'], 'shelf_entries', ['bench_id', 'id'])
  legs.refers(['bench_id', 'container_id'], 'containers', ['bench_id', 'id'])
  await legs.make()
  for (const column of ['container_id', 'lot_id'])
    await db.schema.createIndex(`shelf_legs_by_${column}`).on('shelf_legs').columns(['bench_id', column]).execute()
}
