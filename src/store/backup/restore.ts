import { once } from 'node:events'
import { createReadStream, createWriteStream, type WriteStream } from 'node:fs'
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { finished } from 'node:stream/promises'
import { failed, type Instant, ok, type Result } from '../../kernel/index.js'
import { type Engine, reasonOf } from '../engines/engine.js'
import { dataVersion, migrateFromTo } from '../migrate.js'
import { NEWEST } from '../migrations/index.js'
import type { Db } from '../schema.js'
import { tablesFromTheLeaves } from '../tables.js'
import type { Head, Row, RowLine } from './format.js'
import { linesOf } from './lines.js'
import { checkLines, unreadable } from './read.js'

export interface Restored {
  readonly tables: number
  readonly rows: number
  readonly dataVersion: number
}

/**
 * Puts a backup in place of everything. The lines are first checked to their end and set aside in a file, so
 * that the one transaction that replaces everything is short however slowly they arrive.
 */
export async function restoreLines(
  engine: Engine,
  lines: AsyncIterable<string>,
  at: Instant,
): Promise<Result<Restored>> {
  const folder = await mkdtemp(join(tmpdir(), 'wetside-restore-'))
  try {
    const file = join(folder, 'rows.ndjson')
    const checked = await setAside(lines, file)
    return checked.ok ? await replaceAll(engine, checked.value, file, at) : checked
  } finally {
    await rm(folder, { recursive: true, force: true })
  }
}

async function setAside(lines: AsyncIterable<string>, file: string) {
  const aside = createWriteStream(file, { mode: 0o600 })
  try {
    return await checkLines(lines, (text) => writeLine(aside, text))
  } finally {
    aside.end()
    await finished(aside)
  }
}

async function writeLine(stream: WriteStream, text: string): Promise<void> {
  if (!stream.write(`${text}\n`)) await once(stream, 'drain')
}

async function replaceAll(
  engine: Engine,
  { head, rows }: { head: Head; rows: number },
  file: string,
  at: Instant,
): Promise<Result<Restored>> {
  try {
    return await engine.alone(async (db) => {
      await dropAll(db)
      await migrateFromTo(db, engine.types, 0, head.dataVersion, at)
      await insertAll(db, file)
      await migrateFromTo(db, engine.types, head.dataVersion, NEWEST, at)
      return ok({ tables: head.tables.length, rows, dataVersion: await dataVersion(db) })
    })
  } catch (thrown) {
    if (engine.isMisfit(thrown)) return failed(unreadable(`a row does not fit (${reasonOf(thrown)})`))
    throw thrown
  }
}

async function dropAll(db: Db): Promise<void> {
  for (const table of tablesFromTheLeaves()) await db.schema.dropTable(table.name).execute()
  await db.deleteFrom('data_version').execute()
}

/** Rows put in by one statement; the columns of one table times this stay below SQLite's limit of 32766. */
const BATCH = 200

async function insertAll(db: Db, file: string): Promise<void> {
  let table = ''
  let batch: Row[] = []
  const put = async () => {
    if (batch.length > 0)
      await db
        .insertInto(table as never)
        .values(batch as never)
        .execute()
    batch = []
  }
  for await (const text of linesOf(createReadStream(file))) {
    const { t, r } = JSON.parse(text) as RowLine
    if (t !== table || batch.length === BATCH) await put()
    table = t
    batch.push(r)
  }
  await put()
}
