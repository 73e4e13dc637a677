import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { celsius, expectOk, minutes, seconds } from '../../kernel/index.js'
import { type BasisInput, defineBasis, developingTime } from '../../science/index.js'
import type { Recipe } from '../recipe/definition.js'
import { isBath } from '../recipe/kinds.js'
import { singleBath, threeBathAcid } from '../recipe/lists/black-and-white.js'
import { colourNegative } from '../recipe/lists/colour.js'
import { SHIPPED_RECIPES } from '../recipe/shipped.js'
import type { DevelopmentWish, Score, TankConditions } from './definition.js'
import { joined, plan } from './plan.js'

const at = (temperature: number, time: number) => ({ temperature: celsius(temperature), time: minutes(time) })
const basisOf = (input: BasisInput) => expectOk(defineBasis(input))
const eight = basisOf({ kind: 'ordinary', points: [at(20, 8)], coefficient: 2.5 })
const alone = basisOf({ kind: 'single-bath', points: [at(21, 7), at(24, 6)] })

const wishFor = (recipe: Recipe): DevelopmentWish | null => {
  const bath = recipe.steps.find((step) => isBath(step) && step.time.law === 'by-developing-time')
  if (bath === undefined) return null
  return bath.kind === 'single-bath'
    ? { from: 'basis', basis: alone, temperature: celsius(24) }
    : { from: 'basis', basis: eight, temperature: celsius(20) }
}
const planned = (recipe: Recipe, more: Partial<TankConditions> = {}) =>
  plan([{ recipe, conditions: { tank: 'A', development: wishFor(recipe), ...more } }])
const only = (score: Score) => {
  const [tank] = score.tanks
  if (tank === undefined) throw new Error('A score has a tank.')
  return tank
}
const refusal = (result: ReturnType<typeof plan>) => (result.ok ? null : result.problem.code)

describe('the plan of three baths, 8:00 at 20 °C', () => {
  const tank = only(expectOk(planned(threeBathAcid)))
  const developer = tank.baths[0]
  const clock = (second: number | undefined) => (second ?? Number.NaN) - (developer?.clockStart ?? 0)

  it('drains from 7:50 to 8:00 and has seven turns after the opening', () => {
    expect([clock(developer?.drainStart), clock(developer?.clockEnd), clock(developer?.drainEnd)]).toEqual([
      470, 480, 480,
    ])
    const turns = tank.jobs.filter(({ kind, index }) => kind === 'turn' && index === 0)
    expect(turns.map(({ start }) => clock(start))).toEqual([60, 120, 180, 240, 300, 360, 420])
  })

  it('changes baths in one job that is as long as its parts: drain, cap, pour, tap, opening turns', () => {
    const change = tank.jobs.find(({ id }) => id === 'stop/change')
    expect(change?.parts.map(({ part }) => part)).toEqual(['drain', 'cap', 'pour', 'tap', 'turns'])
    const sum = (change?.parts ?? []).reduce((total, { start, end }) => total + end - start, 0)
    expect((change?.end ?? 0) - (change?.start ?? 0)).toBeCloseTo(sum, 9)
    expect([clock(change?.start), change?.maySlide]).toEqual([470, 0])
  })

  it('has the stop’s clock start when it is full, right after the developer', () => {
    expect(clock(tank.baths[1]?.clockStart)).toBe(480 + 3 + 15)
  })
})

describe.each(SHIPPED_RECIPES.map((recipe) => [recipe.name, recipe] as const))('the plan of %s', (_, recipe) => {
  const score = expectOk(planned(recipe))
  const { jobs, length, baths } = only(score)

  it('has no two jobs of one tank at once, each longer than nothing, all inside the whole', () => {
    const inOrder = [...jobs].sort((a, b) => a.start - b.start)
    inOrder.forEach((job, i) => {
      const next = inOrder[i + 1]
      expect(job.end).toBeGreaterThan(job.start)
      if (next !== undefined) expect(job.end, `${job.id} and ${next.id}`).toBeLessThanOrEqual(next.start + 1e-9)
    })
    expect(Math.max(...jobs.map(({ end }) => end))).toBeLessThanOrEqual(length + 1e-9)
  })

  it('has a change for every bath, and its hands busy less than the whole time', () => {
    expect(jobs.filter(({ kind }) => kind === 'change')).toHaveLength(baths.length)
    expect(score.handsBusy).toBeLessThan(score.length)
    expect(score.handsBusy).toBeCloseTo(
      jobs.reduce((sum, { start, end }) => sum + end - start, 0),
      6,
    )
  })
})

describe('how long the developer stays', () => {
  it('is the developing time to a tenth of a second, at any constant temperature, basis and factor', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 160, max: 270 }),
        fc.integer({ min: 5, max: 20 }),
        fc.integer({ min: 13, max: 38 }),
        fc.integer({ min: 60, max: 180 }),
        (tenths, time, coefficient, factor) => {
          const basis = basisOf({ kind: 'ordinary', points: [at(20, time)], coefficient: coefficient / 10 })
          const modifiers = [{ name: 'push-pull', factor: factor / 100, origin: 'measured' }] as const
          const temperature = celsius(tenths / 10)
          const [developer] = only(
            expectOk(planned(threeBathAcid, { development: { from: 'basis', basis, temperature, modifiers } })),
          ).baths
          const answer = expectOk(developingTime(basis, temperature, { modifiers })).time
          expect(Math.abs((developer?.clockEnd ?? 0) - (developer?.clockStart ?? 0) - answer)).toBeLessThan(0.1)
        },
      ),
      { seed: 20261, numRuns: 200 },
    )
  })

  it('is longer in a room that cools the tank, shorter in one that warms it', () => {
    const long = (room: number) => {
      const conditions = { room: { temperature: celsius(room), timeConstant: minutes(110) } }
      return only(expectOk(planned(threeBathAcid, conditions))).baths[0]?.clockEnd ?? 0
    }
    expect(long(16)).toBeGreaterThan(long(20) + 1)
    expect(long(24)).toBeLessThan(long(20) - 1)
    expect(long(20)).toBeCloseTo(495, 6)
  })

  it('never moves for a colour developer, whatever is asked', () => {
    const own: DevelopmentWish = { from: 'own', time: minutes(4), temperature: celsius(38) }
    expect(refusal(planned(colourNegative, { development: own }))).toBe('score.fixed-time')
    const cool = expectOk(planned(colourNegative, { temperatures: { developer: celsius(36) } }))
    expect(only(cool).baths[1]).toMatchObject({ id: 'developer' })
    expect((only(cool).baths[1]?.clockEnd ?? 0) - (only(cool).baths[1]?.clockStart ?? 0)).toBe(195)
    expect(cool.warnings).toMatchObject([{ code: 'colour-cast-likely', name: 'Colour developer' }])
  })

  const colour = SHIPPED_RECIPES.filter(({ process }) => process.startsWith('colour'))
  it.each(colour.map((recipe) => [recipe.name, recipe] as const))('stands still in %s', (_, recipe) => {
    const baths = recipe.steps.filter(isBath).filter(({ kind }) => kind.endsWith('developer'))
    expect(baths.length).toBeGreaterThan(0)
    for (const bath of baths) {
      expect(bath.time.law).toBe('fixed')
      const own: DevelopmentWish = { from: 'own', time: minutes(9), temperature: celsius(38) }
      const byBasis: DevelopmentWish = { from: 'basis', basis: eight, temperature: celsius(38) }
      for (const development of [own, byBasis])
        expect(refusal(planned(recipe, { development }))).toBe('score.fixed-time')
      const spanAt = (temperature: number) => {
        const tank = only(expectOk(planned(recipe, { temperatures: { [bath.id]: celsius(temperature) } })))
        const span = tank.baths.find(({ id }) => id === bath.id)
        return (span?.clockEnd ?? 0) - (span?.clockStart ?? 0)
      }
      const asWritten = bath.time.law === 'fixed' ? bath.time.seconds : Number.NaN
      expect([spanAt(36), spanAt(37.8), spanAt(40)]).toEqual([asWritten, asWritten, asWritten])
    }
  })

  it('is asked for where a list needs it, and by the right kind of developer', () => {
    expect(refusal(planned(threeBathAcid, { development: null }))).toBe('score.no-developing-time')
    const wrong: DevelopmentWish = { from: 'basis', basis: eight, temperature: celsius(20) }
    expect(refusal(planned(singleBath, { development: wrong }))).toBe('score.wrong-kind')
  })
})

describe('the bench’s own convention of the clock', () => {
  const withConvention = (starts: 'start-of-pour' | 'end-of-pour', ends: 'start-of-drain' | 'end-of-drain') => {
    const steps = threeBathAcid.steps.map((step) => (isBath(step) ? { ...step, convention: { starts, ends } } : step))
    return only(expectOk(planned({ ...threeBathAcid, steps }))).baths[0]
  }

  it('moves the clock against the same eight minutes', () => {
    const moments = (span: ReturnType<typeof withConvention>) => [
      span?.clockStart,
      span?.drainStart,
      span?.clockEnd,
      span?.drainEnd,
    ]
    expect(moments(withConvention('end-of-pour', 'end-of-drain'))).toEqual([15, 485, 495, 495])
    expect(moments(withConvention('start-of-pour', 'end-of-drain'))).toEqual([0, 470, 480, 480])
    expect(moments(withConvention('end-of-pour', 'start-of-drain'))).toEqual([15, 495, 495, 505])
  })
})

describe('a planned course of temperatures', () => {
  const points = [
    { at: seconds(0), temperature: celsius(20) },
    { at: minutes(4), temperature: celsius(22) },
  ]

  it('ends when its dose is reached, by closed form', () => {
    const development: DevelopmentWish = { from: 'basis', basis: eight, temperature: celsius(20), course: points }
    const [developer] = only(expectOk(planned(threeBathAcid, { development }))).baths
    const rate = 2.5 ** 0.2
    const done = (240 * (rate - 1)) / Math.log(rate)
    expect((developer?.clockEnd ?? 0) - (developer?.clockStart ?? 0)).toBeCloseTo(240 + (480 - done) / rate, 3)
  })
})

describe('baths against each other', () => {
  const temperatures = (stop: number, fix: number, wash = fix) =>
    planned(threeBathAcid, {
      temperatures: { stop: celsius(stop), fix: celsius(fix), 'wash-1': celsius(wash) },
    })
  const codes = (stop: number, fix: number, wash?: number) =>
    expectOk(temperatures(stop, fix, wash)).warnings.map(({ code }) => code)

  it('says nothing under 1.1 °C and speaks from there', () => {
    expect(codes(21.0, 20.9)).toEqual([])
    expect(codes(21.1, 20.9)).toEqual(['bath-differs'])
  })

  it('refuses from 2.8 °C, unless the person takes it on', () => {
    expect(codes(22.7, 22)).toEqual(['bath-differs', 'bath-differs', 'bath-differs'])
    expect(refusal(temperatures(22.8, 22))).toBe('score.bath-too-far')
    const overridden = planned(threeBathAcid, { temperatures: { stop: celsius(24) }, overridesSpread: true })
    expect(expectOk(overridden).warnings.map(({ code }) => code)).toEqual(['bath-too-far'])
  })

  it('refuses a chain of small drops beyond 2.8 °C in all', () => {
    expect(refusal(temperatures(21.5, 20, 18.6))).toBe('score.chain-too-long')
    expect(refusal(temperatures(21.4, 20, 18.7))).toBeNull()
  })

  it('judges a bath with a window of its own by that alone', () => {
    const warm = { developer: celsius(37.8), bleach: celsius(26), fix: celsius(42) }
    expect(expectOk(planned(colourNegative, { temperatures: warm })).warnings).toMatchObject([
      { code: 'outside-window', name: 'Fix' },
    ])
  })
})

describe('several tanks', () => {
  const wish = (tank: string, offset = 0) => ({
    recipe: threeBathAcid,
    conditions: { tank, offset: seconds(offset), development: wishFor(threeBathAcid) },
  })
  const alone = (tank: string) => expectOk(plan([wish(tank)]))

  it('are the same score whether they are planned together or joined', () => {
    const parts = [
      { score: alone('A'), offset: seconds(0) },
      { score: alone('B'), offset: seconds(700) },
    ]
    expect(expectOk(joined(parts))).toEqual(expectOk(plan([wish('A'), wish('B', 700)])))
    expect(expectOk(joined(parts)).length).toBe(alone('A').length + 700)
  })

  it('have names of their own', () => {
    const twice = joined([
      { score: alone('A'), offset: seconds(0) },
      { score: alone('A'), offset: seconds(9) },
    ])
    expect([refusal(twice), refusal(joined([]))]).toEqual(['score.same-tank', 'score.no-tank'])
  })
})

describe('conditions that cannot be', () => {
  it('are refused with their reason', () => {
    expect(refusal(plan([]))).toBe('score.no-tank')
    const wish = { recipe: threeBathAcid, conditions: { tank: 'A', development: wishFor(threeBathAcid) } }
    expect(refusal(plan([wish, wish]))).toBe('score.same-tank')
    expect(refusal(planned(threeBathAcid, { temperatures: { soup: celsius(20) } }))).toBe('score.unknown-step')
    expect(refusal(planned(threeBathAcid, { temperatures: { fix: celsius(70) } }))).toBe('score.bad-temperature')
    const room = { temperature: celsius(20), timeConstant: seconds(3) }
    expect(refusal(planned(threeBathAcid, { room }))).toBe('score.bad-room')
  })

  it('a fixer too slow for its film is told', () => {
    const score = expectOk(planned(threeBathAcid, { clearing: seconds(330) }))
    expect(score.warnings).toMatchObject([{ code: 'fixer-finished', needed: 660, most: 600 }])
  })
})
