import type { TableName } from './schema.js'

export interface Table {
  readonly name: TableName
  /** The primary key, which also orders the rows of a backup. */
  readonly key: readonly string[]
  readonly inBackup: boolean
  /** Whether its rows go when their bench is removed. */
  readonly goesWithBench: boolean
}

/**
 * Every table, parents before children: rows are put in by this order and taken out by the reverse.
 *
 * Not in a backup: pairing codes, because a code seen once must not come back to life; write keys, because
 * their answers speak of a state that the restore has just replaced.
 *
 * Write keys also stay when a bench goes: the write that opened a demo bench, sent again after that bench was
 * removed, must not open it anew. They are forgotten by age.
 */
export const TABLES: readonly Table[] = [
  { name: 'benches', key: ['id'], inBackup: true, goesWithBench: false },
  { name: 'reference_times', key: ['bench_id', 'id'], inBackup: true, goesWithBench: true },
  { name: 'reference_time_revisions', key: ['bench_id', 'time_id', 'revision'], inBackup: true, goesWithBench: true },
  {
    name: 'reference_time_points',
    key: ['bench_id', 'time_id', 'revision', 'position'],
    inBackup: true,
    goesWithBench: true,
  },
  { name: 'thermometers', key: ['bench_id', 'id'], inBackup: true, goesWithBench: true },
  {
    name: 'thermometer_revisions',
    key: ['bench_id', 'thermometer_id', 'revision'],
    inBackup: true,
    goesWithBench: true,
  },
  { name: 'thermometer_checks', key: ['bench_id', 'id'], inBackup: true, goesWithBench: true },
  { name: 'thermometer_check_withdrawals', key: ['bench_id', 'id'], inBackup: true, goesWithBench: true },
  { name: 'recipes', key: ['bench_id', 'id'], inBackup: true, goesWithBench: true },
  { name: 'recipe_revisions', key: ['bench_id', 'recipe_id', 'revision'], inBackup: true, goesWithBench: true },
  { name: 'runs', key: ['bench_id', 'id'], inBackup: true, goesWithBench: true },
  { name: 'run_reels', key: ['bench_id', 'run_id', 'tank', 'position'], inBackup: true, goesWithBench: true },
  { name: 'run_events', key: ['bench_id', 'run_id', 'seq'], inBackup: true, goesWithBench: true },
  { name: 'run_verdicts', key: ['bench_id', 'run_id', 'position'], inBackup: true, goesWithBench: true },
  { name: 'statements', key: ['bench_id', 'id'], inBackup: true, goesWithBench: true },
  { name: 'statement_revisions', key: ['bench_id', 'statement_id', 'revision'], inBackup: true, goesWithBench: true },
  { name: 'rolls', key: ['bench_id', 'id'], inBackup: true, goesWithBench: true },
  { name: 'roll_revisions', key: ['bench_id', 'roll_id', 'revision'], inBackup: true, goesWithBench: true },
  { name: 'roll_events', key: ['bench_id', 'id'], inBackup: true, goesWithBench: true },
  { name: 'number_counters', key: ['bench_id', 'kind', 'year'], inBackup: true, goesWithBench: true },
  { name: 'number_blocks', key: ['bench_id', 'id'], inBackup: true, goesWithBench: true },
  { name: 'number_patterns', key: ['bench_id'], inBackup: true, goesWithBench: true },
  { name: 'order_counts', key: ['bench_id', 'order_id'], inBackup: true, goesWithBench: true },
  { name: 'order_links', key: ['bench_id', 'id'], inBackup: true, goesWithBench: true },
  { name: 'lots', key: ['bench_id', 'id'], inBackup: true, goesWithBench: true },
  { name: 'containers', key: ['bench_id', 'id'], inBackup: true, goesWithBench: true },
  { name: 'shelf_entries', key: ['bench_id', 'id'], inBackup: true, goesWithBench: true },
  { name: 'shelf_legs', key: ['bench_id', 'entry_id', 'position'], inBackup: true, goesWithBench: true },
  { name: 'devices', key: ['bench_id', 'id'], inBackup: true, goesWithBench: true },
  { name: 'pairing_codes', key: ['bench_id', 'code_hash'], inBackup: false, goesWithBench: true },
  { name: 'feed', key: ['bench_id', 'seq'], inBackup: true, goesWithBench: true },
  { name: 'write_keys', key: ['key'], inBackup: false, goesWithBench: false },
]

/** Children before parents. */
export const tablesFromTheLeaves = (): Table[] => [...TABLES].reverse()
export const tablesInBackup = (): Table[] => TABLES.filter((table) => table.inBackup)
/** The tables that removing a bench empties of its rows, children first. */
export const tablesOfABench = (): Exclude<TableName, 'benches'>[] =>
  tablesFromTheLeaves()
    .filter((table) => table.goesWithBench)
    .map((table) => table.name)
    .filter((name) => name !== 'benches')
