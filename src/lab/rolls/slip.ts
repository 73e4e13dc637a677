import { failed, type Instant, ok, problem, type Result } from '../../kernel/index.js'
import type { RollSummary, OrderRecord as View } from '../../wire/index.js'
import type { Context } from '../context.js'
import type { Rooms } from '../store.js'
import { getOrder, liveLink } from './orders.js'
import type { OrderLink } from './orders-port.js'
import { getRoll } from './queries.js'

/** What a slip says: the order, when it was handed over, and the link that was made for it. */
interface Slip {
  readonly order: View
  readonly handedOver: Instant
  readonly link: OrderLink | null
}

/**
 * What stands on the slip of an order. One whose rolls are not all taken in has none: it would promise other film
 * than was counted. A link is named by the hash of its token, and has to be this order's.
 */
export async function slipOf(
  context: Context,
  rooms: Rooms,
  orderId: string,
  tokenHash: string | null,
): Promise<Result<Slip>> {
  const found = await getOrder(rooms, orderId)
  if (!found.ok) return found
  const order = found.value
  if (order.rolls.length !== order.counted_in)
    return failed(problem('order.not-all-taken-in', { counted: order.counted_in, taken: order.rolls.length }))
  const link = tokenHash === null ? null : await liveLink(context, rooms, tokenHash)
  if (tokenHash !== null && link?.orderId !== orderId) return failed(problem('order.link-dead', {}, 'token'))
  const first = await rooms.orders.revision(orderId, 1)
  return ok({ order, handedOver: first?.savedAt ?? context.clock.now(), link })
}

/** The rolls that stickers are wanted of: an order's, or those named, or both. */
export async function stickerRolls(
  rooms: Rooms,
  orderId: string | null,
  rollIds: readonly string[],
): Promise<Result<RollSummary[]>> {
  const rolls: RollSummary[] = []
  if (orderId !== null) {
    const order = await getOrder(rooms, orderId)
    if (!order.ok) return order
    rolls.push(...order.value.rolls)
  }
  for (const id of new Set(rollIds)) {
    const roll = await getRoll(rooms, id)
    if (!roll.ok) return roll
    rolls.push(roll.value)
  }
  return rolls.length === 0 ? failed(problem('order.no-stickers', {})) : ok(rolls)
}
