import { failed, type Instant, ok, problem, type Result } from '../kernel/index.js'
import type { Engine } from './engines/engine.js'
import type { ColumnTypes } from './migrations/index.js'
import { migrations, NEWEST } from './migrations/index.js'
import type { Db } from './schema.js'

/** How many migrations this data has seen; 0 for an empty database. */
export async function dataVersion(db: Db): Promise<number> {
  const row = await db
    .selectFrom('data_version')
    .select((e) => e.fn.max('version').as('version'))
    .executeTakeFirst()
  return Number(row?.version ?? 0)
}

/** Applies the steps after `from` up to and including `to`, inside the caller's transaction. */
export async function migrateFromTo(db: Db, types: ColumnTypes, from: number, to: number, at: Instant): Promise<void> {
  for (let version = from + 1; version <= to; version++) {
    await migrations[version - 1]?.up(db as never, types)
    await db.insertInto('data_version').values({ version, applied_at: at }).execute()
  }
}

/** Brings the data to the newest version in one transaction; data of a newer program is left alone. */
export async function migrate(engine: Engine, at: Instant): Promise<Result<number>> {
  // Looking first: the common start finds nothing to do, and then needs no lock that others would wait for.
  if ((await engine.reading(dataVersion)) === NEWEST) return ok(NEWEST)
  return engine.alone(async (db) => {
    const found = await dataVersion(db)
    if (found > NEWEST) return failed(problem('house.data-newer', { found, known: NEWEST }))
    await migrateFromTo(db, engine.types, found, NEWEST, at)
    return ok(NEWEST)
  })
}
