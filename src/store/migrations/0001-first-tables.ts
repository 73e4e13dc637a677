import type { CreateTableBuilder, Kysely } from 'kysely'
import type { ColumnTypes, Migration } from './migration.js'

type Builder = CreateTableBuilder<string, never>

/** Benches, developing times, thermometers, people, the feed and the keys of writes. */
export const firstTables: Migration = {
  name: '0001-first-tables',
  async up(db, types) {
    await house(db, types)
    await times(db, types)
    await kit(db, types)
    await people(db, types)
    await feed(db, types)
  },
}

type Column = keyof Omit<ColumnTypes, 'tableEnd'>

/** A table from its columns; a type with `?` may hold null. */
function table(db: Kysely<unknown>, types: ColumnTypes, name: string, columns: Record<string, Column | `${Column}?`>) {
  let builder: Builder = db.schema.createTable(name).modifyEnd(types.tableEnd)
  for (const [column, type] of Object.entries(columns)) {
    const optional = type.endsWith('?')
    const kind = type.replace('?', '') as Column
    builder = builder.addColumn(column, types[kind] as never, (c) => (optional ? c : c.notNull())) as Builder
  }
  return {
    key: (...names: string[]) => {
      builder = builder.addPrimaryKeyConstraint(`${name}_pk`, names as never[])
    },
    refers: (names: string[], target: string, targetNames: string[]) => {
      const constraint = `${name}_${target}_fk`
      builder = builder.addForeignKeyConstraint(constraint, names as never[], target, targetNames)
    },
    unique: (...names: string[]) => {
      builder = builder.addUniqueConstraint(`${name}_${names.join('_')}_unique`, names as never[])
    },
    make: () => builder.execute(),
  }
}

async function house(db: Kysely<unknown>, types: ColumnTypes): Promise<void> {
  const benches = table(db, types, 'benches', {
    id: 'text',
    kind: 'text',
    name: 'text',
    units: 'text',
    paper: 'text',
    zone: 'text',
    created_at: 'instant',
    feed_seq: 'integer',
  })
  benches.key('id')
  await benches.make()
}

async function times(db: Kysely<unknown>, types: ColumnTypes): Promise<void> {
  const records = table(db, types, 'reference_times', { bench_id: 'text', id: 'text', created_at: 'instant' })
  records.key('bench_id', 'id')
  records.refers(['bench_id'], 'benches', ['id'])
  await records.make()

  const revisions = table(db, types, 'reference_time_revisions', {
    bench_id: 'text',
    time_id: 'text',
    revision: 'integer',
    saved_at: 'instant',
    saved_by: 'text',
    removed: 'integer',
    film: 'text',
    exposure_index: 'integer?',
    developer: 'text',
    dilution_parts: 'text?',
    agitation: 'text',
    kind: 'text',
    law: 'text',
    developer_class: 'text',
    coefficient: 'real?',
    usable_from_mc: 'integer?',
    usable_to_mc: 'integer?',
    window_from_mc: 'integer?',
    window_to_mc: 'integer?',
    source_words: 'text',
    source_origin: 'text',
    note: 'text',
  })
  revisions.key('bench_id', 'time_id', 'revision')
  revisions.refers(['bench_id', 'time_id'], 'reference_times', ['bench_id', 'id'])
  await revisions.make()

  const points = table(db, types, 'reference_time_points', {
    bench_id: 'text',
    time_id: 'text',
    revision: 'integer',
    position: 'integer',
    temperature_mc: 'integer',
    duration_ms: 'integer',
  })
  points.key('bench_id', 'time_id', 'revision', 'position')
  points.refers(['bench_id', 'time_id', 'revision'], 'reference_time_revisions', ['bench_id', 'time_id', 'revision'])
  await points.make()
}

async function kit(db: Kysely<unknown>, types: ColumnTypes): Promise<void> {
  const thermometers = table(db, types, 'thermometers', { bench_id: 'text', id: 'text', created_at: 'instant' })
  thermometers.key('bench_id', 'id')
  thermometers.refers(['bench_id'], 'benches', ['id'])
  await thermometers.make()

  const revisions = table(db, types, 'thermometer_revisions', {
    bench_id: 'text',
    thermometer_id: 'text',
    revision: 'integer',
    saved_at: 'instant',
    saved_by: 'text',
    removed: 'integer',
    name: 'text',
    kind: 'text',
    scale_low_mc: 'integer',
    scale_high_mc: 'integer',
    note: 'text',
  })
  revisions.key('bench_id', 'thermometer_id', 'revision')
  revisions.refers(['bench_id', 'thermometer_id'], 'thermometers', ['bench_id', 'id'])
  await revisions.make()

  const checks = table(db, types, 'thermometer_checks', {
    bench_id: 'text',
    id: 'text',
    thermometer_id: 'text',
    at: 'instant',
    done_by: 'text',
    method: 'text',
    read_mc: 'integer',
    true_mc: 'integer',
    set_id: 'text?',
  })
  checks.key('bench_id', 'id')
  checks.refers(['bench_id', 'thermometer_id'], 'thermometers', ['bench_id', 'id'])
  await checks.make()
  await db.schema
    .createIndex('thermometer_checks_by_thermometer')
    .on('thermometer_checks')
    .columns(['bench_id', 'thermometer_id', 'at'])
    .execute()

  const withdrawals = table(db, types, 'thermometer_check_withdrawals', {
    bench_id: 'text',
    id: 'text',
    check_id: 'text',
    at: 'instant',
    done_by: 'text',
  })
  withdrawals.key('bench_id', 'id')
  withdrawals.unique('bench_id', 'check_id')
  withdrawals.refers(['bench_id', 'check_id'], 'thermometer_checks', ['bench_id', 'id'])
  await withdrawals.make()
}

async function people(db: Kysely<unknown>, types: ColumnTypes): Promise<void> {
  const devices = table(db, types, 'devices', {
    bench_id: 'text',
    id: 'text',
    name: 'text',
    token_hash: 'text',
    paired_at: 'instant',
    last_seen_at: 'instant?',
    removed_at: 'instant?',
  })
  devices.key('bench_id', 'id')
  devices.unique('bench_id', 'token_hash')
  devices.refers(['bench_id'], 'benches', ['id'])
  await devices.make()

  const codes = table(db, types, 'pairing_codes', {
    bench_id: 'text',
    code_hash: 'text',
    made_at: 'instant',
    expires_at: 'instant',
    used_at: 'instant?',
  })
  codes.key('bench_id', 'code_hash')
  codes.refers(['bench_id'], 'benches', ['id'])
  await codes.make()
}

async function feed(db: Kysely<unknown>, types: ColumnTypes): Promise<void> {
  const entries = table(db, types, 'feed', {
    bench_id: 'text',
    seq: 'integer',
    kind: 'text',
    subject: 'text',
    at: 'instant',
  })
  entries.key('bench_id', 'seq')
  entries.refers(['bench_id'], 'benches', ['id'])
  await entries.make()

  // No reference to benches: the key of the write that removed a bench has to outlive it.
  const keys = table(db, types, 'write_keys', {
    bench_id: 'text',
    key: 'text',
    fingerprint: 'text',
    response: 'text?',
    made_at: 'instant',
  })
  keys.key('key')
  await keys.make()
  await db.schema.createIndex('write_keys_by_age').on('write_keys').columns(['made_at']).execute()
}
