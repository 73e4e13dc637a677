import type { FeedEntry, FeedPort } from '../../lab/index.js'
import type { Db, FeedRow } from '../schema.js'

/** The changes of one bench, numbered without gaps. */
export function feedRoom(db: Db, bench: string): FeedPort {
  return {
    async tell(change, at) {
      const { feed_seq } = await db
        .updateTable('benches')
        .set((column) => ({ feed_seq: column('feed_seq', '+', 1) }))
        .where('id', '=', bench)
        .returning('feed_seq')
        .executeTakeFirstOrThrow()
      await db
        .insertInto('feed')
        .values({ bench_id: bench, seq: feed_seq, kind: change.kind, subject: change.subject, at })
        .execute()
    },
    async after(seq, most) {
      const rows = await db
        .selectFrom('feed')
        .selectAll()
        .where('bench_id', '=', bench)
        .where('seq', '>', seq)
        .orderBy('seq')
        .limit(most)
        .execute()
      return rows.map(entry)
    },
    async last() {
      const row = await db.selectFrom('benches').select('feed_seq').where('id', '=', bench).executeTakeFirst()
      return row?.feed_seq ?? 0
    },
  }
}

const entry = (row: FeedRow): FeedEntry => ({
  seq: row.seq,
  kind: row.kind as FeedEntry['kind'],
  subject: row.subject,
  at: row.at,
})
