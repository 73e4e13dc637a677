import { DAY_MS, failed, type Instant, ok, problem, type Result } from '../kernel/index.js'
import type { WriteKey } from '../lab/index.js'
import type { Db } from './schema.js'

/** How long the answer to a key is kept. A phone that comes back later than this asks anew. */
const KEPT_MS = 90 * DAY_MS

/**
 * Runs `work` once for a key. The key's row goes in first: a second write with the same key, also from another
 * process, waits there for the first to end and then finds its answer, or finds nothing when that one failed.
 * The answer goes through JSON, so it has to be plain data. Keys count for the whole house, not for one bench:
 * the write that opens or removes a demo bench is sent again from another bench than the first time.
 */
export async function once<T>(
  db: Db,
  bench: string,
  { key, fingerprint }: WriteKey,
  at: Instant,
  work: () => Promise<Result<T>>,
): Promise<Result<T>> {
  await forgetOldKeys(db, at)
  const taken = await db
    .insertInto('write_keys')
    .values({ bench_id: bench, key, fingerprint, response: null, made_at: at })
    .onConflict((conflict) => conflict.column('key').doNothing())
    .executeTakeFirst()
  if (taken.numInsertedOrUpdatedRows === 0n) return answerOf<T>(db, { key, fingerprint })
  const result = await work()
  if (!result.ok || result.value === undefined) return result
  const response = JSON.stringify(result.value)
  await db.updateTable('write_keys').set({ response }).where('key', '=', key).execute()
  return result
}

async function answerOf<T>(db: Db, { key, fingerprint }: WriteKey): Promise<Result<T>> {
  const row = await db.selectFrom('write_keys').selectAll().where('key', '=', key).executeTakeFirstOrThrow()
  if (row.fingerprint !== fingerprint) return failed(problem('request.key-reused', { key }))
  return ok((row.response === null ? undefined : JSON.parse(row.response)) as T)
}

/** Forgets keys that nobody will send again. */
async function forgetOldKeys(db: Db, at: Instant): Promise<void> {
  await db
    .deleteFrom('write_keys')
    .where('made_at', '<', at - KEPT_MS)
    .execute()
}
