import { nameKey } from '../../kernel/index.js'
import type { Progress, Received, RunRecord, RunsPort, RunsWanted } from '../../lab/index.js'
import type { Db } from '../schema.js'
import { eventRow, received, reelRows, runRecord, runRow, verdictRecord, verdictRow } from './runs-rows.js'

/** Runs of one bench with what happened in them, in one transaction. */
export function runsRoom(db: Db, bench: string): RunsPort {
  const runs = () => db.selectFrom('runs').selectAll().where('bench_id', '=', bench)
  return {
    async add(run) {
      await db.insertInto('runs').values(runRow(bench, run)).execute()
      await db.insertInto('run_reels').values(reelRows(bench, run)).execute()
    },
    async run(id) {
      const row = await runs().where('id', '=', id).executeTakeFirst()
      return row ? runRecord(row) : null
    },
    async hold(id) {
      // Changing nothing, but taking the run's row; SQLite has no "for update", and one writer at a time anyway.
      const row = await db
        .updateTable('runs')
        .set((column) => ({ last_seq: column.ref('last_seq') }))
        .where('bench_id', '=', bench)
        .where('id', '=', id)
        .returningAll()
        .executeTakeFirst()
      return row ? runRecord(row) : null
    },
    newest: (wanted) => newest(db, bench, wanted),
    async events(runId, after, most) {
      const query = db
        .selectFrom('run_events')
        .selectAll()
        .where('bench_id', '=', bench)
        .where('run_id', '=', runId)
        .where('seq', '>', after)
        .orderBy('seq')
      const rows = await (most === undefined ? query : query.limit(most)).execute()
      return rows.map(received)
    },
    async elsewhere(runId, eventIds) {
      if (eventIds.length === 0) return null
      const row = await db
        .selectFrom('run_events')
        .select('id')
        .where('bench_id', '=', bench)
        .where('id', 'in', [...eventIds])
        .where('run_id', '!=', runId)
        .executeTakeFirst()
      return row?.id ?? null
    },
    append: (runId, added, progress) => append(db, bench, runId, added, progress),
    async addVerdict(verdict) {
      const { said } = await db
        .selectFrom('run_verdicts')
        .select((e) => e.fn.countAll<number>().as('said'))
        .where('bench_id', '=', bench)
        .where('run_id', '=', verdict.runId)
        .executeTakeFirstOrThrow()
      await db
        .insertInto('run_verdicts')
        .values(verdictRow(bench, verdict, Number(said) + 1))
        .execute()
    },
    async verdicts(runIds) {
      if (runIds.length === 0) return []
      const rows = await db
        .selectFrom('run_verdicts')
        .selectAll()
        .where('bench_id', '=', bench)
        .where('run_id', 'in', [...runIds])
        .orderBy('run_id')
        .orderBy('position')
        .execute()
      return rows.map(verdictRecord)
    },
  }
}

/** Numbers are given under the run's row lock: a write that fails gives them back, so none is left out. */
async function append(
  db: Db,
  bench: string,
  runId: string,
  added: readonly Omit<Received, 'seq'>[],
  { state, startedAt, endedAt }: Progress,
): Promise<Received[]> {
  const { last_seq } = await db
    .updateTable('runs')
    .set((column) => ({
      last_seq: column('last_seq', '+', added.length),
      state,
      started_at: startedAt,
      ended_at: endedAt,
      listed_at: startedAt ?? column.ref('planned_at'),
    }))
    .where('bench_id', '=', bench)
    .where('id', '=', runId)
    .returning('last_seq')
    .executeTakeFirstOrThrow()
  const first = last_seq - added.length + 1
  const numbered = added.map((one, i) => ({ ...one, seq: first + i }))
  const rows = numbered.map((one) => eventRow(bench, runId, one))
  if (rows.length > 0) await db.insertInto('run_events').values(rows).execute()
  return numbered
}

const ENDED = ['finished', 'abandoned']

async function newest(db: Db, bench: string, wanted: RunsWanted): Promise<RunRecord[]> {
  const { film, ended, practice, before, most } = wanted
  let query = db.selectFrom('runs as r').selectAll('r').where('r.bench_id', '=', bench)
  if (ended !== null) query = query.where('r.state', ended ? 'in' : 'not in', ENDED)
  if (practice !== null) query = query.where('r.practice', practice ? 'is not' : 'is', null)
  if (film !== null)
    query = query.where(({ exists, selectFrom }) =>
      exists(
        selectFrom('run_reels as l')
          .select('l.position')
          .whereRef('l.bench_id', '=', 'r.bench_id')
          .whereRef('l.run_id', '=', 'r.id')
          .where('l.film_key', '=', nameKey(film)),
      ),
    )
  if (before !== null) {
    const place = await db
      .selectFrom('runs')
      .select(['listed_at', 'id'])
      .where('bench_id', '=', bench)
      .where('id', '=', before)
      .executeTakeFirst()
    // A run that is not there has none after it.
    if (place === undefined) return []
    query = query.where((e) =>
      e.or([
        e('r.listed_at', '<', place.listed_at),
        e.and([e('r.listed_at', '=', place.listed_at), e('r.id', '<', place.id)]),
      ]),
    )
  }
  const rows = await query.orderBy('r.listed_at', 'desc').orderBy('r.id', 'desc').limit(most).execute()
  return rows.map(runRecord)
}
