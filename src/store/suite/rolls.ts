import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { expectOk, ok } from '../../kernel/index.js'
import type { Context, RollEvent, RollRecord, RollsWanted, Rooms, Store } from '../../lab/index.js'
import { keep, NOON, newBench, type Open, world } from './house.js'
import { ORDER, rollEventOf as sampleEvent, rollOf as sampleRoll } from './roll-samples.js'

const WANTED: RollsWanted = {
  words: '',
  state: [],
  film: '',
  whose: '',
  process: null,
  due_by: null,
  order_id: null,
  takenInFrom: null,
  takenInBefore: null,
  after: null,
  most: 50,
}

const rollOf = (id: string, n: number, changes: Partial<RollRecord> = {}) => sampleRoll(id, n, NOON, changes)
const eventOf = (id: string, rollId: string, changes: Partial<RollEvent> = {}) => sampleEvent(id, rollId, NOON, changes)

/** The verbs of the rolls' and the orders' ports. */
export function rollsBehave(open: Open): void {
  const at = world(7)
  let store: Store
  beforeAll(async () => {
    store = await open()
  })
  afterAll(() => store.close())
  const look = <T>(context: Context, work: (rooms: Rooms) => Promise<T>) => store.read(context.bench, work)
  const added = async (context: Context, n: number, changes: Partial<RollRecord> = {}) => {
    const roll = rollOf(at.ids.next(), n, changes)
    expect(await keep(store, context, (rooms) => rooms.rolls.add(roll))).toBe('added')
    return roll
  }

  describe('numbers', () => {
    it('are given once, in order, a kind and a year for itself', async () => {
      const context = await newBench(store, at)
      const next = (kind: 'roll' | 'twin', year: number, count: number) =>
        keep(store, context, (rooms) => rooms.rolls.nextNumbers(kind, year, count))
      expect([await next('roll', 2026, 3), await next('roll', 2026, 1), await next('roll', 2027, 1)]).toEqual([1, 4, 1])
      expect([await next('twin', 0, 2), await next('roll', 2026, 1)]).toEqual([1, 5])
    })

    it('of a write that failed are given again', async () => {
      const context = await newBench(store, at)
      const failing = store.write(context, null, async (rooms) => {
        await rooms.rolls.nextNumbers('roll', 2026, 10)
        throw new Error('the plug was pulled')
      })
      await expect(failing).rejects.toThrow('the plug was pulled')
      expect(await keep(store, context, (rooms) => rooms.rolls.nextNumbers('roll', 2026, 1))).toBe(1)
    })

    it('asked for at once by many are all different', async () => {
      const context = await newBench(store, at)
      const asked = Array.from({ length: 40 }, () =>
        store.write(context, null, async (rooms) => ok(await rooms.rolls.nextNumbers('roll', 2026, 2))),
      )
      const firsts = (await Promise.all(asked)).map(expectOk)
      expect(firsts.sort((a, b) => a - b)).toEqual(Array.from({ length: 40 }, (_, i) => 2 * i + 1))
    })

    it('keep their pattern and their blocks', async () => {
      const context = await newBench(store, at)
      const block = { id: at.ids.next(), device: 'd', pattern: '{n}', year: 0, first: 4, last: 9, reservedAt: NOON }
      await keep(store, context, async (rooms) => {
        await rooms.rolls.setPattern('A{n}')
        await rooms.rolls.setPattern('B{n}')
        await rooms.rolls.addBlock(block)
      })
      expect(await look(context, (rooms) => rooms.rolls.pattern())).toBe('B{n}')
      expect(await look(context, (rooms) => rooms.rolls.block(block.id))).toEqual(block)
      expect(await look(context, (rooms) => rooms.rolls.block('none'))).toBeNull()
    })
  })

  describe('a roll', () => {
    it('comes back as it was kept, by id and by number; a number is taken once', async () => {
      const context = await newBench(store, at)
      const roll = await added(context, 1, { twin: 12, orderId: null })
      expect(await look(context, (rooms) => rooms.rolls.roll(roll.id))).toEqual(roll)
      expect(await look(context, (rooms) => rooms.rolls.byNumber('2026-0001'))).toEqual(roll)
      const again = rollOf(at.ids.next(), 1)
      expect(await keep(store, context, (rooms) => rooms.rolls.add(again))).toBe('taken')
      expect(await look(context, (rooms) => rooms.rolls.roll(again.id))).toBeNull()
    })

    it('is revised: the old words stay, the new ones are found', async () => {
      const context = await newBench(store, at)
      const roll = await added(context, 1)
      const statement = { ...roll.statement, film: 'Orthochromatic 25', whose: 'Ida' }
      const revised = { ...roll, revision: 2, statement }
      const revision = {
        rollId: roll.id,
        revision: 2,
        savedAt: NOON + 9,
        savedBy: 'd',
        orderId: null,
        batchId: 'b',
        statement,
      }
      await keep(store, context, async (rooms) => {
        await rooms.rolls.hold([roll.id])
        await rooms.rolls.revise(revised, revision)
      })
      expect(await look(context, (rooms) => rooms.rolls.roll(roll.id))).toEqual(revised)
      expect(await look(context, (rooms) => rooms.rolls.revision(roll.id, 1))).toMatchObject({
        statement: roll.statement,
      })
      expect(await look(context, (rooms) => rooms.rolls.revision(roll.id, 2))).toEqual(revision)
      expect(await look(context, (rooms) => rooms.rolls.revision(roll.id, 3))).toBeNull()
      expect(await look(context, (rooms) => rooms.rolls.batch('b'))).toEqual({ revisions: [revision], events: [] })
      const found = await look(context, (rooms) => rooms.rolls.find({ ...WANTED, words: 'ortho ida' }))
      expect(found).toEqual({ rolls: [revised], found: 1 })
    })

    it('takes steps, oldest first, and stands where they lead', async () => {
      const context = await newBench(store, at)
      const roll = await added(context, 1)
      const run = at.ids.next()
      const developed = eventOf(at.ids.next(), roll.id, { state: 'developed', runId: run, hook: '', batchId: 'x' })
      const retracting = eventOf(at.ids.next(), roll.id, {
        state: null,
        hook: '',
        retracts: developed.id,
        at: NOON + 6000,
      })
      await keep(store, context, async (rooms) => {
        await rooms.rolls.addEvent(retracting, { state: 'taken-in', stateAt: NOON, runId: null, hook: '' })
        await rooms.rolls.addEvent(developed, { state: 'developed', stateAt: NOON + 5000, runId: run, hook: '' })
      })
      expect(await look(context, (rooms) => rooms.rolls.events([roll.id]))).toEqual([developed, retracting])
      expect(await look(context, (rooms) => rooms.rolls.ofRun(run))).toMatchObject([{ state: 'developed', runId: run }])
      expect(await look(context, (rooms) => rooms.rolls.batch('x'))).toEqual({ revisions: [], events: [developed] })
      expect(await look(context, (rooms) => rooms.rolls.events([]))).toEqual([])
    })

    it('is held in the order asked for, once, without those that are not there', async () => {
      const context = await newBench(store, at)
      const [a, b] = [await added(context, 1), await added(context, 2)]
      const held = await keep(store, context, (rooms) => rooms.rolls.hold([b.id, 'none', a.id, b.id]))
      expect(held).toEqual([b, a])
    })
  })

  describe('looking for rolls', () => {
    it('finds by every word, signs as they stand, and by each field; newest first, a page at a time', async () => {
      const context = await newBench(store, at)
      const order = at.ids.next()
      const stated = (statement: Partial<RollRecord['statement']>) => ({
        statement: { ...rollOf('x', 1).statement, ...statement },
      })
      await added(context, 1, stated({ film: 'Ortho 25', whose: 'Ida', due: null, note: '' }))
      await added(context, 2, { state: 'hung', hook: '4', orderId: order })
      await added(context, 3, stated({ process: 'colour-negative', note: '50 % grey', due: '2026-05-01' }))
      const numbers = async (wanted: Partial<RollsWanted>) => {
        const { rolls, found } = await look(context, (rooms) => rooms.rolls.find({ ...WANTED, ...wanted }))
        expect(found).toBeGreaterThanOrEqual(rolls.length)
        return rolls.map(({ number }) => number.n)
      }
      expect(await numbers({})).toEqual([3, 2, 1])
      expect(await numbers({ words: 'IDA ortho' })).toEqual([1])
      expect(await numbers({ words: '50 %' })).toEqual([3])
      expect(await numbers({ words: 'full_ \\' })).toEqual([2])
      expect(await numbers({ words: '_' })).toEqual([2])
      expect(await numbers({ words: '2026-0003' })).toEqual([3])
      expect(await numbers({ state: ['hung', 'lost'] })).toEqual([2])
      expect(await numbers({ film: ' ORTHO 25' })).toEqual([1])
      expect(await numbers({ whose: 'ida' })).toEqual([1])
      expect(await numbers({ process: 'colour-negative' })).toEqual([3])
      expect(await numbers({ due_by: '2026-04-01' })).toEqual([2])
      expect(await numbers({ order_id: order })).toEqual([2])
      expect(await numbers({ takenInFrom: NOON + 2, takenInBefore: NOON + 3 })).toEqual([2])
      expect(await numbers({ most: 1 })).toEqual([3])
      expect(await numbers({ after: { year: 2026, n: 3 }, most: 1 })).toEqual([2])
      expect(await look(context, (rooms) => rooms.rolls.ofOrders([order]))).toMatchObject([{ number: { n: 2 } }])
    })
  })

  describe('orders', () => {
    it('are counted out once, and their links are found by the hash alone', async () => {
      const context = await newBench(store, at)
      const order = {
        id: at.ids.next(),
        revision: 1,
        savedAt: NOON,
        savedBy: 'owner',
        removed: false,
        statement: ORDER,
      }
      const link = {
        id: at.ids.next(),
        orderId: order.id,
        tokenHash: 'h',
        madeAt: NOON,
        expiresAt: NOON + 1,
        revokedAt: null,
      }
      const counted = { orderId: order.id, count: 2, at: NOON, by: 'owner' }
      const answers = await keep(store, context, async (rooms) => {
        await rooms.orders.addRevision(order)
        await rooms.orders.addLink(link)
        return [await rooms.orders.countOut(counted), await rooms.orders.countOut({ ...counted, count: 3 })]
      })
      expect(answers).toEqual(['noted', 'there'])
      expect(await look(context, (rooms) => rooms.orders.countsOut([order.id]))).toEqual([counted])
      expect(await look(context, (rooms) => rooms.orders.linkByHash('h'))).toEqual(link)
      expect(await look(context, (rooms) => rooms.orders.linkByHash('x'))).toBeNull()
      await keep(store, context, (rooms) => rooms.orders.revokeLink(link.id, NOON + 7))
      await keep(store, context, (rooms) => rooms.orders.revokeLink(link.id, NOON + 8))
      expect(await look(context, (rooms) => rooms.orders.links([order.id]))).toEqual([{ ...link, revokedAt: NOON + 7 }])
      expect(await look(context, (rooms) => rooms.orders.all())).toEqual([order])
      expect(await look(context, (rooms) => rooms.films.all())).toEqual([])
    })
  })
}
