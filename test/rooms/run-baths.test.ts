import { beforeEach, describe, expect, it } from 'vitest'
import { expectOk } from '../../src/kernel/index.js'
import { addRunEvents, costOfRun, getLot, keepTimes, planRun, takeInRolls } from '../../src/lab/index.js'
import type { RunEvent } from '../../src/score/index.js'
import { schemas } from '../../src/wire/index.js'
import { type Bench, benches, problemOf, time } from '../support/bench.js'
import { happened, runPlan, THREE_BATHS, tank, wholeRun } from '../support/runs.js'
import { DEVELOPER, FIXER, shelfHands } from '../support/shelf-hands.js'

const open = benches()
let bench: Bench
beforeEach(async () => {
  bench = await open(603)
})
const { product, container, bottle, mix, use, away, jug, inBottle } = shelfHands(() => bench)

const placeOf = (kind: string) => THREE_BATHS.steps.findIndex((step) => step.step === 'bath' && step.kind === kind)
const [DEVELOP, FIX] = [placeOf('developer'), placeOf('fix')]
const plan = (...tanks: object[]) => bench.write((context, rooms) => planRun(context, rooms, runPlan({ tanks })))
const from = (step: number, container_id: string, more: object = {}) => ({ step, container_id, lot_id: null, ...more })
/** A tank with its bottles; half a litre goes into it. */
const tankFrom = (from_shelf: object[], changes: object = {}, name = 'A') =>
  tank(name, 'Corvane 400', {
    conditions: { tank: name, development: { from: 'own', time: 480, temperature: 20 }, volume: 500 },
    from_shelf,
    ...changes,
  })
/** As though it were now an hour later, so that nothing is in the future. */
const add = (id: string, events: readonly RunEvent[]) =>
  bench.write((context, rooms) => addRunEvents(context, rooms, id, events))

async function shelfOfTwo() {
  const [fixing, developing] = [await product(FIXER), await product(DEVELOPER)]
  const [fixer, developer] = [await bottle('Fixer bottle'), await bottle('Developer bottle')]
  const pack = await container({
    ...{ kind: 'package', product_id: developing, unit: 'ml', full: 1000 },
    price: { minor: 1000, currency: 'EUR' },
  })
  const lot = expectOk(await mix(fixing, [[fixer, 600]])).lot?.id as string
  const other = expectOk(await mix(developing, [[developer, 1000]], [[pack, 500]])).lot?.id as string
  bench.clock.advance(3_600_000)
  return { fixer, developer, lot, developerLot: other }
}

describe('the bottles of a plan', () => {
  it('are kept in it by name and lot, with the film that they will meet', async () => {
    const { fixer, lot } = await shelfOfTwo()
    const rolls = [
      { statement: { film: 'Corvane 400', process: 'black-and-white', format: '135', frames: 24 } },
      { statement: { film: 'Corvane 400', process: 'black-and-white', format: '120' } },
    ]
    const asked = schemas.TakeInRolls.parse({ rolls })
    const ids = expectOk(await bench.write((c, rooms) => takeInRolls(c, rooms, asked))).rolls.map(({ id }) => id)
    const on_reels = ids.map((roll_id) => ({ roll_id, exposure_index: null, label: '' }))
    const run = expectOk(await plan(tankFrom([from(FIX, fixer)], { reels: 2, on_reels })))
    expect(run.plan.tanks[0]?.from_shelf).toEqual([
      {
        ...{ step: FIX, container_id: fixer, name: 'Fixer bottle', lot_id: lot, code: '26-001' },
        ...{ product: 'Ammonium fixer', poured_ml: 500 },
        film: [
          { format: '135', frames: 24, count: 1, family: 'ordinary' },
          { format: '120', frames: null, count: 1, family: 'ordinary' },
        ],
      },
    ])
  })

  it('stop the plan at a wrong role, a wrong lot, too little in it, and a step that is no bath from a bottle', async () => {
    const { fixer, developer, developerLot } = await shelfOfTwo()
    const refused = async (asked: object, code: string) =>
      expect(problemOf(await plan(tankFrom([asked])))).toMatchObject({
        code,
        field: expect.stringMatching(/^tanks\[0\]\.from_shelf\[0\]/),
      })
    const before = await bench.everything()
    await refused(from(DEVELOP, fixer), 'shelf.wrong-role')
    await refused(from(FIX, developer), 'shelf.wrong-role')
    await refused(from(FIX, fixer, { lot_id: developerLot }), 'shelf.wrong-lot')
    await refused(from(FIX, fixer, { poured_ml: 601 }), 'shelf.not-enough')
    await refused(from(99, fixer), 'run.no-such-bath')
    await refused(from(FIX, await bottle('Empty')), 'shelf.empty')
    expect((await bench.everything()).length).toBe(before.length + 4)
    const unsaid = tankFrom([from(FIX, fixer)], { conditions: { tank: 'A', development: null } })
    expect(problemOf(await plan(unsaid)).code).toMatch(/run\.bath-volume|score\./)
  })

  it('stop it where they cannot carry the film, with the ways out; two tanks share one bottle', async () => {
    const { fixer, developer } = await shelfOfTwo()
    const spare = await bottle('Spare')
    expectOk(await mix(await product({ ...FIXER, name: 'Fixer, fresh' }), [[spare, 600]]))
    expectOk(await use(fixer, { film: [{ format: '120', count: 11 }] }))
    expectOk(await plan(tankFrom([from(FIX, fixer, { poured_ml: 300 })])))
    const two = [
      tankFrom([from(FIX, fixer, { poured_ml: 300 })]),
      tankFrom([from(FIX, fixer, { poured_ml: 300 })], {}, 'B'),
    ]
    const refused = problemOf(await plan(...two))
    expect(refused).toMatchObject({ code: 'shelf.carries-no-more', field: 'tanks[1].from_shelf[0].container_id' })
    expect(refused.sentence).toMatch(/Put in fewer, take Spare if it carries them, or mix fresh/)
    const once = (name: string) => tankFrom([from(DEVELOP, developer, { poured_ml: 600 })], {}, name)
    expect(problemOf(await plan(once('A'), once('B'))).code).toBe('shelf.not-enough')
  })
})

it('a developer that is used again takes longer by what it has met, as its product says, and as nobody else did', async () => {
  const id = await product({ ...DEVELOPER, name: 'Again', use: 'reusable', longer_percent_per_roll: 10 })
  const bottleId = await bottle('Again')
  expectOk(await mix(id, [[bottleId, 1000]]))
  expectOk(await use(bottleId, { film: [{ format: '120', count: 2 }] }))
  const kept = expectOk(await bench.write((context, rooms) => keepTimes(context, rooms, [time()])))
  const development = { from: 'kept', time_id: kept.times[0]?.id, temperature: 20 }
  const planned = async (more: object = {}) => {
    const conditions = { tank: 'A', development: { ...development, ...more }, volume: 500 }
    const run = expectOk(await plan(tankFrom([from(DEVELOP, bottleId)], { conditions })))
    const found = run.plan.tanks[0]?.conditions.development
    return found?.from === 'basis' ? found.modifiers : null
  }
  expect(await planned()).toEqual([{ name: 'repeat-use', factor: 1.2, origin: 'sheet' }])
  const own = { name: 'repeat-use', factor: 1.5, origin: 'measured' }
  expect(await planned({ modifiers: [own] })).toEqual([own])
})

describe('what a run took', () => {
  const planned = async (more: object[] = []) => {
    const bottles = await shelfOfTwo()
    const run = expectOk(await plan(tankFrom([from(DEVELOP, bottles.developer), from(FIX, bottles.fixer), ...more])))
    return { ...bottles, run: run.id }
  }
  const kinds = async (lot: string) =>
    expectOk(await bench.read((rooms) => getLot(bench.context, rooms, lot))).history.map(({ told }) => told.kind)

  it('is booked once when its baths were poured out: one-shot gone, reusable counted, and it has its price', async () => {
    const { fixer, developer, lot, run } = await planned()
    const events = wholeRun()
    expectOk(await add(run, events.slice(0, 3)))
    expectOk(await add(run, events))
    expectOk(await add(run, [...events].reverse()))
    expect((await inBottle(developer))?.held).toBe(500)
    expect(await inBottle(fixer)).toMatchObject({ held: 580, left: { met: 1 } })
    expect(await kinds(lot)).toEqual(['mixed', 'used'])
    const cost = expectOk(await bench.read((rooms) => costOfRun(rooms, run)))
    expect(cost).toMatchObject({ minor: 250, currency: 'EUR', whole: false })
  })

  it('comes back when the pouring out was taken back', async () => {
    const { fixer, lot, run } = await planned()
    const events = wholeRun()
    const out = events.find(({ kind, bath }) => kind === 'poured-out' && bath === FIX) as RunEvent
    const until = events.slice(0, events.indexOf(out) + 1)
    expectOk(await add(run, until))
    expect((await inBottle(fixer))?.held).toBe(580)
    expectOk(await add(run, [happened('retracted', 900, null, { of: out.id, seconds: 3000 })]))
    expect(await inBottle(fixer)).toMatchObject({ held: 600, left: { met: 0 } })
    expect(await kinds(lot)).toEqual(['mixed', 'used', 'taken-back'])
  })

  it('never stops the hands at the sink: a bottle emptied since is left for a person', async () => {
    const { fixer, run } = await planned()
    expectOk(await away(fixer, await jug('Silver')))
    expectOk(await add(run, wholeRun()))
    expect((await inBottle(fixer))?.held).toBe(0)
  })
})
