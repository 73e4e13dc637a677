import { compareNames } from '../../kernel/index.js'
import type { KitPort, ThermometerRecord } from '../../lab/index.js'
import type { Db } from '../schema.js'
import { checkRecord, checkRow, thermometerRecord, thermometerRow } from './kit-rows.js'

/** Thermometers of one bench and their checks, in one transaction. */
export function kitRoom(db: Db, bench: string): KitPort {
  return {
    addRevision: (record) => addRevision(db, bench, record),
    async newest(id) {
      const row = await revisions(db, bench)
        .where('thermometer_id', '=', id)
        .orderBy('revision', 'desc')
        .limit(1)
        .executeTakeFirst()
      return row ? thermometerRecord(row) : null
    },
    async revision(id, revision) {
      const row = await revisions(db, bench)
        .where('thermometer_id', '=', id)
        .where('revision', '=', revision)
        .executeTakeFirst()
      return row ? thermometerRecord(row) : null
    },
    async all() {
      const rows = await newestKept(db, bench).execute()
      return rows.map(thermometerRecord).sort((a, b) => compareNames(a.name, b.name) || compareNames(a.id, b.id))
    },
    async addCheck(check) {
      if (check.withdrawn) throw new Error('A check is added first and withdrawn by a row of its own.')
      await db.insertInto('thermometer_checks').values(checkRow(bench, check)).execute()
    },
    async withdrawCheck(id, withdrawalId, at, by) {
      await db
        .insertInto('thermometer_check_withdrawals')
        .values({ bench_id: bench, id: withdrawalId, check_id: id, at, done_by: by })
        .onConflict((conflict) => conflict.columns(['bench_id', 'check_id']).doNothing())
        .execute()
    },
    async check(id) {
      const row = await checks(db, bench).where('c.id', '=', id).executeTakeFirst()
      return row ? checkRecord(row) : null
    },
    async checks(thermometerId) {
      let query = checks(db, bench).orderBy('c.at').orderBy('c.id')
      if (thermometerId !== undefined) query = query.where('c.thermometer_id', '=', thermometerId)
      return (await query.execute()).map(checkRecord)
    },
  }
}

const revisions = (db: Db, bench: string) =>
  db.selectFrom('thermometer_revisions').selectAll().where('bench_id', '=', bench)

async function addRevision(db: Db, bench: string, record: ThermometerRecord): Promise<'added' | 'conflict'> {
  if (record.revision === 1)
    await db
      .insertInto('thermometers')
      .values({ bench_id: bench, id: record.id, created_at: record.savedAt })
      .onConflict((conflict) => conflict.doNothing())
      .execute()
  const added = await db
    .insertInto('thermometer_revisions')
    .values(thermometerRow(bench, record))
    .onConflict((conflict) => conflict.columns(['bench_id', 'thermometer_id', 'revision']).doNothing())
    .executeTakeFirst()
  return added.numInsertedOrUpdatedRows === 0n ? 'conflict' : 'added'
}

/** The newest revision of each thermometer that is not removed. */
const newestKept = (db: Db, bench: string) =>
  db
    .selectFrom('thermometer_revisions as r')
    .selectAll('r')
    .where('r.bench_id', '=', bench)
    .where('r.removed', '=', 0)
    .where(({ not, exists, selectFrom }) =>
      not(
        exists(
          selectFrom('thermometer_revisions as later')
            .select('later.revision')
            .whereRef('later.bench_id', '=', 'r.bench_id')
            .whereRef('later.thermometer_id', '=', 'r.thermometer_id')
            .whereRef('later.revision', '>', 'r.revision'),
        ),
      ),
    )

const checks = (db: Db, bench: string) =>
  db
    .selectFrom('thermometer_checks as c')
    .leftJoin('thermometer_check_withdrawals as w', (join) =>
      join.onRef('w.bench_id', '=', 'c.bench_id').onRef('w.check_id', '=', 'c.id'),
    )
    .selectAll('c')
    .select('w.id as withdrawal_id')
    .where('c.bench_id', '=', bench)
