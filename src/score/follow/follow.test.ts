import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { celsius, expectOk, seconds } from '../../kernel/index.js'
import { dose } from '../../science/index.js'
import { basis, FOUR_BATHS, score } from '../events/bench.test-support.js'
import type { Happening, RunEvent } from '../events/definition.js'
import { fold } from '../events/fold.js'
import { courseUntil } from '../plan/course.js'
import { plan } from '../plan/plan.js'
import { SHIPPED_RECIPES } from '../recipe/shipped.js'
import type { TankFollowing } from './definition.js'
import { follow } from './follow.js'
import { tryReading } from './try-reading.js'

const ZERO = 1_800_000_000_000

/** Events of one phone that knows the time; seconds from the first drop. */
class Run {
  readonly events: RunEvent[] = []
  at(second: number, happening: Happening, bath: number | null = 0): this {
    const monotonicMs = Math.round(second * 1000)
    this.events.push({
      ...happening,
      id: `e${String(this.events.length).padStart(3, '0')}`,
      device: 'phone',
      life: 'one',
      monotonicMs,
      wallMs: ZERO + monotonicMs,
      serverOffsetMs: ZERO,
      tank: 'A',
      bath,
      actor: 'someone',
    })
    return this
  }
  reads = (second: number, temperature: number, confirmed = false): this =>
    this.at(second, { kind: 'reading', temperature: celsius(temperature), confirmed })
  undo = (of: string, second: number): this => this.at(second, { kind: 'retracted', of }, null)
  now(second: number): TankFollowing {
    const [tank] = follow(score, fold(score, this.events), ZERO + Math.round(second * 1000)).tanks
    if (tank === undefined) throw new Error('No tank is followed.')
    return tank
  }
}
const poured = (): Run => new Run().at(0, { kind: 'started' }, null).at(15, { kind: 'poured-in' })
const second = (instant: number | undefined): number => ((instant ?? Number.NaN) - ZERO) / 1000

describe('a tank under way', () => {
  it('has the film out at the planned second when nothing departs from the plan', () => {
    expect(second(poured().now(200).pourOut?.at)).toBeCloseTo(485, 1)
    expect(poured().now(200).timeLeft).toBeCloseTo(285, 1)
    expect(poured().now(200).changed).toBeNull()
  })

  it('says the next turn, and the change when the turns are over', () => {
    const { next } = poured().now(200)
    expect([next?.job.id, second(next?.at)]).toEqual(['developer/turn-4', 255])
    const last = poured().now(440).next
    expect([last?.job.id, second(last?.at)]).toEqual(['stop/change', 485])
  })

  it('pours out sooner when it reads warmer, by closed form, and says what changed', () => {
    const run = poured().reads(135, 20.8)
    // 20.0 to 20.8 °C over the first 120 s, then held: ∫ K^((T−20)/10) = rate − 1 over ln rate a second.
    const rate = 2.5 ** 0.08
    const done = (120 * (rate - 1)) / Math.log(rate)
    const due = 15 + 120 + (480 - done) / rate - 10
    const told = run.now(140)
    expect(second(told.pourOut?.at)).toBeCloseTo(due, 2)
    expect(told.changed).toMatchObject({ code: 'pour-out-earlier', temperature: 20.8, expected: 20 })
    expect(told.changed?.by).toBeCloseTo(485 - due, 2)
  })

  it('asks for a second reading past 1 °C and counts both when they agree', () => {
    const once = poured().reads(135, 21.4)
    expect(once.now(140).readings[0]).toMatchObject({ counts: false, verdict: 'read-again' })
    expect(second(once.now(140).pourOut?.at)).toBeCloseTo(485, 1)
    const twice = poured().reads(135, 21.4).reads(150, 21.5)
    expect(twice.now(160).readings.map(({ counts }) => counts)).toEqual([true, true])
    const slip = poured().reads(135, 24.0).reads(150, 20.1)
    expect(slip.now(160).readings.map(({ counts }) => counts)).toEqual([false, true])
  })

  it('asks before it moves the pour-out by more than a tenth, in small steps too', () => {
    const run = poured().reads(20, 20.9).reads(60, 21.7)
    expect(run.now(70).readings.map(({ verdict, counts }) => [verdict, counts])).toEqual([
      ['fine', true],
      ['confirm-shift', false],
    ])
    const sure = poured().reads(20, 20.9).reads(60, 21.7, true).reads(100, 21.9)
    expect(sure.now(110).readings.map(({ counts }) => counts)).toEqual([true, true, true])
  })

  it('tells what a reading would do before it is written down', () => {
    const [first] = score.tanks
    const state = (run: Run) => fold(score, run.events).tanks[0]
    const tried = (run: Run, temperature: number) => {
      const known = state(run)
      if (first === undefined || known === undefined) throw new Error('No tank is planned.')
      return tryReading(first, known, ZERO + 135_000, celsius(temperature))
    }
    expect(tried(poured(), 20.8)).toMatchObject({ counts: true, verdict: 'fine', expected: 20 })
    expect(tried(poured(), 20.8)?.shift).toBeCloseTo(-29.6, 1)
    expect(tried(poured(), 21.6)).toMatchObject({ counts: false, verdict: 'read-again' })
    expect(tried(poured().reads(120, 21.5), 21.6)).toMatchObject({ counts: true })
  })

  it('does not follow a temperature that the developer has no rate for', () => {
    expect(poured().reads(60, 33, true).now(70).readings[0]).toMatchObject({ verdict: 'outside', counts: false })
  })

  it('waits at the pour-out when it is late, and tells what that made', () => {
    expect(poured().now(500)).toMatchObject({
      timeLeft: -15,
      next: { state: 'waiting' },
      awaited: { kind: 'poured-out' },
    })
    const late = poured().at(509, { kind: 'poured-out' }).now(600)
    expect(late.deviations).toEqual([
      { code: 'poured-out-late', name: 'Developer', by: expect.closeTo(24, 3), gained: expect.closeTo(0.05, 3) },
    ])
    expect(late.developed?.fraction).toBeCloseTo(1.05, 3)
  })

  it('counts the earliest pour and shows the others; an undo brings the next one up, its own undo takes it back', () => {
    const run = poured().at(17, { kind: 'poured-in' })
    expect(second(run.now(60).pourOut?.at)).toBeCloseTo(485, 1)
    expect(run.now(60).deviations).toContainEqual({ code: 'pressed-twice', name: 'Developer', times: 1 })
    const before = JSON.stringify(run.now(70).plan)
    run.undo('e001', 65)
    expect(second(run.now(70).pourOut?.at)).toBeCloseTo(487, 1)
    run.undo('e003', 66)
    expect(JSON.stringify(run.now(70).plan)).toBe(before)
  })

  it('is at work, not late, in the very millisecond that a change is due', () => {
    const run = new Run()
      .at(0.007, { kind: 'poured-in' })
      .at(442.957, { kind: 'poured-out' })
      .at(564.357, { kind: 'poured-in' }, 1)
      .at(684.824, { kind: 'poured-out' }, 1)
      .at(709.109, { kind: 'poured-in' }, 2)
    // 300 s of fixing less 10 s of draining; summed in seconds from the first drop they come out a rounding short.
    const washing = (at: number) => run.now(at).jobs.find(({ job }) => job.id === 'wash/change')?.state
    expect([999.108, 999.109, 999.11].map(washing)).toEqual(['to-come', 'now', 'waiting'])
    expect(run.now(999.109).next).toMatchObject({ job: { id: 'wash/drain' }, at: ZERO + 1_137_109 })
  })

  it('is over when it is abandoned, and has no next job', () => {
    expect(poured().at(100, { kind: 'abandoned', reason: 'light leak' }, null).now(120)).toMatchObject({
      phase: 'abandoned',
      next: null,
      awaited: null,
    })
  })
})

describe('the room', () => {
  const warming = expectOk(
    plan([
      {
        recipe: FOUR_BATHS,
        conditions: {
          tank: 'A',
          development: { from: 'basis', basis, temperature: celsius(20) },
          room: { temperature: celsius(26), timeConstant: seconds(6600) },
        },
      },
    ]),
  )
  const out = (run: Run) => second(follow(warming, fold(warming, run.events), ZERO + 200_000).tanks[0]?.pourOut?.at)

  it('is counted after the last reading, and one that only confirms it moves nothing', () => {
    const expected = 26 - 6 * Math.exp(-180 / 6600)
    expect(out(poured())).toBeLessThan(484)
    // A chord in place of Newton's curve: far below what a thermometer shows.
    expect(Math.abs(out(poured().reads(195, expected)) - out(poured()))).toBeLessThan(0.1)
    expect(out(poured().reads(195, expected + 0.5))).toBeLessThan(out(poured()) - 1)
  })
})

describe('two tanks', () => {
  const two = expectOk(
    plan(
      ['A', 'B'].map((tank) => ({
        recipe: FOUR_BATHS,
        conditions: { tank, development: { from: 'basis', basis, temperature: celsius(20) } },
      })),
    ),
  )

  it('are each followed from their own first pour, and the soonest job comes first', () => {
    const run = poured()
    const other: RunEvent[] = run.events.map((event) => ({
      ...event,
      id: `b${event.id}`,
      tank: 'B',
      monotonicMs: event.monotonicMs + 40_000,
    }))
    const at = (now: number) => follow(two, fold(two, [...run.events, ...other]), ZERO + now * 1000)
    expect(at(60).tanks.map(({ pourOut }) => second(pourOut?.at))).toEqual([485, 525])
    expect([at(60).next?.tank, second(at(60).next?.job.at)]).toEqual(['A', 75])
    expect([at(80).next?.tank, second(at(80).next?.job.at)]).toEqual(['B', 115])
  })
})

describe('what is seen in the fixer', () => {
  const [list] = SHIPPED_RECIPES
  if (list === undefined) throw new Error('No list of baths is shipped.')
  const real = expectOk(
    plan([
      { recipe: list, conditions: { tank: 'A', development: { from: 'basis', basis, temperature: celsius(20) } } },
    ]),
  )
  const fixFor = (run: Run) => {
    const fix = follow(real, fold(real, run.events), ZERO + 800_000).tanks[0]?.plan.baths.find(({ id }) => id === 'fix')
    return (fix?.clockEnd ?? 0) - (fix?.clockStart ?? 0)
  }
  const look = list.steps.findIndex(({ id }) => id === 'look')

  it('sets its time: twice the clearing time, not under the least', () => {
    expect(fixFor(poured())).toBeCloseTo(300, 6)
    expect(fixFor(poured().at(700, { kind: 'step-done', clearing: seconds(200) }, look))).toBeCloseTo(400, 6)
    expect(fixFor(poured().at(700, { kind: 'step-done', clearing: seconds(40) }, look))).toBeCloseTo(180, 6)
  })

  it('says when the fixer is finished', () => {
    const run = poured().at(700, { kind: 'step-done', clearing: seconds(310) }, look)
    const [tank] = follow(real, fold(real, run.events), ZERO + 800_000).tanks
    expect(tank?.deviations).toContainEqual({ code: 'fixer-finished', name: 'Fix', needed: 620, most: 600 })
  })
})

describe('readings', () => {
  const reading = fc.tuple(fc.integer({ min: 30, max: 400 }), fc.integer({ min: 190, max: 215 }))

  it('a warmer one never lengthens', () => {
    fc.assert(
      fc.property(reading, fc.integer({ min: 1, max: 10 }), ([at, tenths], warmer) => {
        const out = (temperature: number) =>
          second(
            poured()
              .reads(at, temperature, true)
              .now(at + 1).pourOut?.at,
          )
        expect(out((tenths + warmer) / 10)).toBeLessThanOrEqual(out(tenths / 10) + 1e-3)
      }),
      { seed: 20261, numRuns: 300 },
    )
  })

  it('development adds up: what is done by two moments is the first and what lies between', () => {
    fc.assert(
      fc.property(reading, fc.integer({ min: 20, max: 200 }), ([at, tenths], more) => {
        const course = [
          { at: seconds(0), temperature: celsius(20) },
          { at: seconds(at), temperature: celsius(tenths / 10) },
        ]
        const until = (end: number) => expectOk(dose(basis, courseUntil(course, end))).equivalent
        const later = courseUntil(course, at + more).filter(({ at: when }) => when >= at)
        expect(until(at) + expectOk(dose(basis, later)).equivalent).toBeCloseTo(until(at + more), 6)
        const run = poured().reads(15 + at, tenths / 10, true)
        expect(run.now(15 + at + more).developed?.done).toBeCloseTo(until(at + more), 2)
      }),
      { seed: 20261, numRuns: 200 },
    )
  })
})
