import { ok } from '../../kernel/index.js'
import { type Bench, type Rooms, slipOf, stickerRolls } from '../../lab/index.js'
import { say } from '../../words/index.js'
import { type Caller, type Handlers, read, type Sent } from '../call.js'
import { sha256 } from '../secrets.js'

/** Setting paper takes a library of its own, which is loaded with the first that is asked for. */
const print = () => import('../../print/index.js')
const benchOf = async (caller: Caller, rooms: Rooms): Promise<Bench> =>
  (await rooms.house.bench(caller.context.bench)) as Bench

export const rollPaperHandlers: Handlers<'rollStickers' | 'orderSlip'> = {
  rollStickers: async (call) => {
    const { order_id, roll_ids, paper, used } = call.query
    const found = await read(call, async (rooms) => {
      const rolls = await stickerRolls(rooms, order_id ?? null, roll_ids?.split(',') ?? [])
      return rolls.ok ? ok({ rolls: rolls.value, bench: await benchOf(call, rooms) }) : rolls
    })
    if (!found.ok) return found
    const { rolls, bench } = found.value
    const body = await (await print()).stickerSheet({
      rolls,
      base: call.house.address(),
      paper: paper ?? bench.paper,
      used,
      printedAt: call.house.clock.now(),
    })
    return ok({ body, fileName: `${say('sticker.title', {}, bench.units)}.pdf` } satisfies NonNullable<Sent>)
  },
  orderSlip: async (call) => {
    const { token, paper } = call.query
    const found = await read(call, async (rooms) => {
      const slip = await slipOf(call.context, rooms, call.params.id, token === undefined ? null : sha256(token))
      return slip.ok ? ok({ ...slip.value, bench: await benchOf(call, rooms) }) : slip
    })
    if (!found.ok) return found
    const { order, handedOver, link, bench } = found.value
    const { linkAddress, orderSlip } = await print()
    const body = await orderSlip({
      bench,
      order,
      handedOver,
      link:
        link === null || token === undefined
          ? null
          : { address: linkAddress(call.house.address(), token), expiresAt: link.expiresAt },
      paper: paper ?? bench.paper,
      printedAt: call.house.clock.now(),
    })
    const title = say('slip.title', { person: order.person }, bench.units)
    return ok({ body, fileName: `${title}.pdf` } satisfies NonNullable<Sent>)
  },
}
