import { sql } from 'kysely'
import type { Instant } from '../../kernel/index.js'
import { dataVersion } from '../migrate.js'
import type { Db } from '../schema.js'
import { type Table, tablesInBackup } from '../tables.js'
import { FORMAT, FORMAT_VERSION, type Head, LinesSum, type Row, type RowLine, type Tail } from './format.js'

/** How many rows are held in memory at a time. */
const BATCH = 500

/** The lines of a backup, each with its line feed, from one moment's data: one after the other they are the file. */
export async function* backupLines(db: Db, madeAt: Instant): AsyncGenerator<string> {
  const sum = new LinesSum()
  let rows = 0
  const tables = tablesInBackup()
  const line = (content: Head | RowLine): string => {
    const text = JSON.stringify(content)
    sum.add(text)
    return `${text}\n`
  }
  yield line({
    format: FORMAT,
    version: FORMAT_VERSION,
    dataVersion: await dataVersion(db),
    madeAt: new Date(madeAt).toISOString(),
    tables: tables.map((table) => table.name),
  })
  for (const table of tables) {
    for await (const row of rowsOf(db, table)) {
      rows++
      yield line({ t: table.name, r: row })
    }
  }
  const tail: Tail = { end: true, rows, sha256: sum.hex() }
  yield `${JSON.stringify(tail)}\n`
}

/** All rows by primary key, a batch at a time. */
async function* rowsOf(db: Db, table: Table): AsyncGenerator<Row> {
  let last: Row | undefined
  do {
    const batch = await batchAfter(db, table, last)
    yield* batch
    last = batch.length === BATCH ? batch.at(-1) : undefined
  } while (last)
}

async function batchAfter(db: Db, table: Table, last: Row | undefined): Promise<Row[]> {
  const key = sql.join(table.key.map((column) => sql.ref(column)))
  const after = last ? sql`where (${key}) > (${sql.join(table.key.map((column) => last[column]))})` : sql``
  const query = sql<Row>`select * from ${sql.table(table.name)} ${after} order by ${key} limit ${BATCH}`
  return (await query.execute(db)).rows
}
