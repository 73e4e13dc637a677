import { Readable } from 'node:stream'
import { instantText, ok } from '../../kernel/index.js'
import { benchView, changeSettings, openDemo, removeDemo, today } from '../../lab/index.js'
import { linesOf } from '../../store/index.js'
import { type Handlers, read, write } from '../call.js'
import { streamFeed } from '../feed.js'
import { settle } from '../house.js'
import { BENCH_COOKIE } from '../who.js'

type Names =
  | 'health'
  | 'today'
  | 'feed'
  | 'getBench'
  | 'changeSettings'
  | 'openDemo'
  | 'removeDemo'
  | 'backup'
  | 'restore'

export const houseHandlers: Handlers<Names> = {
  health: async ({ house }) => ok({ status: 'ready', engine: house.store.engine, now: instantText(house.clock.now()) }),
  today: async (call) => ok(await read(call, async (rooms) => today(rooms, await benchView(call.context, rooms)))),
  feed: async ({ house, context, request, reply }) => {
    if (context.actor.role === 'device') {
      const home = { ...context, bench: house.homeBench }
      await house.store.write(home, null, async (rooms) =>
        ok(await rooms.people.seen(context.actor.id, context.clock.now())),
      )
    }
    await streamFeed(house, context.bench, request, reply)
    return ok(null)
  },
  getBench: async (call) => ok(await read(call, (rooms) => benchView(call.context, rooms))),
  changeSettings: (call) => write(call, (context, rooms) => changeSettings(context, rooms, call.body)),
  openDemo: async (call) => {
    const demo = { ...call.context, bench: call.house.ids.next() }
    const opened = await call.house.store.write(demo, call.key, (rooms) => openDemo(demo, rooms))
    if (opened.ok)
      call.reply.setCookie(BENCH_COOKIE, opened.value.bench_id, { httpOnly: true, sameSite: 'strict', path: '/' })
    return opened
  },
  removeDemo: async (call) => {
    const home = { ...call.context, bench: call.house.homeBench }
    const removed = await call.house.store.write(home, call.key, removeDemo)
    if (removed.ok) call.reply.clearCookie(BENCH_COOKIE, { path: '/' })
    return removed
  },
  backup: async ({ house }) => {
    const day = instantText(house.clock.now()).slice(0, 10)
    return ok({ body: Readable.from(house.store.backup()), fileName: `wetside-${day}.backup.ndjson` })
  },
  restore: async ({ house, request }) => {
    const restored = await house.store.restore(linesOf(request.body as Readable))
    if (!restored.ok) return restored
    house.homeBench = await settle(house.store, house.clock, house.ids, 'UTC')
    for (const feed of house.feeds) feed.end()
    return ok({ tables: restored.value.tables, rows: restored.value.rows, data_version: restored.value.dataVersion })
  },
}
