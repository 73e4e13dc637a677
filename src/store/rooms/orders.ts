import type { OrderLink, OrdersPort } from '../../lab/index.js'
import type { OrderStatement } from '../../wire/index.js'
import type { Db } from '../schema.js'
import type { OrderLinkRow } from '../schema-rolls.js'
import { statementsRoom } from './statements.js'

/** Orders of one bench, their links and counts, in one transaction. */
export function ordersRoom(db: Db, bench: string): OrdersPort {
  const links = () => db.selectFrom('order_links').selectAll().where('bench_id', '=', bench)
  return {
    ...statementsRoom<OrderStatement>(db, bench, 'order'),
    async countOut({ orderId, count, at, by }) {
      const added = await db
        .insertInto('order_counts')
        .values({ bench_id: bench, order_id: orderId, counted_out: count, at, done_by: by })
        .onConflict((conflict) => conflict.columns(['bench_id', 'order_id']).doNothing())
        .executeTakeFirst()
      return added.numInsertedOrUpdatedRows === 0n ? 'there' : 'noted'
    },
    async countsOut(orderIds) {
      if (orderIds.length === 0) return []
      const rows = await db
        .selectFrom('order_counts')
        .selectAll()
        .where('bench_id', '=', bench)
        .where('order_id', 'in', [...orderIds])
        .execute()
      return rows.map((row) => ({ orderId: row.order_id, count: row.counted_out, at: row.at, by: row.done_by }))
    },
    async addLink(link) {
      await db.insertInto('order_links').values(linkRow(bench, link)).execute()
    },
    async links(orderIds) {
      if (orderIds.length === 0) return []
      const rows = await links()
        .where('order_id', 'in', [...orderIds])
        .orderBy('made_at')
        .orderBy('id')
        .execute()
      return rows.map(linkRecord)
    },
    async link(id) {
      const row = await links().where('id', '=', id).executeTakeFirst()
      return row ? linkRecord(row) : null
    },
    async linkByHash(tokenHash) {
      const row = await links().where('token_hash', '=', tokenHash).executeTakeFirst()
      return row ? linkRecord(row) : null
    },
    async revokeLink(id, at) {
      await db
        .updateTable('order_links')
        .set({ revoked_at: at })
        .where('bench_id', '=', bench)
        .where('id', '=', id)
        .where('revoked_at', 'is', null)
        .execute()
    },
  }
}

const linkRow = (bench: string, link: OrderLink): OrderLinkRow => ({
  bench_id: bench,
  id: link.id,
  order_id: link.orderId,
  token_hash: link.tokenHash,
  made_at: link.madeAt,
  expires_at: link.expiresAt,
  revoked_at: link.revokedAt,
})

const linkRecord = (row: OrderLinkRow): OrderLink => ({
  id: row.id,
  orderId: row.order_id,
  tokenHash: row.token_hash,
  madeAt: row.made_at,
  expiresAt: row.expires_at,
  revokedAt: row.revoked_at,
})
