import { type Clock, type Ids, ok, type Result } from '../kernel/index.js'
import type { Store } from '../lab/index.js'
import { openPostgres } from './engines/postgres.js'
import { openSqlite } from './engines/sqlite.js'
import { migrate } from './migrate.js'
import { storeOn } from './store.js'

/** Where the data lies. */
export type Database =
  | { readonly kind: 'sqlite'; readonly file: string }
  | { readonly kind: 'postgres'; readonly url: string }

/**
 * Opens the data, makes or migrates its tables, and gives the store.
 *
 * Problems: `house.data-in-use` (another process holds the SQLite file), `house.data-newer`,
 * `house.data-unreachable` (PostgreSQL), `house.file-unwritable` and `house.file-unreadable`.
 */
export async function openStore(
  database: Database,
  { clock, ids }: { clock: Clock; ids: Ids },
): Promise<Result<Store>> {
  const token = ids.next()
  const opened = database.kind === 'sqlite' ? openSqlite(database.file, token) : await openPostgres(database.url, token)
  if (!opened.ok) return opened
  const engine = opened.value
  try {
    const migrated = await migrate(engine, clock.now())
    if (!migrated.ok) {
      await engine.close()
      return migrated
    }
    return ok(storeOn(engine, clock))
  } catch (thrown) {
    await engine.close()
    throw thrown
  }
}

export { linesOf } from './backup/lines.js'
export { NEWEST as newestDataVersion } from './migrations/index.js'
export { listeningFile, readDatabase } from './where.js'
