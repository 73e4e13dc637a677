import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest'
import { failed, ok, problem } from '../../kernel/index.js'
import type { Context, Rooms, Store } from '../../lab/index.js'
import { benchNamed, furnished, keep, linesOf, NOON, newBench, type Open, timeOf, world } from './house.js'

const key = (name: string, fingerprint = 'the same') => ({ key: name, fingerprint })

/** What a write promises: all or nothing, once per key, one after the other, and heard of. */
export function writesBehave(open: Open): void {
  const at = world(2)
  let store: Store
  beforeAll(async () => {
    store = await open()
  })
  afterAll(() => store.close())

  const tellOnce = (subject: string) => async (rooms: Rooms) => {
    await rooms.feed.tell({ kind: 'bench', subject }, NOON)
    return ok({ subject, list: [1, { a: null }] })
  }
  const last = (context: Context) => store.read(context.bench, (rooms) => rooms.feed.last())

  describe('a failed write', () => {
    it('leaves nothing: no record, no feed row, no number used, no key', async () => {
      const context = await newBench(store, at)
      const before = await linesOf(store)
      const refused = problem('record.not-found', { what: 'film', id: 'x' })
      const work = async (rooms: Rooms) => {
        await rooms.times.addRevision(timeOf(at.ids.next()))
        await rooms.feed.tell({ kind: 'times', subject: 'x' }, NOON)
        return failed(refused)
      }
      expect(await store.write(context, key('f1'), work)).toEqual(failed(refused))
      expect(await linesOf(store)).toEqual(before)
      expect(await store.write(context, key('f1', 'another'), tellOnce('now'))).toMatchObject({ ok: true })
      expect(await store.read(context.bench, (rooms) => rooms.feed.after(0, 9))).toMatchObject([
        { seq: 1, subject: 'now' },
      ])
    })

    it('leaves nothing when a bug throws either, and the store goes on', async () => {
      const context = await newBench(store, at)
      const before = await linesOf(store)
      const work = async (rooms: Rooms) => {
        await rooms.feed.tell({ kind: 'times', subject: 'x' }, NOON)
        throw new Error('a bug')
      }
      await expect(store.write(context, key('f2'), work)).rejects.toThrow('a bug')
      expect(await linesOf(store)).toEqual(before)
      expect(await store.write(context, key('f2'), tellOnce('y'))).toMatchObject({ ok: true })
    })
  })

  describe('a write key', () => {
    it('answers the second time what the first answered, without doing it again', async () => {
      const context = await newBench(store, at)
      const first = await store.write(context, key('k1'), tellOnce('a'))
      const work = vi.fn(tellOnce('b'))
      expect(await store.write(context, key('k1'), work)).toEqual(first)
      expect(work).not.toHaveBeenCalled()
      expect(await last(context)).toBe(1)
    })

    it('keeps an answer that is no value', async () => {
      const context = await newBench(store, at)
      for (const _ of [1, 2])
        expect(await store.write(context, key('k2'), async () => ok(undefined))).toEqual(ok(undefined))
      for (const _ of [1, 2]) expect(await store.write(context, key('k3'), async () => ok(null))).toEqual(ok(null))
    })

    it('is refused for a different request, which is not done', async () => {
      const context = await newBench(store, at)
      await store.write(context, key('k4'), tellOnce('a'))
      const work = vi.fn(tellOnce('b'))
      const answer = await store.write(context, key('k4', 'different'), work)
      expect(answer).toMatchObject({ ok: false, problem: { code: 'request.key-reused', details: { key: 'k4' } } })
      expect(work).not.toHaveBeenCalled()
    })

    it('works once when sent several times at once', async () => {
      const context = await newBench(store, at)
      const work = vi.fn(tellOnce('a'))
      const answers = await Promise.all(Array.from({ length: 8 }, () => store.write(context, key('k5'), work)))
      expect(new Set(answers.map((answer) => JSON.stringify(answer))).size).toBe(1)
      expect(answers[0]?.ok).toBe(true)
      expect(work).toHaveBeenCalledTimes(1)
      expect(await last(context)).toBe(1)
    })

    it('outlives the bench that its write removed, and counts at any bench', async () => {
      const home = await newBench(store, at)
      const demo = await newBench(store, at, 'demo')
      const remove = async (rooms: Rooms) => {
        await rooms.house.removeBench(demo.bench)
        return ok('gone')
      }
      expect(await store.write(demo, key('k6'), remove)).toEqual(ok('gone'))
      expect(await store.write(home, key('k6'), async () => ok('done again'))).toEqual(ok('gone'))
    })

    it('keeps what opened a bench from opening it again after it was removed', async () => {
      const home = await newBench(store, at)
      const open = (bench: string) => async (rooms: Rooms) => {
        await rooms.house.addBench(benchNamed(bench, 'Demo', 'demo'))
        return ok(bench)
      }
      const [first, second] = [at.ids.next(), at.ids.next()]
      expect(await store.write({ ...home, bench: first }, key('k10'), open(first))).toEqual(ok(first))
      await keep(store, home, (rooms) => rooms.house.removeBench(first))
      expect(await store.write({ ...home, bench: second }, key('k10'), open(second))).toEqual(ok(first))
      const benches = await store.read(home.bench, (rooms) => rooms.house.benches())
      expect(benches.filter((bench) => bench.id === first || bench.id === second)).toEqual([])
    })

    it('is forgotten after 90 days', async () => {
      const context = await newBench(store, at)
      await store.write(context, key('k7'), tellOnce('a'))
      const later = (days: number): Context => ({ ...context, clock: { now: () => NOON + days * 86_400_000 } })
      await store.write(later(90), key('k8'), tellOnce('b'))
      expect(await store.write(later(90), key('k7'), async () => ok('again'))).not.toEqual(ok('again'))
      await store.write(later(90.1), key('k9'), tellOnce('c'))
      expect(await store.write(later(90.1), key('k7'), async () => ok('again'))).toEqual(ok('again'))
    })
  })

  describe('writers at once', () => {
    it('lose no revision: one adds, the other is told of the conflict', async () => {
      const context = await newBench(store, at)
      const record = timeOf(at.ids.next())
      await keep(store, context, (rooms) => rooms.times.addRevision(record))
      const save = (note: string) =>
        keep(store, context, (rooms) => rooms.times.addRevision(timeOf(record.id, 2, { note })))
      const answers = await Promise.all([save('one'), save('two')])
      expect([...answers].sort()).toEqual(['added', 'conflict'])
      const kept = await store.read(context.bench, (rooms) => rooms.times.newest(record.id))
      expect(kept?.note).toBe(answers[0] === 'added' ? 'one' : 'two')
    })

    it('number the feed without gap or double', async () => {
      const context = await newBench(store, at)
      const writes = Array.from({ length: 24 }, (_, i) =>
        store.write(context, key(`w${i}`), async (rooms) => {
          await rooms.feed.tell({ kind: 'times', subject: `${i}` }, NOON)
          // Every third fails after it has taken a number.
          return i % 3 === 0 ? failed(problem('request.too-many', { wait: '1 s' })) : ok(i)
        }),
      )
      await Promise.all(writes)
      const entries = await store.read(context.bench, (rooms) => rooms.feed.after(0, 100))
      expect(entries.map((entry) => entry.seq)).toEqual(Array.from({ length: 16 }, (_, i) => i + 1))
      expect(new Set(entries.map((entry) => entry.subject)).size).toBe(16)
    })

    it('see what the one before did, so that a name is taken once', async () => {
      const context = await newBench(store, at)
      const takeName = async (rooms: Rooms) => {
        if ((await rooms.times.all()).length > 0)
          return failed(problem('record.name-taken', { what: 'film', name: 'x' }))
        await rooms.times.addRevision(timeOf(at.ids.next()))
        return ok('taken')
      }
      const answers = await Promise.all([1, 2, 3, 4].map(() => store.write(context, null, takeName)))
      expect(answers.filter((answer) => answer.ok)).toHaveLength(1)
      expect(await store.read(context.bench, (rooms) => rooms.times.all())).toHaveLength(1)
    })
  })

  describe('removing a demo bench', () => {
    it('leaves no row of it and every row of the others', async () => {
      const home = await furnished(store, at)
      const before = await linesOf(store)
      const demo = await newBench(store, at, 'demo')
      await keep(store, demo, async (rooms) => {
        await rooms.times.addRevision(timeOf(at.ids.next()))
        await rooms.feed.tell({ kind: 'times', subject: 'x' }, NOON)
      })
      await keep(store, home, (rooms) => rooms.house.removeBench(demo.bench))
      expect(await linesOf(store)).toEqual(before)
    })
  })

  describe('listening', () => {
    it('hears each commit of its bench, after it, and nothing else', async () => {
      const [context, other] = [await newBench(store, at), await newBench(store, at)]
      const heard = vi.fn()
      const stop = store.listen(context.bench, heard)
      await store.write(other, null, tellOnce('elsewhere'))
      await store.write(context, null, async () => failed(problem('request.too-many', { wait: '1 s' })))
      await settled()
      expect(heard).not.toHaveBeenCalled()
      await store.write(context, key('l1'), tellOnce('a'))
      await vi.waitFor(() => expect(heard).toHaveBeenCalledTimes(1))
      await store.write(context, key('l1'), tellOnce('a'))
      stop()
      await store.write(context, null, tellOnce('b'))
      await settled()
      expect(heard).toHaveBeenCalledTimes(1)
    })
  })
}

/** Long enough for a notification to make its way through the database. */
const settled = () => new Promise((resolve) => setTimeout(resolve, 50))
