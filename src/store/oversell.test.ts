import { Kysely, PostgresDialect, SqliteDialect } from 'kysely'
import pg from 'pg'
import { expect, inject, it } from 'vitest'
import { expectOk } from '../kernel/index.js'
import type { Store } from '../lab/index.js'
import { openKept } from './engines/kept.js'
import { openStore } from './index.js'
import { shelfRoom } from './rooms/shelf.js'
import type { Db, Schema } from './schema.js'
import { tempFolders } from './suite/folders.js'
import { keep, NOON, newBench, world } from './suite/house.js'
import { freshDatabase } from './suite/postgres-server.js'
import { entryAt, filledBottle, legTo } from './suite/shelf-samples.js'

const folder = tempFolders()

/**
 * The withdrawal itself, without the queue in which a store's writes stand: each on a connection of its own and in no
 * order, as a second program on the same data would come.
 */
async function allAtOnce(store: Store, db: () => Db, wanted: number, times: number) {
  const at = world(19)
  const context = await newBench(store, at)
  const { bottleId, lot } = await keep(store, context, (rooms) => filledBottle(rooms, at.ids, NOON, 300_000))
  await store.close()
  const raw = db()
  const take = () => {
    const entry = entryAt(at.ids.next(), NOON + 9, [legTo(bottleId, lot.id, -wanted)])
    return shelfRoom(raw, context.bench).post({ entry, demands: {} })
  }
  const answers = await Promise.all(Array.from({ length: times }, take))
  const container = await shelfRoom(raw, context.bench).container(bottleId)
  await raw.destroy()
  return { had: answers.filter((answer) => answer === 'posted').length, left: container?.held }
}

const BIGINT = 20

it.each([
  ['two who want the last 300 mL', 300_000, 2, 1, 0],
  ['a thousand who want 1 mL of it each', 1000, 1000, 300, 0],
])(
  '%s never have more than there is, on SQLite and on PostgreSQL',
  async (_, wanted, times, had, left) => {
    const file = `${folder()}/data.db`
    const sqlite = expectOk(await openStore({ kind: 'sqlite', file }, world(92)))
    const onFile = () => new Kysely<Schema>({ dialect: new SqliteDialect({ database: openKept(file) }) })
    expect(await allAtOnce(sqlite, onFile, wanted, times)).toEqual({ had, left })
    const url = await freshDatabase(inject('postgres'))
    const postgres = expectOk(await openStore({ kind: 'postgres', url }, world(93)))
    const pooled = () =>
      new Kysely<Schema>({
        dialect: new PostgresDialect({
          pool: new pg.Pool({
            connectionString: url,
            max: 8,
            types: { getTypeParser: (oid, format) => (oid === BIGINT ? Number : pg.types.getTypeParser(oid, format)) },
          }),
        }),
      })
    expect(await allAtOnce(postgres, pooled, wanted, times)).toEqual({ had, left })
  },
  120_000,
)
