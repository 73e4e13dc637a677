import { DAY_MS, failed, instantText, ok, problem, type Result } from '../../kernel/index.js'
import type { OrderStanding, OrderStatement, OrderRecord as View } from '../../wire/index.js'
import type { Context } from '../context.js'
import { type Stated, standingOf, statementCommands } from '../statements.js'
import type { Rooms } from '../store.js'
import { step } from './many.js'
import type { OrderLink } from './orders-port.js'
import type { RollRecord, RollState } from './port.js'
import { summaryOf } from './shape.js'

const commands = statementCommands<OrderStatement>({
  what: 'order',
  feed: 'orders',
  port: (rooms) => rooms.orders,
  wrong: () => null,
})

/** Rolls that are neither handed back nor gone: those that a count must find. */
const here = (rolls: readonly RollRecord[]): RollRecord[] =>
  rolls.filter(({ state }) => state !== 'handed-back' && state !== 'lost' && state !== 'ruined')

/** Orders with their rolls, links and counts, each looked up once for all of them. */
async function viewsOf(rooms: Rooms, orders: readonly Stated<OrderStatement>[]): Promise<View[]> {
  const ids = orders.map(({ id }) => id)
  const rolls = await rooms.rolls.ofOrders(ids)
  const links = await rooms.orders.links(ids)
  const counts = await rooms.orders.countsOut(ids)
  return orders.map((order) => ({
    ...order.statement,
    ...standingOf(order),
    rolls: rolls.filter(({ orderId }) => orderId === order.id).map(summaryOf),
    counted_out: counts.find(({ orderId }) => orderId === order.id)?.count ?? null,
    links: links
      .filter(({ orderId }) => orderId === order.id)
      .map(({ id, madeAt, expiresAt, revokedAt }) => ({
        id,
        made_at: instantText(madeAt),
        expires_at: instantText(expiresAt),
        revoked: revokedAt !== null,
      })),
  }))
}

const viewOf = async (rooms: Rooms, order: Stated<OrderStatement>): Promise<View> =>
  (await viewsOf(rooms, [order]))[0] as View

const shown = async (rooms: Rooms, done: Result<Stated<OrderStatement>>): Promise<Result<View>> =>
  done.ok ? ok(await viewOf(rooms, done.value)) : done

export const addOrder = async (context: Context, rooms: Rooms, statement: OrderStatement) =>
  shown(rooms, await commands.keep(context, rooms, statement))
export const correctOrder = async (
  context: Context,
  rooms: Rooms,
  id: string,
  seen: number,
  statement: OrderStatement,
) => shown(rooms, await commands.correct(context, rooms, id, seen, statement))
/** An order that still has rolls stays: they would belong to nobody. */
export async function removeOrder(context: Context, rooms: Rooms, id: string, seen: number): Promise<Result<View>> {
  const rolls = await rooms.rolls.ofOrders([id])
  if (rolls.length > 0) return failed(problem('order.has-rolls', { count: rolls.length }))
  return shown(rooms, await commands.remove(context, rooms, id, seen))
}
export const undoOrder = async (context: Context, rooms: Rooms, id: string, seen: number) =>
  shown(rooms, await commands.undo(context, rooms, id, seen))

/** Newest first. */
export async function listOrders(rooms: Rooms): Promise<{ orders: View[] }> {
  return { orders: await viewsOf(rooms, (await rooms.orders.all()).reverse()) }
}

export async function getOrder(rooms: Rooms, id: string): Promise<Result<View>> {
  return shown(rooms, await commands.standing(rooms, id))
}

/** Hands an order back. What is counted must be what is here; a mismatch stops it, with both numbers. */
export async function handBack(context: Context, rooms: Rooms, id: string, counted: number): Promise<Result<View>> {
  const order = await commands.standing(rooms, id)
  if (!order.ok) return order
  const rolls = await rooms.rolls.hold(here(await rooms.rolls.ofOrders([id])).map((roll) => roll.id))
  const due = here(rolls)
  if (due.length === 0) return failed(problem('order.nothing-here', { person: order.value.statement.person }))
  if (counted !== due.length)
    return failed(problem('order.count-mismatch', { counted, expected: due.length }, 'counted_out'))
  const early = due.find(({ state }) => state === 'loaded' || state === 'taken-in')
  if (early !== undefined)
    return failed(problem('order.not-developed', { number: early.number.text, state: early.state }))
  const at = context.clock.now()
  if ((await rooms.orders.countOut({ orderId: id, count: counted, at, by: context.actor.id })) === 'there')
    return failed(problem('order.counted-before', {}))
  const taken = { state: 'handed-back' as const, run_id: null, hook: '', reason: '', at, batchId: null, retracts: null }
  for (const roll of due) await step(context, rooms, roll, taken)
  await rooms.feed.tell({ kind: 'orders', subject: id }, at)
  return ok(await viewOf(rooms, order.value))
}

/** Notes a private link by the hash of its token, which alone is kept. */
export async function addOrderLink(
  context: Context,
  rooms: Rooms,
  asked: { readonly orderId: string; readonly tokenHash: string; readonly days: number },
): Promise<Result<OrderLink>> {
  const order = await commands.standing(rooms, asked.orderId)
  if (!order.ok) return order
  const madeAt = context.clock.now()
  const link: OrderLink = {
    id: context.ids.next(),
    orderId: asked.orderId,
    tokenHash: asked.tokenHash,
    madeAt,
    expiresAt: madeAt + asked.days * DAY_MS,
    revokedAt: null,
  }
  await rooms.orders.addLink(link)
  await rooms.feed.tell({ kind: 'orders', subject: link.orderId }, madeAt)
  return ok(link)
}

export async function revokeOrderLink(context: Context, rooms: Rooms, linkId: string): Promise<Result<View>> {
  const link = await rooms.orders.link(linkId)
  if (link === null) return failed(problem('record.not-found', { what: 'link', id: linkId }))
  await rooms.orders.revokeLink(linkId, context.clock.now())
  await rooms.feed.tell({ kind: 'orders', subject: link.orderId }, context.clock.now())
  return getOrder(rooms, link.orderId)
}

/** The link of a token's hash, while it is neither withdrawn nor out of date. */
export async function liveLink(context: Context, rooms: Rooms, tokenHash: string): Promise<OrderLink | null> {
  const link = await rooms.orders.linkByHash(tokenHash)
  return link !== null && link.revokedAt === null && link.expiresAt > context.clock.now() ? link : null
}

/** How far rolls are, in words: all that a link shows. One that is unknown, expired or revoked shows nothing. */
export async function orderStanding(
  context: Context,
  rooms: Rooms,
  tokenHash: string,
  say: (state: RollState) => string,
): Promise<Result<OrderStanding>> {
  const link = await liveLink(context, rooms, tokenHash)
  const order = link === null ? null : await commands.standing(rooms, link.orderId)
  if (order === null || !order.ok) return failed(problem('order.link-dead', {}))
  const rolls = await rooms.rolls.ofOrders([order.value.id])
  return ok({
    rolls: rolls.map(({ number, state }) => ({ number: number.text, state, sentence: say(state) })),
    ready:
      rolls.length > 0 &&
      rolls.every(({ state }) => ['sleeved', 'scanned', 'handed-back', 'lost', 'ruined'].includes(state)),
  })
}
