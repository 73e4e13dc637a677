import type { Stated, StatementsPort } from '../../lab/index.js'
import type { Db } from '../schema.js'
import type { StatementRevisionRow } from '../schema-rolls.js'
import { toFlag } from './amounts.js'
import { inPieces } from './pieces.js'

/** Records of one kind at one bench, kept as revisions of what was stated. */
export function statementsRoom<S>(db: Db, bench: string, kind: string): StatementsPort<S> {
  const revisions = () =>
    db.selectFrom('statement_revisions').selectAll().where('bench_id', '=', bench).where('kind', '=', kind)
  return {
    async addRevision(record) {
      if (record.revision === 1)
        await db
          .insertInto('statements')
          .values({ bench_id: bench, id: record.id, kind, created_at: record.savedAt })
          .onConflict((conflict) => conflict.doNothing())
          .execute()
      const added = await db
        .insertInto('statement_revisions')
        .values(statementRow(bench, kind, record))
        .onConflict((conflict) => conflict.columns(['bench_id', 'statement_id', 'revision']).doNothing())
        .executeTakeFirst()
      return added.numInsertedOrUpdatedRows === 0n ? 'conflict' : 'added'
    },
    async newest(id) {
      const row = await revisions()
        .where('statement_id', '=', id)
        .orderBy('revision', 'desc')
        .limit(1)
        .executeTakeFirst()
      return row ? statementRecord<S>(row) : null
    },
    async revision(id, revision) {
      const row = await revisions().where('statement_id', '=', id).where('revision', '=', revision).executeTakeFirst()
      return row ? statementRecord<S>(row) : null
    },
    async all() {
      const rows = await revisions().orderBy('statement_id').orderBy('revision').execute()
      return newestOf(rows)
        .filter((row) => row.removed === 0)
        .map((row) => statementRecord<S>(row))
    },
    async newestOf(ids) {
      const rows = await inPieces(ids, (some) => revisions().where('statement_id', 'in', some).execute())
      return newestOf(rows.sort((a, b) => a.revision - b.revision)).map((row) => statementRecord<S>(row))
    },
  }
}

/** The last of each record, of rows in the order of their revisions. */
const newestOf = (rows: readonly StatementRevisionRow[]): StatementRevisionRow[] => [
  ...new Map(rows.map((row) => [row.statement_id, row])).values(),
]

const statementRow = <S>(bench: string, kind: string, record: Stated<S>): StatementRevisionRow => ({
  bench_id: bench,
  statement_id: record.id,
  revision: record.revision,
  kind,
  saved_at: record.savedAt,
  saved_by: record.savedBy,
  removed: toFlag(record.removed),
  statement: JSON.stringify(record.statement),
})

const statementRecord = <S>(row: StatementRevisionRow): Stated<S> => ({
  id: row.statement_id,
  revision: row.revision,
  savedAt: row.saved_at,
  savedBy: row.saved_by,
  removed: row.removed === 1,
  statement: JSON.parse(row.statement) as S,
})
