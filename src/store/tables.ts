import type { TableName } from './schema.js'

export interface Table {
  readonly name: TableName
  /** The primary key, which also orders the rows of a backup. */
  readonly key: readonly string[]
  readonly inBackup: boolean
}

/**
 * Every table, parents before children: rows are put in by this order and taken out by the reverse.
 *
 * Not in a backup: pairing codes, because a code seen once must not come back to life; write keys, because
 * their answers speak of a state that the restore has just replaced.
 */
export const TABLES: readonly Table[] = [
  { name: 'benches', key: ['id'], inBackup: true },
  { name: 'reference_times', key: ['bench_id', 'id'], inBackup: true },
  { name: 'reference_time_revisions', key: ['bench_id', 'time_id', 'revision'], inBackup: true },
  { name: 'reference_time_points', key: ['bench_id', 'time_id', 'revision', 'position'], inBackup: true },
  { name: 'thermometers', key: ['bench_id', 'id'], inBackup: true },
  { name: 'thermometer_revisions', key: ['bench_id', 'thermometer_id', 'revision'], inBackup: true },
  { name: 'thermometer_checks', key: ['bench_id', 'id'], inBackup: true },
  { name: 'thermometer_check_withdrawals', key: ['bench_id', 'id'], inBackup: true },
  { name: 'devices', key: ['bench_id', 'id'], inBackup: true },
  { name: 'pairing_codes', key: ['bench_id', 'code_hash'], inBackup: false },
  { name: 'feed', key: ['bench_id', 'seq'], inBackup: true },
  { name: 'write_keys', key: ['key'], inBackup: false },
]

/** Children before parents. */
export const tablesFromTheLeaves = (): Table[] => [...TABLES].reverse()
export const tablesInBackup = (): Table[] => TABLES.filter((table) => table.inBackup)
/** The tables that belong to a bench, children first: what removing a bench empties of its rows. */
export const tablesOfABench = (): Exclude<TableName, 'benches'>[] =>
  tablesFromTheLeaves()
    .map((table) => table.name)
    .filter((name) => name !== 'benches')
