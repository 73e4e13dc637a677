import { compareNames } from '../../kernel/index.js'
import type { TimeRecord, TimesPort } from '../../lab/index.js'
import type { Db, TimePointRow } from '../schema.js'
import { pointRows, timeRecord, timeRow } from './times-rows.js'

/** Developing times of one bench, in one transaction. */
export function timesRoom(db: Db, bench: string): TimesPort {
  return {
    addRevision: (record) => addRevision(db, bench, record),
    async newest(id) {
      const row = await revisions(db, bench)
        .where('time_id', '=', id)
        .orderBy('revision', 'desc')
        .limit(1)
        .executeTakeFirst()
      return row ? timeRecord(row, await pointsOf(db, bench, id, row.revision)) : null
    },
    async revision(id, revision) {
      const row = await revisions(db, bench)
        .where('time_id', '=', id)
        .where('revision', '=', revision)
        .executeTakeFirst()
      return row ? timeRecord(row, await pointsOf(db, bench, id, revision)) : null
    },
    all: () => all(db, bench),
  }
}

const revisions = (db: Db, bench: string) =>
  db.selectFrom('reference_time_revisions').selectAll().where('bench_id', '=', bench)

async function addRevision(db: Db, bench: string, record: TimeRecord): Promise<'added' | 'conflict'> {
  if (record.revision === 1)
    await db
      .insertInto('reference_times')
      .values({ bench_id: bench, id: record.id, created_at: record.savedAt })
      .onConflict((conflict) => conflict.doNothing())
      .execute()
  const added = await db
    .insertInto('reference_time_revisions')
    .values(timeRow(bench, record))
    .onConflict((conflict) => conflict.columns(['bench_id', 'time_id', 'revision']).doNothing())
    .executeTakeFirst()
  if (added.numInsertedOrUpdatedRows === 0n) return 'conflict'
  const points = pointRows(bench, record)
  if (points.length > 0) await db.insertInto('reference_time_points').values(points).execute()
  return 'added'
}

const pointsOf = (db: Db, bench: string, id: string, revision: number): Promise<TimePointRow[]> =>
  db
    .selectFrom('reference_time_points')
    .selectAll()
    .where('bench_id', '=', bench)
    .where('time_id', '=', id)
    .where('revision', '=', revision)
    .orderBy('position')
    .execute()

async function all(db: Db, bench: string): Promise<TimeRecord[]> {
  const rows = await newestKept(db, bench).selectAll('r').execute()
  const points = await newestKept(db, bench)
    .innerJoin('reference_time_points as p', (join) =>
      join
        .onRef('p.bench_id', '=', 'r.bench_id')
        .onRef('p.time_id', '=', 'r.time_id')
        .onRef('p.revision', '=', 'r.revision'),
    )
    .selectAll('p')
    .orderBy('p.position')
    .execute()
  const byTime = new Map<string, TimePointRow[]>(rows.map((row) => [row.time_id, []]))
  for (const point of points) byTime.get(point.time_id)?.push(point)
  return rows.map((row) => timeRecord(row, byTime.get(row.time_id) ?? [])).sort(byFilmAndDeveloper)
}

/** The newest revision `r` of each record that is not removed. */
const newestKept = (db: Db, bench: string) =>
  db
    .selectFrom('reference_time_revisions as r')
    .where('r.bench_id', '=', bench)
    .where('r.removed', '=', 0)
    .where(({ not, exists, selectFrom }) =>
      not(
        exists(
          selectFrom('reference_time_revisions as later')
            .select('later.revision')
            .whereRef('later.bench_id', '=', 'r.bench_id')
            .whereRef('later.time_id', '=', 'r.time_id')
            .whereRef('later.revision', '>', 'r.revision'),
        ),
      ),
    )

const byFilmAndDeveloper = (a: TimeRecord, b: TimeRecord): number =>
  compareNames(a.film, b.film) ||
  compareNames(a.developer, b.developer) ||
  (a.exposureIndex ?? 0) - (b.exposureIndex ?? 0) ||
  compareNames(a.id, b.id)
