import type { Bench, HousePort } from '../../lab/index.js'
import type { BenchRow, Db } from '../schema.js'
import { tablesOfABench } from '../tables.js'

/** The benches themselves. Unlike the other rooms it sees all of them. */
export function houseRoom(db: Db): HousePort {
  return {
    async bench(id) {
      const row = await db.selectFrom('benches').selectAll().where('id', '=', id).executeTakeFirst()
      return row ? benchRecord(row) : null
    },
    async benches() {
      const rows = await db
        .selectFrom('benches')
        .selectAll()
        .orderBy('kind', 'desc')
        .orderBy('created_at')
        .orderBy('id')
        .execute()
      return rows.map(benchRecord)
    },
    async addBench(bench) {
      const { id, kind, ...settings } = benchColumns(bench)
      await db
        .insertInto('benches')
        .values({ id, kind, ...settings, feed_seq: 0 })
        .execute()
    },
    async changeBench(bench) {
      const { id, ...settings } = benchColumns(bench)
      await db.updateTable('benches').set(settings).where('id', '=', id).execute()
    },
    removeBench: (id) => removeBench(db, id),
  }
}

async function removeBench(db: Db, id: string): Promise<void> {
  // Changing nothing, but taking the bench's row: a write at the bench ends before its rows go.
  const bench = await db
    .updateTable('benches')
    .set((column) => ({ feed_seq: column.ref('feed_seq') }))
    .where('id', '=', id)
    .returning('kind')
    .executeTakeFirst()
  if (bench?.kind === 'own') throw new Error('Only a demo bench may be removed.')
  for (const table of tablesOfABench()) await db.deleteFrom(table).where('bench_id', '=', id).execute()
  await db.deleteFrom('benches').where('id', '=', id).execute()
}

const benchColumns = (bench: Bench): Omit<BenchRow, 'feed_seq'> => ({
  id: bench.id,
  kind: bench.kind,
  name: bench.name,
  units: bench.units,
  paper: bench.paper,
  zone: bench.zone,
  created_at: bench.createdAt,
})

const benchRecord = (row: BenchRow): Bench => ({
  id: row.id,
  kind: row.kind,
  name: row.name,
  units: row.units,
  paper: row.paper,
  zone: row.zone,
  createdAt: row.created_at,
})
