import { mkdirSync, readdirSync, rmSync } from 'node:fs'
import { basename, dirname, join } from 'node:path'
import type Database from 'better-sqlite3'
import { Kysely, SqliteDialect, sql } from 'kysely'
import { failed, ok, problem, type Result } from '../../kernel/index.js'
import type { ColumnTypes } from '../migrations/index.js'
import type { Db, Schema } from '../schema.js'
import { codeOf, committingOk, type Engine, reasonOf } from './engine.js'
import { openKept } from './kept.js'

/** "WETS" in ASCII: marks the file as ours (SQLite's application id). */
const APPLICATION = 0x57455453

// Strict tables refuse a value of the wrong type, as PostgreSQL does.
const types: ColumnTypes = {
  text: sql`text`,
  integer: sql`integer`,
  instant: sql`integer`,
  real: sql`real`,
  amount: sql`integer`,
  tableEnd: sql`strict`,
}

/**
 * Opens the data file and holds it for the life of the process: the lock is the operating system's, so it
 * dies with its holder, kill -9 included. Makes the folder when it is missing.
 */
export function openSqlite(file: string, token: string): Result<Engine> {
  const folder = dirname(file)
  try {
    mkdirSync(folder, { recursive: true })
  } catch (thrown) {
    return failed(problem('house.file-unwritable', { file: folder, reason: reasonOf(thrown) }))
  }
  try {
    const held = hold(file)
    clearSnapshots(file)
    return ok(engineOn(held, file, token))
  } catch (thrown) {
    return failed(openProblem(file, thrown))
  }
}

function hold(file: string): Database.Database {
  const database = openKept(file, { timeout: 0 })
  try {
    database.exec('pragma locking_mode = EXCLUSIVE')
    database.exec('pragma journal_mode = WAL')
    database.exec('pragma synchronous = FULL')
    database.exec('pragma foreign_keys = ON')
    // The first write takes the lock; from then on it is kept.
    database
      .transaction(() => {
        database.exec(`pragma application_id = ${APPLICATION}`)
        database.exec(
          'create table if not exists data_version (version integer primary key, applied_at integer not null) strict',
        )
      })
      .immediate()
    return database
  } catch (thrown) {
    database.close()
    throw thrown
  }
}

function openProblem(file: string, thrown: unknown) {
  const code = codeOf(thrown)
  if (code.startsWith('SQLITE_BUSY') || code.startsWith('SQLITE_LOCKED')) return problem('house.data-in-use', { file })
  if (code === 'SQLITE_READONLY' || code === 'SQLITE_FULL')
    return problem('house.file-unwritable', { file, reason: reasonOf(thrown) })
  return problem('house.file-unreadable', { file, reason: reasonOf(thrown) })
}

function engineOn(database: Database.Database, file: string, token: string): Engine {
  const db = kyselyOn(database)
  let snapshots = 0
  return {
    kind: 'sqlite',
    types,
    reading: (work) => db.transaction().execute(work),
    writing: (_bench, work) => committingOk(db, work),
    alone: (work) => committingOk(db, work),
    async *snapshot(lines) {
      // A copy beside the file, so that writes go on while someone slowly fetches the lines.
      const copy = `${file}.snapshot-${token}-${snapshots++}`
      try {
        await sql`vacuum into ${copy}`.execute(db)
        yield* fromCopy(copy, lines)
      } finally {
        rmSync(copy, { force: true })
      }
    },
    announce: async () => {},
    onAnnounced: () => {},
    isMisfit: (thrown) => /^SQLITE_(CONSTRAINT|ERROR|MISMATCH|RANGE|TOOBIG)/.test(codeOf(thrown)),
    close: () => db.destroy(),
  }
}

const kyselyOn = (database: Database.Database): Db => new Kysely<Schema>({ dialect: new SqliteDialect({ database }) })

async function* fromCopy(copy: string, lines: (db: Db) => AsyncIterable<string>): AsyncIterable<string> {
  const db = kyselyOn(openKept(copy, { readonly: true }))
  try {
    yield* lines(db)
  } finally {
    await db.destroy()
  }
}

/** Copies that a killed process could not take away. */
function clearSnapshots(file: string): void {
  const start = `${basename(file)}.snapshot-`
  for (const name of readdirSync(dirname(file)))
    if (name.startsWith(start)) rmSync(join(dirname(file), name), { force: true })
}
