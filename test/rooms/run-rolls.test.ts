import { beforeEach, describe, expect, it } from 'vitest'
import { expectOk } from '../../src/kernel/index.js'
import {
  abandonRun,
  addRunEvents,
  changeRolls,
  correctRoll,
  getRoll,
  keepFilm,
  keepTimes,
  keepVessel,
  moveRolls,
  planRun,
  type RollState,
  takeInRolls,
} from '../../src/lab/index.js'
import { type RunEvent, SHIPPED_RECIPES } from '../../src/score/index.js'
import { schemas } from '../../src/wire/index.js'
import { type Bench, benches, problemOf, time } from '../support/bench.js'
import { happened, runPlan, tank, wholeRun } from '../support/runs.js'

const open = benches()
let bench: Bench
beforeEach(async () => {
  bench = await open(502)
})

const takeIn = async (...changes: object[]): Promise<string[]> => {
  const rolls = changes.map((one) => ({
    statement: { film: 'Corvane 400', process: 'black-and-white', format: '135', exposure_index: 400, ...one },
  }))
  const asked = schemas.TakeInRolls.parse({ rolls })
  return expectOk(await bench.write((context, rooms) => takeInRolls(context, rooms, asked))).rolls.map(({ id }) => id)
}
const loaded = (ids: readonly string[], changes: object = {}, name = 'A') =>
  tank(name, '', {
    reels: ids.length,
    on_reels: ids.map((roll_id) => ({ roll_id, exposure_index: null, label: '' })),
    ...changes,
  })
const plan = (...tanks: object[]) => bench.write((context, rooms) => planRun(context, rooms, runPlan({ tanks })))
const add = (id: string, events: readonly RunEvent[]) =>
  bench.write((context, rooms) => addRunEvents(context, rooms, id, events))
const look = async (id: string) => expectOk(await bench.read((rooms) => getRoll(rooms, id)))
const states = async (ids: readonly string[]): Promise<RollState[]> => {
  const rolls = await Promise.all(ids.map(look))
  return rolls.map(({ state }) => state)
}
const stepsOf = async (id: string) =>
  (await look(id)).history.filter(({ retracted }) => !retracted).map(({ state }) => state)
const colour = SHIPPED_RECIPES.find(({ process }) => process === 'colour-negative')
const inColour = { recipe: colour, conditions: { tank: 'A', development: null } }

describe('wrong process', () => {
  it('stops colour film before black-and-white baths and the reverse, and nothing is kept', async () => {
    const [mono, negative] = (await takeIn({}, { process: 'colour-negative', film: 'Ember 200' })) as [string, string]
    const before = await bench.everything()
    expect(problemOf(await plan(loaded([mono, negative])))).toMatchObject({
      code: 'loads.wrong-process',
      field: 'tanks[0].on_reels[1]',
      details: { number: '2026-0002', film: 'colour negative', list: 'black-and-white' },
    })
    expect(problemOf(await plan(loaded([mono], inColour))).code).toBe('loads.wrong-process')
    expect(await bench.everything()).toEqual(before)
    expect((await plan(loaded([negative], inColour))).ok).toBe(true)
  })

  it('lets own film cross with a typed reason, film of somebody else never', async () => {
    const [own, theirs] = (await takeIn(
      { process: 'colour-negative', remarks: ['found'] },
      { process: 'colour-negative', whose: 'Ida' },
    )) as [string, string]
    const because = { crosses_because: 'Thirty years in a drawer; only silver is left.' }
    expect(problemOf(await plan(loaded([own, theirs], because))).code).toBe('loads.wrong-process-of-others')
    const run = expectOk(await plan(loaded([own], because)))
    expect(run.plan.tanks[0]?.crosses_because).toBe(because.crosses_because)
  })

  it('stops a film that is only named, when what is kept of it says another process', async () => {
    const film = schemas.FilmStatement.parse({ name: 'Ember 200', process: 'colour-negative' })
    expectOk(await bench.write((context, rooms) => keepFilm(context, rooms, film)))
    const named = { on_reels: [{ film: 'ember 200', exposure_index: null, label: '' }] }
    expect(problemOf(await plan(tank('A', '', named)))).toMatchObject({
      code: 'loads.wrong-process',
      details: { number: 'Ember 200', film: 'colour negative' },
    })
    expect((await plan(tank('A', '', { ...named, crosses_because: 'a test strip' }))).ok).toBe(true)
    const practice = runPlan({ practice: 5, tanks: [tank('A', '', named)] })
    expect((await bench.write((context, rooms) => planRun(context, rooms, practice))).ok).toBe(true)
  })

  it('is not gone round by correcting a planned roll, one or many, or by a step into the run', async () => {
    const [planned, other] = (await takeIn({}, { process: 'colour-negative' })) as [string, string]
    const run = expectOk(await plan(loaded([planned])))
    const { statement } = {
      statement: schemas.RollStatement.parse({ film: 'Ember 200', process: 'colour-negative', format: '135' }),
    }
    const corrected = await bench.write((context, rooms) => correctRoll(context, rooms, planned, 1, statement))
    expect(problemOf(corrected)).toMatchObject({ code: 'loads.wrong-process', field: 'statement.process' })
    const many = schemas.ChangeRolls.parse({ roll_ids: [planned], change: { process: 'colour-reversal' } })
    expect(problemOf(await bench.write((context, rooms) => changeRolls(context, rooms, many))).code).toBe(
      'loads.wrong-process',
    )
    const into = schemas.MoveRolls.parse({ roll_ids: [other], state: 'loaded', run_id: run.id })
    expect(problemOf(await bench.write((context, rooms) => moveRolls(context, rooms, into))).code).toBe(
      'roll.not-in-run',
    )
  })

  it('stops backing and infrared until they are taken care of', async () => {
    const [backed, infrared] = (await takeIn({ remarks: ['carbon-backing'] }, { remarks: ['infrared'] })) as [
      string,
      string,
    ]
    expect(problemOf(await plan(loaded([backed]))).code).toBe('loads.carbon-backing')
    expect(problemOf(await plan(loaded([infrared]))).code).toBe('loads.infrared')
    expect((await plan(loaded([backed, infrared], { confirmed: ['carbon-backing', 'infrared'] }))).ok).toBe(true)
  })
})

describe('rolls of a plan', () => {
  it('are in one plan, once, and wait', async () => {
    const [a, b] = (await takeIn({}, {})) as [string, string]
    expect(problemOf(await plan(loaded([a, a])))).toMatchObject({
      code: 'run.roll-twice',
      field: 'tanks[0].on_reels[1].roll_id',
    })
    expect(problemOf(await plan(loaded([a]), loaded([a], {}, 'B'))).code).toBe('run.roll-twice')
    expect(problemOf(await plan(loaded(['0190d1c2-0000-7000-8000-000000000000']))).code).toBe('record.not-found')
    const first = expectOk(await plan(loaded([a])))
    expect(problemOf(await plan(loaded([a]))).code).toBe('run.roll-planned')
    expectOk(await bench.write((context, rooms) => abandonRun(context, rooms, first.id, 'another day')))
    expect((await plan(loaded([a]))).ok).toBe(true)
    expectOk(
      await bench.write((context, rooms) =>
        moveRolls(context, rooms, schemas.MoveRolls.parse({ roll_ids: [b], state: 'developed' })),
      ),
    )
    expect(problemOf(await plan(loaded([b]))).code).toBe('run.roll-past')
    const practice = runPlan({ practice: 5, tanks: [loaded([a])] })
    expect(problemOf(await bench.write((context, rooms) => planRun(context, rooms, practice))).code).toBe(
      'run.practice-with-rolls',
    )
  })

  it('say their film, their number and their reel, from the middle outwards', async () => {
    const [a, b, c] = (await takeIn({ format: '120' }, { format: '120' }, { format: '120' })) as [
      string,
      string,
      string,
    ]
    const on_reels = [
      { roll_id: c, reel: 2, exposure_index: null, label: '' },
      { roll_id: a, reel: 1, exposure_index: 50, label: 'lake' },
      { roll_id: b, reel: 1, exposure_index: null, label: '' },
    ]
    const beyond = [{ roll_id: a, reel: 3, exposure_index: null, label: '' }]
    expect(problemOf(await plan(loaded([a, b], { on_reels: beyond }))).code).toBe('run.no-such-reel')
    const run = expectOk(await plan(loaded([a, b], { on_reels })))
    expect(run.plan.tanks[0]?.on_reels).toEqual([
      { film: 'Corvane 400', exposure_index: 400, label: 'lake', reel: 1, roll: { roll_id: a, number: '2026-0001' } },
      { film: 'Corvane 400', exposure_index: 400, label: '', reel: 1, roll: { roll_id: b, number: '2026-0002' } },
      { film: 'Corvane 400', exposure_index: 400, label: '', reel: 2, roll: { roll_id: c, number: '2026-0003' } },
    ])
  })
})

describe('mixed films in one tank', () => {
  const kept = (changes: object) =>
    bench.write((context, rooms) =>
      keepTimes(context, rooms, [time({ points: [{ temperature_c: 20, time_s: 480 }], ...changes })]),
    )
  const shared = { conditions: { tank: 'A', development: { from: 'shared', temperature: 20 } } }
  const two = async () => {
    expectOk(await kept({ film: 'Tarn 100', exposure_index: 100 }))
    expectOk(await kept({ points: [{ temperature_c: 20, time_s: 570 }] }))
    return takeIn({ film: 'tarn 100', exposure_index: 100 }, {})
  }

  it('share 8:45 where they want 8:00 and 9:30, and the plan keeps what each departs (P22)', async () => {
    const run = expectOk(await plan(loaded(await two(), shared)))
    expect(run.plan.tanks[0]?.on_reels).toMatchObject([
      { wants_s: 480, departs: 0.09375 },
      { wants_s: 570, departs: -0.078947 },
    ])
    expect(run.plan.tanks[0]?.conditions.development).toMatchObject({
      from: 'basis',
      modifiers: [{ factor: 525 / 480 }],
    })
  })

  it('are refused beyond what one of them bears, shared or at a typed time', async () => {
    const ids = await two()
    const tolerance = { in: 'percent', down: 10, up: 9 }
    const film = schemas.FilmStatement.parse({ name: 'Tarn 100', process: 'black-and-white', tolerance })
    expectOk(await bench.write((context, rooms) => keepFilm(context, rooms, film)))
    expect(problemOf(await plan(loaded(ids, shared)))).toMatchObject({
      code: 'loads.times-too-far-apart',
      details: {
        film: '2026-0001 tarn 100 at 100',
        wants: '8:00',
        gets: '8:45',
        departs: '9.4 % more',
        bears: '9.0 %',
      },
    })
    const typed = (seconds: number) => ({
      conditions: { tank: 'A', development: { from: 'own', time: seconds, temperature: 20 } },
    })
    expect(problemOf(await plan(loaded(ids, typed(570)))).code).toBe('loads.times-too-far-apart')
    expect((await plan(loaded(ids, typed(520)))).ok).toBe(true)
  })

  it('judge a tolerance in contrast by the law of the strips', async () => {
    const ids = await two()
    const strips = [
      { time_s: 300, contrast: 0.45 },
      { time_s: 600, contrast: 0.66 },
    ]
    const keep = (up: number, more: object = { strips }) => {
      const tolerance = { in: 'contrast', down: 0.1, up }
      const film = schemas.FilmStatement.parse({ name: `Tarn ${up}`, process: 'black-and-white', tolerance, ...more })
      return bench.write((context, rooms) => keepFilm(context, rooms, film))
    }
    expect(problemOf(await keep(0.1, {})).code).toBe('film.contrast-needs-strips')
    // By this law 45 s more than 8:00 are 0.029 more contrast, worked out by hand from k = ln(0.45 / 0.21) / 300 s.
    expectOk(await keep(0.025, { strips, name: 'Tarn 100' }))
    expect(problemOf(await plan(loaded(ids, shared))).code).toBe('loads.times-too-far-apart')
  })

  it('need to be known: a roll without a time is refused, a mere label passes', async () => {
    const [known] = (await two()) as [string]
    const [unknown, pushed] = (await takeIn(
      { film: 'Fell 25', exposure_index: 25 },
      { treatment: { as: 'index', index: 1600 } },
    )) as [string, string]
    expect(problemOf(await plan(loaded([known, unknown], shared)))).toMatchObject({
      code: 'loads.time-unknown',
      details: { film: '2026-0003 Fell 25 at 25' },
    })
    expect(problemOf(await plan(loaded([known, pushed], shared))).code).toBe('loads.time-unknown')
    const stated = {
      reels: 2,
      on_reels: [
        { roll_id: known, exposure_index: null, label: '' },
        { roll_id: unknown, wants_s: 500, exposure_index: null, label: '' },
      ],
    }
    expect((await plan(loaded([known], { ...shared, ...stated }))).ok).toBe(true)
    const label = {
      on_reels: [
        { roll_id: pushed, exposure_index: null, label: '', wants_s: 600 },
        { film: 'leader', exposure_index: null, label: '' },
      ],
    }
    expect((await plan(loaded([pushed], { ...shared, ...label, reels: 2 }))).ok).toBe(true)
  })
})

describe('the tank of the kit', () => {
  it('refuses what it does not hold or cover, and says which one would do', async () => {
    const keep = async (name: string, holds: object[]) => {
      const statement = schemas.VesselStatement.parse({
        kind: 'tank',
        name,
        moved: 'inversion',
        material: 'steel',
        holds,
      })
      return expectOk(await bench.write((context, rooms) => keepVessel(context, rooms, statement))).id
    }
    const small = await keep('Small', [{ format: '135', reels: 1, covers_ml: 250 }])
    await keep('Pair', [{ format: '135', reels: 2, covers_ml: 580 }])
    const [a, b] = (await takeIn({ frames: 37 }, { frames: 72 })) as [string, string]
    expect(problemOf(await plan(loaded([a, b], { vessel_id: small })))).toMatchObject({
      code: 'loads.tank-holds-too-little',
      field: 'tanks[0].vessel_id',
      details: { others: 'Pair would, with 580 mL' },
    })
    const run = expectOk(await plan(loaded([a], { vessel_id: small })))
    expect(run.plan.tanks[0]?.vessel).toEqual({ id: small, name: 'Small' })
  })
})

describe('rolls on their way with the run', () => {
  it('are loaded, developed, once each, however the events come', async () => {
    const ids = await takeIn({}, {})
    const run = expectOk(await plan(loaded(ids)))
    const events = wholeRun()
    expectOk(await add(run.id, [happened('noted', 900, null, { text: 'cold' })]))
    expect(await states(ids)).toEqual(['taken-in', 'taken-in'])
    expectOk(await add(run.id, events.slice(0, 2)))
    expect(await states(ids)).toEqual(['loaded', 'loaded'])
    expectOk(await add(run.id, events))
    expectOk(await add(run.id, events))
    expect(await states(ids)).toEqual(['developed', 'developed'])
    expect(await stepsOf(ids[0] as string)).toEqual(['loaded', 'developed'])
    expect((await look(ids[1] as string)).run_id).toBe(run.id)
    expectOk(
      await bench.write((context, rooms) =>
        moveRolls(context, rooms, schemas.MoveRolls.parse({ roll_ids: ids, state: 'hung', hook: '3' })),
      ),
    )
    expectOk(await add(run.id, [happened('noted', 901, null, { text: 'late' })]))
    expect(await states(ids)).toEqual(['hung', 'hung'])
  })

  it('wait again when the beginning was a mistake, or the run is given up before the first pour', async () => {
    const [a, b] = (await takeIn({}, {})) as [string, string]
    const run = expectOk(await plan(loaded([a])))
    const [started] = wholeRun() as [RunEvent]
    expectOk(await add(run.id, [started]))
    expectOk(await add(run.id, [happened('retracted', 902, null, { of: started.id })]))
    expect(await look(a)).toMatchObject({ state: 'taken-in', run_id: null })
    expectOk(await add(run.id, [{ ...started, id: happened('started', 903).id }]))
    expect(await states([a])).toEqual(['loaded'])
    expectOk(await bench.write((context, rooms) => abandonRun(context, rooms, run.id, 'the light came on')))
    expect(await states([a])).toEqual(['taken-in'])
    const poured = expectOk(await plan(loaded([b])))
    expectOk(await add(poured.id, wholeRun(2000).slice(0, 2)))
    expectOk(await bench.write((context, rooms) => abandonRun(context, rooms, poured.id, 'it leaks')))
    expect(await states([b])).toEqual(['loaded'])
  })
})
