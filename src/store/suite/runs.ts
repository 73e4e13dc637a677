import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { failed, ok, problem } from '../../kernel/index.js'
import { addRunEvents, type Context, type RunRecord, type Store } from '../../lab/index.js'
import { keep, NOON, newBench, type Open, world } from './house.js'
import { type Event, eventOf, recipeOf, runOf } from './run-samples.js'

const RUNNING = { state: 'running', startedAt: NOON + 60_000, endedAt: null } as const

/** Lists of baths, runs and what happens in them. */
export function runsBehave(open: Open): void {
  const at = world(11)
  let store: Store
  let context: Context
  const id = () => at.ids.next()
  beforeAll(async () => {
    store = await open()
    context = await newBench(store, at)
  })
  afterAll(() => store.close())
  const look: <T>(work: Parameters<typeof store.read<T>>[1]) => Promise<T> = (work) => store.read(context.bench, work)

  describe('recipes', () => {
    it('keeps revisions exactly and lists the newest that stand, by name', async () => {
      const here = await newBench(store, at)
      const [a, b, gone] = [id(), id(), id()]
      const named = (name: string) => ({ recipe: { ...recipeOf(a).recipe, name } })
      const answers = await keep(store, here, async ({ recipes }) => [
        await recipes.addRevision(recipeOf(b, 1, named('Baths 10'))),
        await recipes.addRevision(recipeOf(a, 1, { copiedFrom: null })),
        await recipes.addRevision(recipeOf(a, 2, named('baths 9'))),
        await recipes.addRevision(recipeOf(a, 2, named('too late'))),
        await recipes.addRevision(recipeOf(gone)),
        await recipes.addRevision(recipeOf(gone, 2, { removed: true })),
      ])
      expect(answers).toEqual(['added', 'added', 'added', 'conflict', 'added', 'added'])
      const wanted = [recipeOf(a, 2, named('baths 9')), recipeOf(b, 1, named('Baths 10'))]
      expect(await store.read(here.bench, ({ recipes }) => recipes.all())).toEqual(wanted)
      expect(await store.read(here.bench, ({ recipes }) => recipes.revision(a, 1))).toEqual(
        recipeOf(a, 1, { copiedFrom: null }),
      )
      expect((await store.read(here.bench, ({ recipes }) => recipes.newest(gone)))?.removed).toBe(true)
      expect(await look(({ recipes }) => recipes.newest(a))).toBeNull()
    })
  })

  describe('runs', () => {
    it('keeps a plan, events and verdicts exactly, at its bench', async () => {
      const run = runOf(id())
      const other = await newBench(store, at)
      const event: Event = { ...eventOf(id()), statedMs: NOON - 5 }
      const read = {
        ...eventOf(id()),
        kind: 'reading',
        temperature: 20.123456789,
        confirmed: false,
      } as unknown as Event
      const by = { receivedAt: NOON + 7, receivedBy: 'phone' }
      const verdict = { tank: 'A', density: null, marks: ['streaks' as const], note: 'thin\nstrip' }
      const said = { ...verdict, id: id(), runId: run.id, at: NOON + 9, by: 'owner' }
      await keep(store, context, async ({ runs }) => {
        await runs.add(run)
        await runs.append(
          run.id,
          [
            { ...by, event },
            { ...by, event: read },
          ],
          RUNNING,
        )
        await runs.addVerdict(said)
      })
      expect(await look(({ runs }) => runs.run(run.id))).toEqual({ ...run, ...RUNNING, lastSeq: 2 })
      const kept = [
        { ...by, seq: 1, event },
        { ...by, seq: 2, event: read },
      ]
      expect(await look(({ runs }) => runs.events(run.id, 0))).toEqual(kept)
      expect(await look(({ runs }) => runs.events(run.id, 0, 1))).toEqual(kept.slice(0, 1))
      expect(await look(({ runs }) => runs.events(run.id, 1))).toEqual(kept.slice(1))
      expect(await look(({ runs }) => runs.elsewhere(id(), [id(), read.id]))).toBe(read.id)
      expect(await look(({ runs }) => runs.elsewhere(run.id, [read.id]))).toBeNull()
      expect(await look(({ runs }) => runs.verdicts([run.id]))).toEqual([said])
      const theirs = await store.read(other.bench, async ({ runs }) => [
        await runs.run(run.id),
        ...(await runs.events(run.id, 0)),
        await runs.elsewhere(id(), [read.id]),
        ...(await runs.verdicts([run.id])),
      ])
      expect(theirs).toEqual([null, null])
    })

    it('lists by when they began, newest first, by film and state, a page at a time', async () => {
      const here = await newBench(store, at)
      const practice = { ...runOf('').plan, practice: 5 as const }
      const [early, late, done, tried] = [id(), id(), id(), id()].map((one) => runOf(one)) as RunRecord[]
      await keep(store, here, async ({ runs }) => {
        await runs.add({ ...(early as RunRecord), plannedAt: NOON + 1 })
        await runs.add({ ...(late as RunRecord), plannedAt: NOON + 2 })
        await runs.add({ ...runOf((done as RunRecord).id, 'FELL 25'), plannedAt: NOON })
        await runs.add({ ...(tried as RunRecord), plan: practice, plannedAt: NOON + 3 })
        const finished = { state: 'finished', startedAt: NOON + 100, endedAt: NOON + 200 } as const
        await runs.append((done as RunRecord).id, [], finished)
      })
      const all = { film: null, ended: null, practice: null, before: null, most: 10 }
      const ids = (wanted: object) =>
        store.read(here.bench, async ({ runs }) => (await runs.newest({ ...all, ...wanted })).map((run) => run.id))
      const order = [done, tried, late, early].map((run) => run?.id)
      expect(await ids({})).toEqual(order)
      expect(await ids({ most: 2 })).toEqual(order.slice(0, 2))
      expect(await ids({ before: order[1] })).toEqual(order.slice(2))
      expect(await ids({ before: id() })).toEqual([])
      expect(await ids({ film: ' fell 25' })).toEqual([done?.id])
      expect(await ids({ film: 'tarn 100', ended: false })).toEqual(order.slice(1))
      expect(await ids({ ended: true })).toEqual([done?.id])
      expect(await ids({ practice: true })).toEqual([tried?.id])
      expect(await ids({ practice: false, film: 'Corvane 400' })).toEqual([late?.id, early?.id])
    })

    it('refuses a second row under the id of an event', async () => {
      const [run, event] = [runOf(id()), eventOf(id())]
      const received = { receivedAt: NOON, receivedBy: 'owner', event }
      const twice = keep(store, context, async ({ runs }) => {
        await runs.add(run)
        await runs.append(run.id, [received, received], RUNNING)
      })
      await expect(twice).rejects.toThrow()
      expect(await look(({ runs }) => runs.run(run.id))).toBeNull()
    })

    it('gives numbers back when the write fails, so none is left out', async () => {
      const run = runOf(id())
      await keep(store, context, ({ runs }) => runs.add(run))
      const add = (event: Event) => ({ receivedAt: NOON, receivedBy: 'owner', event })
      const refused = problem('run.over')
      const fail = await store.write(context, null, async ({ runs }) => {
        await runs.append(run.id, [add(eventOf(id()))], RUNNING)
        return failed(refused)
      })
      expect(fail).toEqual(failed(refused))
      expect(await look(({ runs }) => runs.run(run.id))).toEqual(run)
      await keep(store, context, ({ runs }) => runs.append(run.id, [add(eventOf(id()))], RUNNING))
      expect((await look(({ runs }) => runs.events(run.id, 0))).map(({ seq }) => seq)).toEqual([1])
    })

    it('takes events of many devices at once: each once, numbered without gap', async () => {
      const run = runOf(id())
      await keep(store, context, ({ runs }) => runs.add(run))
      const shared = eventOf(id(), 1)
      const batches = Array.from({ length: 8 }, (_, i) => [
        shared,
        eventOf(id(), 10 + i),
        eventOf(id(), 20 + i),
        shared,
      ])
      const answers = await Promise.all(
        batches.map((events) => store.write(context, null, (rooms) => addRunEvents(context, rooms, run.id, events))),
      )
      expect(answers.filter(({ ok }) => ok)).toHaveLength(batches.length)
      const kept = await look(({ runs }) => runs.events(run.id, 0))
      expect(kept.map(({ seq }) => seq)).toEqual(Array.from({ length: 17 }, (_, i) => i + 1))
      expect(new Set(kept.map(({ event }) => event.id))).toEqual(new Set(batches.flat().map((event) => event.id)))
      expect((await look(({ runs }) => runs.run(run.id)))?.lastSeq).toBe(17)
    })

    it('answers a batch that was sent before with the same key by what it said then', async () => {
      const run = runOf(id())
      await keep(store, context, ({ runs }) => runs.add(run))
      const events = [eventOf(id(), 1)]
      const key = { key: `key of ${run.id}`, fingerprint: 'same' }
      const send = () => store.write(context, key, (rooms) => addRunEvents(context, rooms, run.id, events))
      const first = await send()
      expect(first).toEqual(ok(expect.objectContaining({ last_seq: 1 })))
      expect(await send()).toEqual(first)
      expect(await look(({ runs }) => runs.events(run.id, 0))).toHaveLength(1)
    })
  })
}
