import type { CreateTableBuilder, Kysely } from 'kysely'
import type { ColumnTypes } from './migration.js'

type Builder = CreateTableBuilder<string, never>
type Column = keyof Omit<ColumnTypes, 'tableEnd'>

/** A table from its columns; a type with `?` may hold null. Landed migrations use it: what it makes may not change. */
export function table(
  db: Kysely<unknown>,
  types: ColumnTypes,
  name: string,
  columns: Record<string, Column | `${Column}?`>,
) {
  let builder: Builder = db.schema.createTable(name).modifyEnd(types.tableEnd)
  for (const [column, type] of Object.entries(columns)) {
    const kind = type.replace('?', '') as Column
    builder = builder.addColumn(column, types[kind] as never, (c) => (type.endsWith('?') ? c : c.notNull())) as Builder
  }
  return {
    key: (...names: string[]) => {
      builder = builder.addPrimaryKeyConstraint(`${name}_pk`, names as never[])
    },
    refers: (names: string[], target: string, targetNames: string[]) => {
      builder = builder.addForeignKeyConstraint(`${name}_${target}_fk`, names as never[], target, targetNames)
    },
    unique: (...names: string[]) => {
      builder = builder.addUniqueConstraint(`${name}_${names.join('_')}_unique`, names as never[])
    },
    make: () => builder.execute(),
  }
}
