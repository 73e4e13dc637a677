import { beforeEach, describe, expect, it } from 'vitest'
import { expectOk } from '../../src/kernel/index.js'
import {
  addThermometer,
  benchView,
  changeSettings,
  checkThermometer,
  keepTimes,
  listThermometers,
  listTimes,
  openDemo,
  removeDemo,
  removeThermometer,
  removeTime,
  today,
} from '../../src/lab/index.js'
import type { Settings, TimeStatement } from '../../src/wire/index.js'
import { type Bench, benches, comparison, problemOf, thermometer, time } from '../support/bench.js'

const open = benches()
let bench: Bench
beforeEach(async () => {
  bench = await open(303)
})

const keep = async (...times: TimeStatement[]) =>
  expectOk(await bench.write((context, rooms) => keepTimes(context, rooms, times))).times
const now = () => bench.read(async (rooms) => today(rooms, await benchView(bench.context, rooms)))
const settings: Settings = { name: 'Cellar', units: 'us', paper: 'Letter', zone: 'America/Denver' }

describe('the next step of the day', () => {
  it('goes from the first time to asking, one step at a time', async () => {
    expect(await now()).toMatchObject({ step: { code: 'first-time', subject: null }, counts: { times: 0, films: 0 } })

    const [single] = await keep(time({ points: [{ temperature_c: 20, time_s: 540 }] }))
    expect((await now()).step).toEqual({ code: 'first-thermometer', subject: null, subject_id: null })

    const dial = expectOk(
      await bench.write((context, rooms) => addThermometer(context, rooms, thermometer({ name: 'Dial' }))),
    )
    expect((await now()).step).toEqual({ code: 'check-thermometer', subject: 'Dial', subject_id: dial.id })

    const { checks } = expectOk(
      await bench.write((context, rooms) => checkThermometer(context, rooms, dial.id, comparison(20.2, 20))),
    )
    expect(checks).toHaveLength(1)
    expect((await now()).step).toEqual({ code: 'widen-times', subject: 'Corvane 400', subject_id: single?.id })

    expectOk(await bench.write((context, rooms) => removeTime(context, rooms, single?.id as string, 1)))
    bench.clock.advance(1000)
    const [newest] = await keep(time({ film: 'Tarn 100' }))
    expect((await now()).step).toEqual({ code: 'ask-a-time', subject: 'Tarn 100', subject_id: newest?.id })

    expectOk(await bench.write((context, rooms) => removeThermometer(context, rooms, dial.id, 1)))
    expect((await now()).step.code).toBe('first-thermometer')
  })

  it('does not ask for a second time where one settles it', async () => {
    const dial = expectOk(await bench.write((context, rooms) => addThermometer(context, rooms, thermometer())))
    expectOk(await bench.write((context, rooms) => checkThermometer(context, rooms, dial.id, comparison(20.2, 20))))
    const one = [{ temperature_c: 20, time_s: 540 }]
    await keep(time({ points: one, coefficient: 2.5 }), time({ film: 'Weir', kind: 'fixed', points: one }))
    expect((await now()).step.code).toBe('ask-a-time')
  })

  it('counts a film once however it is written, and shows the newest first, five at most', async () => {
    for (const film of ['One', 'ONE', 'two', 'Three', 'Four', 'Five']) {
      bench.clock.advance(1000)
      await keep(time({ film }))
    }
    const seen = await now()
    expect(seen.counts).toEqual({ times: 6, films: 5, thermometers: 0 })
    expect(seen.recent.map(({ film }) => film)).toEqual(['Five', 'Four', 'Three', 'two', 'ONE'])
  })
})

describe('settings', () => {
  const change = (changes: Partial<Settings>) =>
    bench.write((context, rooms) => changeSettings(context, rooms, { ...settings, ...changes }))

  it('are kept, and other screens hear of it', async () => {
    expect(expectOk(await change({}))).toMatchObject({ ...settings, role: 'owner', kind: 'own', demo_exists: false })
    expect((await bench.read((rooms) => rooms.feed.after(0, 9))).map(({ kind }) => kind)).toEqual(['bench'])
  })

  it('with a zone nobody knows are refused and change nothing', async () => {
    const before = await bench.everything()
    const problem = problemOf(await change({ zone: 'Europe/Nowhere' }))
    expect([problem.code, problem.field]).toEqual(['house.zone-unknown', 'zone'])
    expect(problem.sentence).toContain('“Europe/Nowhere”')
    expect(await bench.everything()).toEqual(before)
  })
})

describe('the demo bench', () => {
  const demo = async () => {
    const context = { ...bench.context, bench: bench.context.ids.next() }
    const opened = await bench.store.write(context, null, (rooms) => openDemo(context, rooms))
    return { context, opened }
  }

  it('comes furnished, in the units of the bench beside it, and that one sees nothing of it', async () => {
    expectOk(await bench.write((context, rooms) => changeSettings(context, rooms, settings)))
    const { context, opened } = await demo()
    expect(expectOk(opened).bench_id).toBe(context.bench)
    const there = await bench.store.read(context.bench, async (rooms) => ({
      view: await benchView(context, rooms),
      times: (await listTimes(rooms)).times,
      thermometers: (await listThermometers(rooms)).thermometers,
    }))
    expect(there.view).toMatchObject({ kind: 'demo', units: 'us', paper: 'Letter', zone: 'America/Denver' })
    expect(there.times.length).toBeGreaterThan(3)
    expect(there.thermometers.length).toBeGreaterThan(1)
    for (const one of there.times) expect(one.source_words).toContain('Invented')
    expect((await bench.read(listTimes)).times).toEqual([])
    expect((await bench.read(listThermometers)).thermometers).toEqual([])
  })

  it('is made once and joined after that', async () => {
    const { context } = await demo()
    const before = await bench.everything()
    expect(expectOk((await demo()).opened).bench_id).toBe(context.bench)
    expect(await bench.everything()).toEqual(before)
  })

  it('once removed has left nothing behind', async () => {
    await keep(time())
    const before = await bench.everything()
    await demo()
    expect((await bench.everything()).length).toBeGreaterThan(before.length + 10)
    expectOk(await bench.write((_, rooms) => removeDemo(rooms)))
    expect(await bench.everything()).toEqual(before)
    expect(problemOf(await bench.write((_, rooms) => removeDemo(rooms))).code).toBe('house.demo-not-open')
  })
})
