import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { addRunEvents, type Context, type RollRecord, type RunRecord, type Store } from '../../lab/index.js'
import { keep, NOON, newBench, type Open, world } from './house.js'
import { rollOf } from './roll-samples.js'
import { type Event, eventOf, runOf } from './run-samples.js'

/** Rolls that go with their run, in the same write as what happened. */
export function runRollsBehave(open: Open): void {
  const at = world(13)
  let store: Store
  let context: Context
  const id = () => at.ids.next()
  beforeAll(async () => {
    store = await open()
    context = await newBench(store, at)
  })
  afterAll(() => store.close())

  let taken = 0
  /** A run with two rolls on its reels. */
  async function loaded(): Promise<{ run: RunRecord; rolls: RollRecord[] }> {
    const rolls = [rollOf(id(), ++taken, NOON), rollOf(id(), ++taken, NOON)]
    const plain = runOf(id())
    const tanks = plain.plan.tanks.map((tank) => ({
      ...tank,
      on_reels: rolls.map((roll) => ({
        film: roll.statement.film,
        exposure_index: null,
        label: '',
        roll: { roll_id: roll.id, number: roll.number.text },
      })),
    }))
    const run = { ...plain, plan: { ...plain.plan, tanks } }
    await keep(store, context, async (rooms) => {
      for (const roll of rolls) await rooms.rolls.add(roll)
      await rooms.runs.add(run)
    })
    return { run, rolls }
  }
  const happened = (kind: Event['kind'], ms: number): Event => {
    const { reason: _, ...stamp } = eventOf(id(), ms) as Event & { reason?: string }
    return { ...stamp, bath: null, kind } as Event
  }
  const add = (run: RunRecord, events: readonly Event[]) =>
    store.write(context, null, (rooms) => addRunEvents(context, rooms, run.id, events))
  const stepsOf = (rolls: readonly RollRecord[]) =>
    store.read(context.bench, async (rooms) => {
      const ids = rolls.map((roll) => roll.id)
      const events = await rooms.rolls.events(ids)
      return ids.map((one) => events.filter(({ rollId }) => rollId === one).map(({ state, runId }) => [state, runId]))
    })

  describe('rolls of a run', () => {
    it('take each step once, however many devices send the same at the same time', async () => {
      const { run, rolls } = await loaded()
      const [started, finished] = [happened('started', 1000), happened('finished', 2000)]
      const sent = await Promise.all(Array.from({ length: 8 }, () => add(run, [started])))
      expect(sent.every(({ ok }) => ok)).toBe(true)
      const once = [['loaded', run.id]]
      expect(await stepsOf(rolls)).toEqual([once, once])
      await Promise.all(Array.from({ length: 8 }, () => add(run, [finished, started])))
      const both = [...once, ['developed', run.id]]
      expect(await stepsOf(rolls)).toEqual([both, both])
    })

    it('stay where they were when the write of the event fails', async () => {
      const { run, rolls } = await loaded()
      const failing = store.write(context, null, async (rooms) => {
        await addRunEvents(context, rooms, run.id, [happened('started', 1000)])
        throw new Error('the plug was pulled')
      })
      await expect(failing).rejects.toThrow('the plug was pulled')
      expect(await stepsOf(rolls)).toEqual([[], []])
      const states = await store.read(context.bench, (rooms) => rooms.rolls.ofRun(run.id))
      expect(states).toEqual([])
    })
  })
}
