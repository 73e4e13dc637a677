import type { ExpressionBuilder } from 'kysely'
import { nameKey } from '../../kernel/index.js'
import type { RollRecord, RollsWanted } from '../../lab/index.js'
import type { Db, Schema } from '../schema.js'
import { rollRecord } from './rolls-rows.js'
import { searchedFor } from './searched.js'

/** Rolls as they are looked for: newest number first, a page at a time, and how many there are in all. */
export async function findRolls(
  db: Db,
  bench: string,
  wanted: RollsWanted,
): Promise<{ rolls: RollRecord[]; found: number }> {
  const all = db
    .selectFrom('rolls')
    .where('bench_id', '=', bench)
    .where((e) => e.and(conditions(e, wanted)))
  const { found } = await all.select((e) => e.fn.countAll<number>().as('found')).executeTakeFirstOrThrow()
  const { after } = wanted
  const page =
    after === null
      ? all
      : all.where((e) => e.or([e('year', '<', after.year), e.and([e('year', '=', after.year), e('n', '<', after.n)])]))
  const rows = await page.selectAll().orderBy('year', 'desc').orderBy('n', 'desc').limit(wanted.most).execute()
  return { rolls: rows.map(rollRecord), found: Number(found) }
}

function conditions(e: ExpressionBuilder<Schema, 'rolls'>, wanted: RollsWanted) {
  return [
    ...searchedFor(wanted.words),
    ...(wanted.state.length > 0 ? [e('state', 'in', wanted.state)] : []),
    ...(wanted.film === '' ? [] : [e('film_key', '=', nameKey(wanted.film))]),
    ...(wanted.whose === '' ? [] : [e('whose_key', '=', nameKey(wanted.whose))]),
    ...(wanted.process === null ? [] : [e('process', '=', wanted.process)]),
    ...(wanted.due_by === null ? [] : [e('due', '<=', wanted.due_by)]),
    ...(wanted.order_id === null ? [] : [e('order_id', '=', wanted.order_id)]),
    ...(wanted.takenInFrom === null ? [] : [e('taken_in_at', '>=', wanted.takenInFrom)]),
    ...(wanted.takenInBefore === null ? [] : [e('taken_in_at', '<', wanted.takenInBefore)]),
  ]
}
