import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { failed, ok, problem } from '../../kernel/index.js'
import type { Context, LedgerEntry, Rooms, Store } from '../../lab/index.js'
import { keep, NOON, newBench, type Open, world } from './house.js'
import { containerOf, entryAt, filledBottle, legTo, lotOf } from './shelf-samples.js'

/** The verbs of the shelf's port. */
export function shelfBehaves(open: Open): void {
  const at = world(8)
  let store: Store
  beforeAll(async () => {
    store = await open()
  })
  afterAll(() => store.close())
  const look = <T>(context: Context, work: (rooms: Rooms) => Promise<T>) => store.read(context.bench, work)
  const filled = async (held = 1_000_000) => {
    const context = await newBench(store, at)
    return { context, ...(await keep(store, context, (rooms) => filledBottle(rooms, at.ids, NOON, held))) }
  }
  const post = (context: Context, entry: LedgerEntry, demands = {}) =>
    store.write(context, null, async (rooms) => {
      const posted = await rooms.shelf.post({ entry, demands })
      return posted === 'posted' ? ok(posted) : failed(problem('shelf.changed-meanwhile', { name: posted.refusedBy }))
    })

  describe('lots and containers', () => {
    it('come back as they were kept', async () => {
      const { context, bottleId, lot, mixed } = await filled()
      expect(await look(context, (rooms) => rooms.shelf.lot(lot.id))).toEqual(lot)
      expect(await look(context, (rooms) => rooms.shelf.lotByCode(lot.code))).toEqual(lot)
      expect(await look(context, (rooms) => rooms.shelf.lot(bottleId))).toBeNull()
      const held = { lotId: lot.id, held: 1_000_000, basis: 1_000_000, seq: 1, changedAt: NOON }
      expect(await look(context, (rooms) => rooms.shelf.container(bottleId))).toEqual(containerOf(bottleId, NOON, held))
      expect(await look(context, (rooms) => rooms.shelf.entry(mixed.id))).toEqual(mixed)
      expect(await look(context, (rooms) => rooms.shelf.entry(bottleId))).toBeNull()
    })

    it('take a code once, and are found by words, newest first, a page at a time', async () => {
      const { context, lot, productId } = await filled()
      const newer = lotOf(at.ids.next(), productId, NOON + 5, { note: 'Odd_one' })
      const answers = await keep(store, context, async (rooms) => [
        await rooms.shelf.addLot(newer, 'Ammonium fixer'),
        await rooms.shelf.addLot({ ...newer, id: at.ids.next() }, 'x'),
      ])
      expect(answers).toEqual(['added', 'taken'])
      const find = (words: string, after: Parameters<Rooms['shelf']['findLots']>[0]['after'] = null, most = 9) =>
        look(context, (rooms) => rooms.shelf.findLots({ words, after, most }))
      expect(await find('')).toEqual({ lots: [newer, lot], found: 2 })
      expect(await find('AMMONIUM', null, 1)).toEqual({ lots: [newer], found: 2 })
      expect(await find('fixer', { mixedAt: newer.mixedAt, id: newer.id })).toEqual({ lots: [lot], found: 2 })
      expect(await find('100 %')).toEqual({ lots: [lot], found: 1 })
      expect(await find('odd_')).toEqual({ lots: [newer], found: 1 })
      expect(await look(context, (rooms) => rooms.shelf.lots([lot.id, newer.id, productId]))).toHaveLength(2)
    })

    it('room changes, and nobody sees another bench’s', async () => {
      const { context, bottleId } = await filled()
      await keep(store, context, (rooms) => rooms.shelf.setRoom(bottleId, 2_000_000))
      expect((await look(context, (rooms) => rooms.shelf.container(bottleId)))?.room).toBe(2_000_000)
      const other = await newBench(store, at)
      expect(await look(other, (rooms) => rooms.shelf.container(bottleId))).toBeNull()
      expect(await look(other, (rooms) => rooms.shelf.all())).toEqual([])
    })
  })

  describe('an entry', () => {
    it('is read back by container and by lot, oldest first, with its legs in order', async () => {
      const { context, bottleId, lot, mixed } = await filled()
      const used = entryAt(at.ids.next(), NOON + 9, [
        legTo(bottleId, lot.id, -20_000, { basis: 0, worked: 1_500_000, met: 1_000_000 }),
      ])
      const earlier = entryAt(at.ids.next(), NOON + 5, [legTo(bottleId, lot.id, 0)], { note: 'a look' })
      expect(await post(context, used)).toMatchObject({ ok: true })
      expect(await post(context, earlier)).toMatchObject({ ok: true })
      const wanted = [mixed, earlier, used]
      expect(await look(context, (rooms) => rooms.shelf.entriesOf([bottleId]))).toEqual(wanted)
      expect(await look(context, (rooms) => rooms.shelf.entriesOfLots([lot.id]))).toEqual(wanted)
      expect(await look(context, (rooms) => rooms.shelf.entriesOfLots([]))).toEqual([])
      expect(await look(context, (rooms) => rooms.shelf.holding(lot.id))).toMatchObject([{ id: bottleId }])
      expect(await look(context, (rooms) => rooms.shelf.some([bottleId, lot.id]))).toMatchObject([{ id: bottleId }])
      const now = await look(context, (rooms) => rooms.shelf.container(bottleId))
      expect(now).toMatchObject({ held: 980_000, basis: 1_000_000, worked: 1_500_000, met: 1_000_000, seq: 3 })
    })

    it('tests are found by product and uses by run, without those that were taken back', async () => {
      const { context, bottleId, lot, productId } = await filled()
      const [run, leg] = [at.ids.next(), [legTo(bottleId, lot.id, 0)]]
      const test = { of: 'ph', ph: 5 } as const
      const tested = entryAt(at.ids.next(), NOON + 1, leg, { told: { kind: 'tested', test, met_rolls: 0 } })
      const wrong = entryAt(at.ids.next(), NOON + 2, leg, { told: { kind: 'tested', test, met_rolls: 0 } })
      const back = entryAt(at.ids.next(), NOON + 3, leg, { told: { kind: 'taken-back' }, retracts: wrong.id })
      const amounts = { film: [], rolls: 1, poured_ml: 300, lost_ml: 20, roll_ids: [] }
      const used = entryAt(at.ids.next(), NOON + 4, leg, { told: { kind: 'used', ...amounts, run_id: run } })
      const other = entryAt(at.ids.next(), NOON + 5, leg, { told: { kind: 'used', ...amounts, run_id: null } })
      for (const entry of [tested, wrong, back, used, other])
        expect(await post(context, entry)).toMatchObject({ ok: true })
      const tests = (ids: string[]) => look(context, (rooms) => rooms.shelf.testsOfProducts(ids))
      expect(await tests([productId, bottleId])).toEqual([{ productId, entry: tested }])
      expect(await tests([bottleId])).toEqual([])
      expect(await look(context, (rooms) => rooms.shelf.usesOfRun(run))).toEqual([used])
      expect(await look(context, (rooms) => rooms.shelf.usesOfRun(bottleId))).toEqual([])
    })

    it('frees an emptied bottle for another lot, and lets no other in before', async () => {
      const { context, bottleId, lot, productId } = await filled()
      const other = lotOf(at.ids.next(), productId, NOON)
      await keep(store, context, (rooms) => rooms.shelf.addLot(other, 'x'))
      const fill = () => entryAt(at.ids.next(), NOON + 9, [legTo(bottleId, other.id, 1)])
      expect(await post(context, entryAt(at.ids.next(), NOON + 1, [legTo(bottleId, lot.id, -999_999)]))).toMatchObject({
        ok: true,
      })
      expect(await post(context, fill())).toMatchObject({ ok: false })
      expect(await post(context, entryAt(at.ids.next(), NOON + 2, [legTo(bottleId, lot.id, -1)]))).toMatchObject({
        ok: true,
      })
      expect(await post(context, fill())).toMatchObject({ ok: true })
      expect(await look(context, (rooms) => rooms.shelf.container(bottleId))).toMatchObject({
        lotId: other.id,
        held: 1,
      })
    })

    it.each([
      ['more than there is', { held: -1_000_001 }, {}],
      ['more than there is room for', { held: 1 }, {}],
      ['more of its basis than there is', { held: -1, basis: -1_000_001 }, {}],
      ['work undone that was not done', { held: 0, worked: -1 }, {}],
      ['rolls taken back that were not met', { held: 0, met: -1 }, {}],
      ['more work than it carries', { held: 0, worked: 2_000_001 }, { carries: 2_000_000 }],
      ['a state that somebody changed meanwhile', { held: -1 }, { seen: 0 }],
    ])('does not book %s, and leaves nothing', async (_, change, demand) => {
      const { context, bottleId, lot, mixed } = await filled()
      const leg = { ...legTo(bottleId, lot.id, 0), basis: 0, ...change }
      const asked = entryAt(at.ids.next(), NOON + 9, [leg])
      expect(await post(context, asked, { [bottleId]: demand })).toMatchObject({
        ok: false,
        problem: { details: { name: bottleId } },
      })
      expect(await look(context, (rooms) => rooms.shelf.entriesOf([bottleId]))).toEqual([mixed])
      expect(await look(context, (rooms) => rooms.shelf.container(bottleId))).toMatchObject({ held: 1_000_000, seq: 1 })
    })

    it('books up to the very last', async () => {
      const { context, bottleId, lot } = await filled()
      const leg = legTo(bottleId, lot.id, -1_000_000, { worked: 2_000_000 })
      const demands = { [bottleId]: { carries: 2_000_000, seen: 1 } }
      expect(await post(context, entryAt(at.ids.next(), NOON + 9, [leg]), demands)).toMatchObject({ ok: true })
    })

    it('is taken back once', async () => {
      const { context, bottleId, lot, mixed } = await filled()
      const back = () => entryAt(at.ids.next(), NOON + 9, [legTo(bottleId, lot.id, 0)], { retracts: mixed.id })
      expect(await post(context, back())).toMatchObject({ ok: true })
      await expect(post(context, back())).rejects.toThrow()
    })
  })

  describe('the last of a bottle', () => {
    it('goes to one of two who want it at once; the other is told', async () => {
      const { context, bottleId, lot } = await filled(300_000)
      const take = () => post(context, entryAt(at.ids.next(), NOON + 9, [legTo(bottleId, lot.id, -300_000)]))
      const answers = await Promise.all([take(), take()])
      expect(answers.map(({ ok: had }) => had).sort()).toEqual([false, true])
      expect(await look(context, (rooms) => rooms.shelf.container(bottleId))).toMatchObject({ held: 0, lotId: null })
    })

    it('a thousand wishes of fifty clients never have more than there was, and every microlitre is in the book', async () => {
      const { context, bottleId, lot } = await filled(1_000_000)
      const take = (amount: number) =>
        post(context, entryAt(at.ids.next(), NOON + 9, [legTo(bottleId, lot.id, -amount)]))
      const amounts = Array.from({ length: 1000 }, (_, i) => 1000 + 7 * i)
      const had: boolean[] = []
      // Fifty clients, each with twenty wishes: who waits too long for a connection would be turned away unheard.
      const client = async (_: unknown, lane: number) => {
        for (let i = lane; i < amounts.length; i += 50) had[i] = (await take(amounts[i] as number)).ok
      }
      await Promise.all(Array.from({ length: 50 }, client))
      const taken = amounts.reduce((sum, amount, i) => sum + (had[i] ? amount : 0), 0)
      const left = (await look(context, (rooms) => rooms.shelf.container(bottleId)))?.held as number
      expect(left).toBe(1_000_000 - taken)
      expect(left).toBeGreaterThanOrEqual(0)
      expect(left).toBeLessThan(1000 + 7 * 999)
      const legs = (await look(context, (rooms) => rooms.shelf.entriesOf([bottleId]))).flatMap((entry) => entry.legs)
      expect(legs.reduce((sum, { held }) => sum + held, 0)).toBe(left)
    }, 60_000)
  })
}
