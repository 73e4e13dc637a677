import { readdirSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { sql } from 'kysely'
import { expect, it } from 'vitest'
import { expectOk } from '../kernel/index.js'
import { openSqlite } from './engines/sqlite.js'
import { migrate } from './migrate.js'
import { migrations } from './migrations/index.js'
import { tempFolders } from './suite/folders.js'
import { TABLES, tablesOfABench } from './tables.js'

const folder = tempFolders()

interface Column {
  readonly table: string
  readonly column: string
  readonly keyed: number
}

/** What the migrations really made. */
async function inspected(): Promise<{ columns: Column[]; references: { child: string; parent: string }[] }> {
  const engine = expectOk(openSqlite(`${folder()}/data.db`, 'token'))
  expectOk(await migrate(engine, 0))
  const answer = await engine.reading(async (db) => ({
    columns: (
      await sql<Column>`select t.name as "table", c.name as "column", c.pk as keyed
        from sqlite_schema t, pragma_table_info(t.name) c where t.type = 'table' order by t.name, c.pk`.execute(db)
    ).rows,
    references: (
      await sql<{ child: string; parent: string }>`select distinct t.name as child, f."table" as parent
        from sqlite_schema t, pragma_foreign_key_list(t.name) f where t.type = 'table'`.execute(db)
    ).rows,
  }))
  await engine.close()
  return answer
}

it('lists every table, with its key, and every one with a bench_id but the write keys is emptied with its bench', async () => {
  const { columns } = await inspected()
  const names = [...new Set(columns.map((column) => column.table))].filter((name) => name !== 'data_version')
  expect(TABLES.map((table) => table.name as string).sort()).toEqual(names.sort())
  const withBench = columns.filter((column) => column.column === 'bench_id').map((column) => column.table)
  expect([...tablesOfABench(), 'write_keys'].sort()).toEqual(withBench.sort())
  for (const table of TABLES) {
    const key = columns.filter((column) => column.table === table.name && column.keyed > 0)
    expect([table.name, ...key.map((column) => column.column)]).toEqual([table.name, ...table.key])
  }
})

it('lists parents before children', async () => {
  const order = TABLES.map((table) => table.name as string)
  const { references } = await inspected()
  expect(references.length).toBeGreaterThan(5)
  for (const { child, parent } of references) expect(order.indexOf(parent)).toBeLessThan(order.indexOf(child))
})

it('applies the numbered migrations of the folder, all, in their order', () => {
  const files = readdirSync(fileURLToPath(new URL('./migrations', import.meta.url)))
  const numbered = files.filter((name) => /^\d{4}-.*\.ts$/.test(name)).map((name) => name.replace('.ts', ''))
  expect(migrations.map((migration) => migration.name)).toEqual(numbered.sort())
})
