import { firstTables } from './0001-first-tables.js'
import { runTables } from './0002-runs.js'
import { rollTables } from './0003-rolls.js'
import { shelfTables } from './0004-shelf.js'
import type { Migration } from './migration.js'

/** All steps; the data version is how many of them were applied. */
export const migrations: readonly Migration[] = [firstTables, runTables, rollTables, shelfTables]
export const NEWEST = migrations.length
export type { ColumnTypes, Migration } from './migration.js'
