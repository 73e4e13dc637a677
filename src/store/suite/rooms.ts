import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { celsius } from '../../kernel/index.js'
import type { Context, Rooms, Store, ThermometerCheck } from '../../lab/index.js'
import { benchNamed, keep, NOON, newBench, type Open, thermometerOf, timeOf, world } from './house.js'

/** Every verb of every room's port. */
export function roomsBehave(open: Open): void {
  const at = world(1)
  let store: Store
  beforeAll(async () => {
    store = await open()
  })
  afterAll(() => store.close())
  const look = <T>(context: Context, work: (rooms: Rooms) => Promise<T>) => store.read(context.bench, work)

  describe('times', () => {
    it('keeps a revision exactly and finds it again', async () => {
      const context = await newBench(store, at)
      const record = timeOf(at.ids.next())
      expect(await keep(store, context, (rooms) => rooms.times.addRevision(record))).toBe('added')
      expect(await look(context, (rooms) => rooms.times.newest(record.id))).toEqual(record)
      expect(await look(context, (rooms) => rooms.times.revision(record.id, 1))).toEqual(record)
      expect(await look(context, (rooms) => rooms.times.revision(record.id, 2))).toBeNull()
      expect(await look(context, (rooms) => rooms.times.newest(at.ids.next()))).toBeNull()
    })

    it('keeps what is not stated as not stated', async () => {
      const context = await newBench(store, at)
      const bare = timeOf(at.ids.next(), 1, {
        exposureIndex: null,
        dilutionParts: null,
        coefficient: null,
        usable: null,
        window: { from: celsius(37.7), to: celsius(38.1) },
        points: [],
        note: '',
      })
      await keep(store, context, (rooms) => rooms.times.addRevision(bare))
      expect(await look(context, (rooms) => rooms.times.newest(bare.id))).toEqual(bare)
    })

    it('answers conflict for a revision that is there, keeps the first, and can go on in the same write', async () => {
      const context = await newBench(store, at)
      const record = timeOf(at.ids.next())
      await keep(store, context, (rooms) => rooms.times.addRevision(record))
      const answers = await keep(store, context, async (rooms) => [
        await rooms.times.addRevision({ ...record, note: 'another' }),
        await rooms.times.addRevision(timeOf(record.id, 2)),
      ])
      expect(answers).toEqual(['conflict', 'added'])
      expect(await look(context, (rooms) => rooms.times.revision(record.id, 1))).toEqual(record)
      expect(await look(context, (rooms) => rooms.times.newest(record.id))).toEqual(timeOf(record.id, 2))
    })

    it('lists the newest of each that is not removed, by film, developer, index', async () => {
      const context = await newBench(store, at)
      const named = (film: string, developer: string, exposureIndex: number | null) =>
        timeOf(at.ids.next(), 1, { film, developer, exposureIndex })
      const wanted = [
        named('apo 25', 'B', 25),
        named('Pan 100', 'a', 100),
        named('Pan 100', 'B', null),
        named('pan 100', 'B', 80),
        named('Pan 1000', 'a', 50),
      ]
      const [first, ...rest] = wanted
      if (!first) throw new Error('no first')
      const removed = named('Gone', 'A', 1)
      await keep(store, context, async (rooms) => {
        for (const record of [...rest].reverse()) await rooms.times.addRevision(record)
        await rooms.times.addRevision({ ...first, note: 'old', points: [] })
        await rooms.times.addRevision({ ...first, revision: 2 })
        await rooms.times.addRevision(removed)
        await rooms.times.addRevision({ ...removed, revision: 2, removed: true })
      })
      expect(await look(context, (rooms) => rooms.times.all())).toEqual([{ ...first, revision: 2 }, ...rest])
      expect((await look(context, (rooms) => rooms.times.newest(removed.id)))?.removed).toBe(true)
    })

    it('brings a removed record back by a further revision', async () => {
      const context = await newBench(store, at)
      const record = timeOf(at.ids.next())
      await keep(store, context, async (rooms) => {
        await rooms.times.addRevision(record)
        await rooms.times.addRevision({ ...record, revision: 2, removed: true })
        await rooms.times.addRevision({ ...record, revision: 3 })
      })
      expect(await look(context, (rooms) => rooms.times.all())).toEqual([{ ...record, revision: 3 }])
    })

    it('refuses a later revision of a record that was never made', async () => {
      const context = await newBench(store, at)
      await expect(keep(store, context, (rooms) => rooms.times.addRevision(timeOf(at.ids.next(), 2)))).rejects.toThrow()
    })

    it('shows a bench nothing of another', async () => {
      const [mine, other] = [await newBench(store, at), await newBench(store, at)]
      const record = timeOf(at.ids.next())
      await keep(store, other, (rooms) => rooms.times.addRevision({ ...record, note: 'theirs' }))
      expect(await look(mine, (rooms) => rooms.times.all())).toEqual([])
      expect(await look(mine, (rooms) => rooms.times.newest(record.id))).toBeNull()
      expect(await keep(store, mine, (rooms) => rooms.times.addRevision(record))).toBe('added')
    })
  })

  describe('kit', () => {
    it('keeps revisions of thermometers and lists the newest by name', async () => {
      const context = await newBench(store, at)
      const [a, b, gone] = [at.ids.next(), at.ids.next(), at.ids.next()]
      const answers = await keep(store, context, async (rooms) => [
        await rooms.kit.addRevision(thermometerOf(b, 1, { name: 'Spirit 10' })),
        await rooms.kit.addRevision(thermometerOf(a, 1, { name: 'later' })),
        await rooms.kit.addRevision(thermometerOf(a, 2, { name: 'spirit 9', kind: 'digital' })),
        await rooms.kit.addRevision(thermometerOf(a, 2, { name: 'too late' })),
        await rooms.kit.addRevision(thermometerOf(gone)),
        await rooms.kit.addRevision(thermometerOf(gone, 2, { removed: true })),
      ])
      expect(answers).toEqual(['added', 'added', 'added', 'conflict', 'added', 'added'])
      const newest = [
        thermometerOf(a, 2, { name: 'spirit 9', kind: 'digital' }),
        thermometerOf(b, 1, { name: 'Spirit 10' }),
      ]
      expect(await look(context, (rooms) => rooms.kit.all())).toEqual(newest)
      expect(await look(context, (rooms) => rooms.kit.newest(a))).toEqual(newest[0])
      expect(await look(context, (rooms) => rooms.kit.revision(a, 1))).toEqual(thermometerOf(a, 1, { name: 'later' }))
      expect(await look(context, (rooms) => rooms.kit.newest(gone))).toEqual(thermometerOf(gone, 2, { removed: true }))
      expect(await look(context, (rooms) => rooms.kit.newest(at.ids.next()))).toBeNull()
    })

    it('keeps checks, oldest first, and withdraws one by a row of its own, once', async () => {
      const context = await newBench(store, at)
      const [a, b] = [at.ids.next(), at.ids.next()]
      const check = (thermometerId: string, when: number, setId: string | null): ThermometerCheck => ({
        id: at.ids.next(),
        thermometerId,
        at: when,
        by: 'owner',
        method: setId ? 'class-set' : 'boiling',
        read: celsius(99.125),
        true: celsius(98.4),
        setId,
        withdrawn: false,
      })
      const set = at.ids.next()
      const [late, early, other] = [check(a, NOON + 10, null), check(a, NOON, set), check(b, NOON + 5, set)]
      await keep(store, context, async (rooms) => {
        await rooms.kit.addRevision(thermometerOf(a))
        await rooms.kit.addRevision(thermometerOf(b))
        for (const one of [late, early, other]) await rooms.kit.addCheck(one)
      })
      expect(await look(context, (rooms) => rooms.kit.checks())).toEqual([early, other, late])
      expect(await look(context, (rooms) => rooms.kit.checks(a))).toEqual([early, late])
      for (const _ of [1, 2])
        await keep(store, context, (rooms) => rooms.kit.withdrawCheck(early.id, at.ids.next(), NOON + 20, 'owner'))
      expect(await look(context, (rooms) => rooms.kit.check(early.id))).toEqual({ ...early, withdrawn: true })
      expect(await look(context, (rooms) => rooms.kit.checks(a))).toEqual([{ ...early, withdrawn: true }, late])
      expect(await look(context, (rooms) => rooms.kit.check(at.ids.next()))).toBeNull()
    })

    it('refuses a check of a thermometer that is not there', async () => {
      const context = await newBench(store, at)
      const stray = {
        id: at.ids.next(),
        thermometerId: at.ids.next(),
        at: NOON,
        by: 'owner',
        setId: null,
        withdrawn: false,
      }
      const check = { ...stray, method: 'ice', read: celsius(0), true: celsius(0) } as const
      await expect(keep(store, context, (rooms) => rooms.kit.addCheck(check))).rejects.toThrow()
    })
  })

  describe('people', () => {
    it('lets a code be used once, before it ends, at its bench', async () => {
      const [context, other] = [await newBench(store, at), await newBench(store, at)]
      const ends = NOON + 600_000
      await keep(store, context, async (rooms) => {
        await rooms.people.addPairingCode({ codeHash: 'aa', expiresAt: ends }, NOON)
        await rooms.people.addPairingCode({ codeHash: 'bb', expiresAt: ends }, NOON)
      })
      const use = (who: Context, code: string, when: number) =>
        keep(store, who, (rooms) => rooms.people.useCode(code, when))
      expect(await use(other, 'aa', ends - 1)).toBe(false)
      expect(await use(context, 'aa', ends - 1)).toBe(true)
      expect(await use(context, 'aa', ends - 1)).toBe(false)
      expect(await use(context, 'bb', ends)).toBe(false)
      expect(await use(context, 'cc', NOON)).toBe(false)
    })

    it('lets only one of two uses at once win', async () => {
      const context = await newBench(store, at)
      await keep(store, context, (rooms) => rooms.people.addPairingCode({ codeHash: 'dd', expiresAt: NOON + 9 }, NOON))
      const use = () => keep(store, context, (rooms) => rooms.people.useCode('dd', NOON + 1))
      expect((await Promise.all([use(), use(), use()])).filter(Boolean)).toEqual([true])
    })

    it('knows paired devices until they are removed', async () => {
      const context = await newBench(store, at)
      const device = { name: 'Phone', lastSeenAt: null, removedAt: null }
      const first = { ...device, id: at.ids.next(), tokenHash: 'h1', pairedAt: NOON }
      const second = { ...device, id: at.ids.next(), tokenHash: 'h2', pairedAt: NOON + 1 }
      await keep(store, context, async (rooms) => {
        await rooms.people.addDevice(second)
        await rooms.people.addDevice(first)
        await rooms.people.seen(second.id, NOON + 50)
      })
      const seen = { ...second, lastSeenAt: NOON + 50 }
      expect(await look(context, (rooms) => rooms.people.devices())).toEqual([first, seen])
      expect(await look(context, (rooms) => rooms.people.deviceByToken('h2'))).toEqual(seen)
      const remove = (id: string) => keep(store, context, (rooms) => rooms.people.removeDevice(id, NOON + 60))
      expect(await remove(first.id)).toBe(true)
      expect(await remove(first.id)).toBe(false)
      expect(await remove(at.ids.next())).toBe(false)
      expect(await look(context, (rooms) => rooms.people.deviceByToken('h1'))).toBeNull()
      expect(await look(context, (rooms) => rooms.people.devices())).toEqual([seen])
    })
  })

  describe('house', () => {
    it('adds, changes and lists benches, own ones first', async () => {
      const demo = await newBench(store, at, 'demo')
      const own = await newBench(store, at)
      const changed = { ...benchNamed(own.bench, 'Kitchen'), units: 'us', paper: 'Letter', zone: 'UTC' } as const
      await keep(store, own, (rooms) => rooms.house.changeBench(changed))
      expect(await look(own, (rooms) => rooms.house.bench(own.bench))).toEqual(changed)
      const kinds = (await look(own, (rooms) => rooms.house.benches())).map((bench) => bench.kind)
      expect(kinds.lastIndexOf('own')).toBeLessThan(kinds.indexOf('demo'))
      expect(await look(own, (rooms) => rooms.house.bench(at.ids.next()))).toBeNull()
      await keep(store, own, (rooms) => rooms.house.removeBench(demo.bench))
      expect(await look(own, (rooms) => rooms.house.bench(demo.bench))).toBeNull()
    })

    it('removes no bench of the house’s own', async () => {
      const context = await newBench(store, at)
      await expect(keep(store, context, (rooms) => rooms.house.removeBench(context.bench))).rejects.toThrow('demo')
      expect(await look(context, (rooms) => rooms.house.bench(context.bench))).not.toBeNull()
    })
  })

  describe('feed', () => {
    it('numbers changes from 1 and replays them in order', async () => {
      const [context, other] = [await newBench(store, at), await newBench(store, at)]
      await keep(store, other, (rooms) => rooms.feed.tell({ kind: 'bench', subject: 'x' }, NOON))
      expect(await look(context, (rooms) => rooms.feed.last())).toBe(0)
      for (const subject of ['a', 'b', 'c'])
        await keep(store, context, (rooms) => rooms.feed.tell({ kind: 'times', subject }, NOON + 1))
      const entry = (seq: number, subject: string) => ({ seq, kind: 'times', subject, at: NOON + 1 })
      expect(await look(context, (rooms) => rooms.feed.after(0, 2))).toEqual([entry(1, 'a'), entry(2, 'b')])
      expect(await look(context, (rooms) => rooms.feed.after(2, 10))).toEqual([entry(3, 'c')])
      expect(await look(context, (rooms) => rooms.feed.last())).toBe(3)
    })
  })
}
