import { Kysely, PostgresDialect, sql } from 'kysely'
import pg from 'pg'
import { failed, ok, problem, type Result } from '../../kernel/index.js'
import type { ColumnTypes } from '../migrations/index.js'
import type { Db, Schema } from '../schema.js'
import { codeOf, committingOk, type Engine, reasonOf } from './engine.js'
import { Listening } from './postgres-listening.js'

const types: ColumnTypes = {
  // Sorted by code points, whatever the database's language: the same order as in SQLite.
  text: sql`text collate "C"`,
  integer: sql`integer`,
  instant: sql`bigint`,
  real: sql`double precision`,
  amount: sql`bigint`,
  tableEnd: sql``,
}

const BIGINT = 20
const MOST_CONNECTIONS = 10
const CONNECT_WITHIN_MS = 5000
/** Numbers of PostgreSQL's advisory locks, ours alone by the first of the two. */
const LOCK = { setUp: sql`pg_advisory_xact_lock(1466255443, 1)`, newBench: sql`pg_advisory_xact_lock(1466255443, 2)` }

/** Connects, and makes the table that says which version the data has. `token` tells this process from others. */
export async function openPostgres(url: string, token: string): Promise<Result<Engine>> {
  let pool: pg.Pool | undefined
  try {
    pool = new pg.Pool({
      connectionString: url,
      max: MOST_CONNECTIONS,
      connectionTimeoutMillis: CONNECT_WITHIN_MS,
      // Instants come back as numbers.
      types: { getTypeParser: (oid, format) => (oid === BIGINT ? Number : pg.types.getTypeParser(oid, format)) },
    })
    // An idle connection that breaks is replaced by the pool; without a listener it would end the process.
    pool.on('error', () => {})
    const db: Db = new Kysely<Schema>({ dialect: new PostgresDialect({ pool }) })
    await setUp(db)
    const listening = await Listening.start(url, token)
    return ok(engineOn(db, listening, token))
  } catch (thrown) {
    await pool?.end()
    return failed(problem('house.data-unreachable', { reason: reasonOf(thrown) }))
  }
}

const setUp = (db: Db): Promise<void> =>
  db.transaction().execute(async (transaction) => {
    // "if not exists" alone fails when two processes make the table at once.
    await sql`select ${LOCK.setUp}`.execute(transaction)
    await sql`create table if not exists data_version (version integer primary key, applied_at bigint not null)`.execute(
      transaction,
    )
  })

function engineOn(db: Db, listening: Listening, token: string): Engine {
  const reading = <T>(work: (db: Db) => Promise<T>): Promise<T> =>
    again(() =>
      db
        .transaction()
        .setIsolationLevel('repeatable read')
        .setAccessMode('read only')
        .execute(async (transaction) => {
          await shareTables(transaction)
          return work(transaction)
        }),
    )
  return {
    kind: 'postgres',
    types,
    reading,
    writing: (bench, work) =>
      again(() =>
        committingOk(db, async (transaction) => {
          await shareTables(transaction)
          await queueForBench(transaction, bench)
          return work(transaction)
        }),
      ),
    alone: (work) =>
      committingOk(db, async (transaction) => {
        await sql`lock table data_version in access exclusive mode`.execute(transaction)
        return work(transaction)
      }),
    snapshot: (lines) => snapshot(db, lines),
    announce: async (transaction, bench) => {
      await sql`select pg_notify(${Listening.CHANNEL}, ${`${token} ${bench}`})`.execute(transaction)
    },
    onAnnounced: (heard) => listening.onHeard(heard),
    isMisfit: (thrown) => /^(22|23|42)/.test(codeOf(thrown)),
    async close() {
      await listening.stop()
      await db.destroy()
    },
  }
}

/**
 * Keeps migrations and restore away while this transaction runs. It is LOCK TABLE because that waits before
 * the snapshot is taken; an advisory lock would wait holding a snapshot of the tables as they were.
 */
async function shareTables(transaction: Db): Promise<void> {
  await sql`lock table data_version in access share mode`.execute(transaction)
}

/** Writes of a bench one after the other: what a write looked at is still so when it commits. */
async function queueForBench(transaction: Db, bench: string): Promise<void> {
  const row = await transaction
    .selectFrom('benches')
    .select('id')
    .where('id', '=', bench)
    .forUpdate()
    .executeTakeFirst()
  // A bench that is not there yet cannot be locked: all makers of benches wait for each other.
  if (!row) await sql`select ${LOCK.newBench}`.execute(transaction)
}

const TIMES_TRIED = 4
/** Serialization failure, deadlock: nothing was kept, and trying again is right. */
const TRY_AGAIN = new Set(['40001', '40P01'])

async function again<T>(attempt: () => Promise<T>): Promise<T> {
  for (let tried = 1; ; tried++) {
    try {
      return await attempt()
    } catch (thrown) {
      if (tried === TIMES_TRIED || !TRY_AGAIN.has(codeOf(thrown))) throw thrown
    }
  }
}

async function* snapshot(db: Db, lines: (db: Db) => AsyncIterable<string>): AsyncIterable<string> {
  const transaction = await db
    .startTransaction()
    .setIsolationLevel('repeatable read')
    .setAccessMode('read only')
    .execute()
  try {
    await shareTables(transaction)
    yield* lines(transaction)
  } finally {
    // It has only read, so there is nothing to keep.
    await transaction.rollback().execute()
  }
}
