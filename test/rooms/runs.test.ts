import { describe, expect, it } from 'vitest'
import { expectOk, SeededRandom } from '../../src/kernel/index.js'
import {
  abandonRun,
  addRunEvents,
  correctTime,
  getRun,
  judgeRun,
  keepTimes,
  listRuns,
  openDemo,
  planRun,
} from '../../src/lab/index.js'
import { type RunEvent, SHIPPED_RECIPES } from '../../src/score/index.js'
import { type Bench, benches, NOON, problemOf, time } from '../support/bench.js'
import { eventId, happened, runPlan, THREE_BATHS, tank, wholeRun } from '../support/runs.js'

const open = benches()
const planned = async (bench: Bench, asked = runPlan()) =>
  expectOk(await bench.write((context, rooms) => planRun(context, rooms, asked)))
const add = (bench: Bench, id: string, events: readonly RunEvent[]) =>
  bench.write((context, rooms) => addRunEvents(context, rooms, id, events))
const look = async (bench: Bench, id: string) =>
  expectOk(await bench.read((rooms) => getRun(rooms, id, bench.clock.now())))
const ALL = { film: null, ended: null, practice: null, before: null, most: 50 }
const UNKNOWN = eventId(999)

/** A tank timed by a kept developing time. */
const timed = (time_id: string, name = 'A') =>
  tank(name, 'Corvane 400', {
    developer: '',
    dilution_parts: null,
    conditions: { tank: name, development: { from: 'kept', time_id, temperature: 20 } },
  })
const keptTime = async (bench: Bench): Promise<string> =>
  expectOk(await bench.write((context, rooms) => keepTimes(context, rooms, [time()]))).times[0]?.id ?? ''

describe('a plan', () => {
  it('holds copies: a time or a list corrected later changes no run', async () => {
    const bench = await open(33)
    const id = await keptTime(bench)
    const run = await planned(bench, runPlan({ tanks: [timed(id)] }))
    expect(run).toMatchObject({ state: 'planned', started_at: null, events: [], last_seq: 0 })
    expect(run.plan.tanks[0]).toMatchObject({
      developer: 'ascorbate',
      dilution_parts: [1, 3],
      time: { time_id: id, revision: 1, source_words: 'an invented sheet' },
      conditions: { development: { from: 'basis', basis: { reference: { temperature: 20, time: 570 } } } },
    })
    const slower = time({ points: [{ temperature_c: 20, time_s: 900 }] })
    expectOk(await bench.write((context, rooms) => correctTime(context, rooms, id, 1, slower)))
    expect(await look(bench, run.id)).toEqual(run)
    const { runs } = await bench.read((rooms) => listRuns(rooms, ALL, NOON))
    expect(runs).toMatchObject([
      { id: run.id, tanks: [{ time_s: 570, temperature_c: 20, recipe_name: THREE_BATHS.name }] },
    ])
  })

  it('is refused with the place of what is wrong, and nothing is kept', async () => {
    const bench = await open(34)
    const before = await bench.everything()
    const refused = async (changes: Record<string, unknown>) =>
      problemOf(await bench.write((context, rooms) => planRun(context, rooms, runPlan(changes))))
    expect(await refused({ tanks: [tank(), timed(UNKNOWN, 'B')] })).toMatchObject({
      code: 'record.not-found',
      field: 'tanks[1].conditions.development.time_id',
    })
    expect(await refused({ thermometer_id: UNKNOWN })).toMatchObject({
      code: 'record.not-found',
      field: 'thermometer_id',
    })
    expect(await refused({ tanks: [tank('A'), tank('A')] })).toMatchObject({ code: 'score.same-tank', field: 'tanks' })
    const bare = { tank: 'A', development: null }
    expect(await refused({ tanks: [tank('A', 'x', { conditions: bare })] })).toMatchObject({
      code: 'score.no-developing-time',
      field: 'tanks[0].development',
    })
    const colour = SHIPPED_RECIPES.find(({ process }) => process === 'colour-negative')
    const moved = await refused({ tanks: [tank('A', 'x', { recipe: colour })] })
    expect(moved.code).toBe('score.fixed-time')
    expect(await bench.everything()).toEqual(before)
  })
})

describe('what happened', () => {
  it('makes a run planned, running, finished, by whatever way it comes in', async () => {
    const bench = await open(35)
    const events = wholeRun()
    const [straight, shuffled] = [await planned(bench), await planned(bench)]
    expectOk(await add(bench, straight.id, events.slice(0, 1)))
    expect(await look(bench, straight.id)).toMatchObject({ state: 'running', ended_at: null })
    expectOk(await add(bench, straight.id, events))
    const done = await look(bench, straight.id)
    expect(done).toMatchObject({ state: 'finished', last_seq: events.length, outcome: [{ tank: 'A', phase: 'done' }] })
    expect(done.started_at).toBe(new Date(NOON).toISOString())
    expect(done.events.map(({ seq }) => seq)).toEqual(events.map((_, i) => i + 1))

    const random = new SeededRandom(35)
    const others = wholeRun(1000).map((event) => ({ event, place: random.unit() }))
    const order = others.sort((a, b) => a.place - b.place).map(({ event }) => event)
    for (let i = 0; i < order.length; i += 3) expectOk(await add(bench, shuffled.id, order.slice(i, i + 5)))
    const again = await look(bench, shuffled.id)
    expect({ ...again, id: 0, events: 0 }).toEqual({ ...done, id: 0, events: 0 })
  })

  it('is there once however often it is sent, and never says something else later', async () => {
    const bench = await open(36)
    const [run, other] = [await planned(bench), await planned(bench)]
    const event = happened('noted', 1, null, { text: 'cold morning' })
    const first = expectOk(await add(bench, run.id, [event, event]))
    expect(first.events).toMatchObject([{ seq: 1, event }])
    expect(expectOk(await add(bench, run.id, [{ ...event, statedMs: null }]))).toEqual(first)
    const before = await bench.everything()
    const changed = problemOf(await add(bench, run.id, [happened('finished', 2), { ...event, bath: 1 }]))
    expect(changed).toMatchObject({ code: 'run.event-differs', details: { id: event.id } })
    expect(problemOf(await add(bench, other.id, [event]))).toMatchObject({ code: 'run.event-elsewhere' })
    expect(await bench.everything()).toEqual(before)
  })

  it('is refused when it cannot be of this run, with its place in the batch', async () => {
    const bench = await open(37)
    const run = await planned(bench)
    const act = THREE_BATHS.steps.findIndex((step) => step.step === 'act')
    const last = THREE_BATHS.steps.length
    const refused = async (event: RunEvent) => problemOf(await add(bench, run.id, [happened('started', 1), event]))
    expect(await refused({ ...happened('started', 2), tank: 'B' })).toMatchObject({
      code: 'run.unknown-tank',
      field: 'events[1].tank',
    })
    expect(await refused(happened('poured-in', 2, last))).toMatchObject({
      code: 'run.unknown-step',
      details: { last: last - 1 },
    })
    expect(await refused(happened('poured-out', 2))).toMatchObject({
      code: 'run.step-missing',
      field: 'events[1].bath',
    })
    expect(await refused(happened('poured-in', 2, act))).toMatchObject({
      code: 'run.not-a-bath',
      field: 'events[1].kind',
    })
    expect((await look(bench, run.id)).events).toEqual([])
    expect(problemOf(await add(bench, UNKNOWN, [happened('started', 1)])).code).toBe('record.not-found')
  })

  it('typed in from paper says the same as pressed at the sink', async () => {
    const bench = await open(38)
    const id = await keptTime(bench)
    const [pressed, typed] = [
      await planned(bench, runPlan({ tanks: [timed(id)] })),
      await planned(bench, runPlan({ tanks: [timed(id)] })),
    ]
    expectOk(await add(bench, pressed.id, wholeRun(1, 560)))
    const fromPaper = wholeRun(1000, 560).map((event) => ({
      ...event,
      statedMs: event.wallMs,
      wallMs: NOON + 86_400_000,
      monotonicMs: 0,
      serverOffsetMs: null,
    }))
    expectOk(await add(bench, typed.id, fromPaper))
    const [a, b] = [await look(bench, pressed.id), await look(bench, typed.id)]
    expect(a.state).toBe('finished')
    expect(a.outcome[0]?.equivalent).toMatchObject({ target_s: 570 })
    expect([b.state, b.started_at, b.ended_at, b.outcome]).toEqual([a.state, a.started_at, a.ended_at, a.outcome])
  })

  it('gives development against plan: ten seconds late at 20 °C are ten seconds more', async () => {
    const bench = await open(39)
    const run = await planned(bench, runPlan({ tanks: [timed(await keptTime(bench))] }))
    // Clock from full to empty: poured out at 570 s, empty 10 s later, against a target of 570 s.
    expectOk(await add(bench, run.id, wholeRun(1, 570)))
    const equivalent = (await look(bench, run.id)).outcome[0]?.equivalent
    expect(equivalent?.fraction).toBeCloseTo(580 / 570, 6)
    expect(equivalent?.low).toBeLessThan(1)
    expect(equivalent?.high).toBeGreaterThan(580 / 570)
  })

  it('is given up once, tank by tank, and what is done stays done', async () => {
    const bench = await open(40)
    const run = await planned(bench, runPlan({ tanks: [tank('A'), tank('B')] }))
    expectOk(await add(bench, run.id, wholeRun()))
    expect((await look(bench, run.id)).state).toBe('running')
    const give = () => bench.write((context, rooms) => abandonRun(context, rooms, run.id, 'B leaked'))
    const after = expectOk(await give())
    expect(after).toMatchObject({ state: 'finished', outcome: [{ phase: 'done' }, { tank: 'B', phase: 'abandoned' }] })
    expect(after.events.at(-1)?.event).toMatchObject({ kind: 'abandoned', tank: 'B', reason: 'B leaked' })
    expect(problemOf(await give()).code).toBe('run.over')
  })
})

describe('verdicts', () => {
  it('the newest of a tank stands, the others stay on record', async () => {
    const bench = await open(41)
    const run = await planned(bench, runPlan({ tanks: [tank('A'), tank('B')] }))
    const say = async (name: string, density: 'thin' | 'right', note = '') =>
      expectOk(
        await bench.write((context, rooms) =>
          judgeRun(context, rooms, run.id, { tank: name, density, marks: [], note }),
        ),
      )
    await say('A', 'thin')
    await say('B', 'right')
    const { verdicts } = await say('A', 'right', 'it was the lamp')
    expect(verdicts.map(({ tank: of, density, stands }) => [of, density, stands])).toEqual([
      ['A', 'thin', false],
      ['B', 'right', true],
      ['A', 'right', true],
    ])
    const wrong = { tank: 'C', density: null, marks: [], note: '' }
    const refused = await bench.write((context, rooms) => judgeRun(context, rooms, run.id, wrong))
    expect(problemOf(refused)).toMatchObject({ code: 'run.unknown-tank', field: 'tank' })
  })
})

describe('the list of runs', () => {
  it('gives the last three of a film with their verdicts, practice left out, and pages through all', async () => {
    const bench = await open(42)
    const ids: string[] = []
    for (let i = 0; i < 6; i++) {
      bench.clock.advance(60_000)
      const film = i % 2 === 0 ? 'Corvane 400' : 'Fell 25'
      ids.unshift((await planned(bench, runPlan({ practice: i === 4 ? 5 : null, tanks: [tank('A', film)] }))).id)
    }
    const pages = async (wanted: object) => bench.read((rooms) => listRuns(rooms, { ...ALL, ...wanted }, NOON))
    const first = await pages({ most: 4 })
    expect([first.runs.map(({ id }) => id), first.more]).toEqual([ids.slice(0, 4), true])
    const second = await pages({ most: 4, before: ids[3] })
    expect([second.runs.map(({ id }) => id), second.more]).toEqual([ids.slice(4), false])
    expectOk(
      await bench.write((context, rooms) =>
        judgeRun(context, rooms, ids[3] as string, { tank: 'A', density: 'dense', marks: [], note: '' }),
      ),
    )
    const last = await pages({ film: 'corvane 400', practice: false, most: 3 })
    expect(last.runs.map(({ id, verdicts }) => [id, verdicts.map(({ density }) => density)])).toEqual([
      [ids[3], ['dense']],
      [ids[5], []],
    ])
  })
})

describe('the demo bench', () => {
  it('has a run that is done, a little over, with its verdict, and one that waits', async () => {
    const bench = await open(43)
    const demo = { ...bench.context, bench: bench.context.ids.next() }
    expectOk(await bench.store.write(demo, null, (rooms) => openDemo(demo, rooms)))
    const { runs } = await bench.store.read(demo.bench, (rooms) => listRuns(rooms, ALL, NOON))
    expect(runs.map(({ state, verdicts }) => [state, verdicts.map(({ density }) => density)])).toEqual([
      ['planned', []],
      ['finished', ['right']],
    ])
    const fraction = runs[1]?.outcome[0]?.equivalent?.fraction ?? 0
    // 0.4 °C and 4 s too much, on 9:30: some two per cent.
    expect(fraction).toBeGreaterThan(1.01)
    expect(fraction).toBeLessThan(1.05)
  })
})
