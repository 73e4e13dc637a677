import { describe, expect, it } from 'vitest'
import { type Celsius, celsius, expectOk, type Seconds, seconds } from '../../kernel/index.js'
import { type BasisInput, type CourseReading, defineBasis, dose, timeForCourse } from './index.js'

const basisOf = (points: readonly [number, number][], more: Partial<BasisInput> = {}) =>
  expectOk(
    defineBasis({
      kind: 'ordinary',
      points: points.map(([t, s]) => ({ temperature: celsius(t), time: seconds(s) })),
      ...more,
    }),
  )
const one = basisOf([[20, 600]], { coefficient: 2.5 })
const course = (...readings: [number, number][]): CourseReading[] =>
  readings.map(([at, temperature]) => ({ at: at as Seconds, temperature: temperature as Celsius }))

describe('dose', () => {
  it('at the reference temperature counts the seconds themselves', () => {
    expect(expectOk(dose(one, course([30, 20], [330, 20])))).toEqual({
      equivalent: expect.closeTo(300, 9),
      fraction: expect.closeTo(0.5, 12),
      meanRate: expect.closeTo(1, 12),
      warnings: [],
    })
  })

  it('is measured in the reference’s seconds: ten degrees more is 2.5 times as much', () => {
    const result = expectOk(dose(one, course([0, 30], [100, 30])))
    expect(result.equivalent).toBeCloseTo(250, 8)
    expect(result.fraction).toBeCloseTo(250 / 600, 10)
    expect(result.meanRate).toBeCloseTo(2.5, 10)
  })

  it('comes to an end where two readings are the least time apart that a number can hold', () => {
    const { equivalent } = expectOk(dose(one, course([0, 18], [5e-324, 26], [1e-300, 24], [300, 24])))
    expect(equivalent).toBeCloseTo(300 * 2.5 ** 0.4, 6)
  })

  it('says what its warmest and coldest moment call for', () => {
    const assumed = basisOf([[20, 600]])
    const { warnings, equivalent } = expectOk(dose(assumed, course([0, 20], [300, 28])))
    expect(warnings).toContainEqual({ code: 'beyond-sheet', by: 8, from: 20, to: 20 })
    expect(warnings).toContainEqual({ code: 'outside-practice', from: 16, to: 27 })
    const spread = warnings.find(({ code }) => code === 'assumed-coefficient')
    const mean = (k: number) => (300 * (k ** 0.8 - 1)) / (Math.log(k) * 0.8)
    expect(spread).toMatchObject({ shortest: expect.closeTo(mean(1.6), 7), longest: expect.closeTo(mean(3.8), 7) })
    expect(equivalent).toBeCloseTo(mean(2.4), 7)
    expect(expectOk(dose(one, course([0, 15], [300, 20]))).warnings.map(({ code }) => code)).toEqual([
      'beyond-sheet',
      'outside-practice',
    ])
  })

  it.each([
    ['one reading', course([0, 20]), 'dose.too-few-readings', 'readings'],
    ['none', [], 'dose.too-few-readings', 'readings'],
    ['two at one moment', course([0, 20], [60, 20], [60, 21]), 'dose.readings-out-of-order', 'readings[2].at'],
    ['one before the other', course([60, 20], [30, 20]), 'dose.readings-out-of-order', 'readings[1].at'],
    ['a negative moment', course([-1, 20], [30, 20]), 'quantity.out-of-range', 'readings[0].at'],
    ['a moment that is no number', course([0, 20], [Number.NaN, 20]), 'quantity.out-of-range', 'readings[1].at'],
    [
      'a temperature past the range',
      course([0, 20], [60, 32.1]),
      'times.outside-usable-range',
      'readings[1].temperature',
    ],
    [
      'a temperature that is no number',
      course([0, Number.NaN], [60, 20]),
      'quantity.out-of-range',
      'readings[0].temperature',
    ],
  ] as const)('refuses %s', (_, readings, code, field) => {
    expect(dose(one, readings)).toMatchObject({ ok: false, problem: { code, field } })
  })
})

describe('moment of pouring out', () => {
  it('is the planned time at a constant temperature, on the clock of the readings', () => {
    expect(expectOk(timeForCourse(one, course([100, 20]), seconds(600)))).toEqual({
      at: expect.closeTo(700, 8),
      elapsed: expect.closeTo(600, 8),
    })
    expect(expectOk(timeForCourse(one, course([0, 30]), seconds(600))).elapsed).toBeCloseTo(240, 8)
  })

  it('holds the last temperature, and finds the moment inside a drift', () => {
    const drift = course([50, 20], [290, 24])
    const whole = expectOk(dose(one, drift)).equivalent
    const held = expectOk(timeForCourse(one, drift, (whole + 100) as Seconds))
    expect(held.at).toBeCloseTo(290 + 100 / 2.5 ** 0.4, 6)
    const inside = expectOk(timeForCourse(one, drift, seconds(150)))
    expect(inside.at).toBeLessThan(290)
    const until = 20 + ((inside.at - 50) * 4) / 240
    expect(expectOk(dose(one, course([50, 20], [inside.at, until]))).equivalent).toBeCloseTo(150, 4)
    expect(inside.at - inside.elapsed).toBeCloseTo(50, 9)
  })

  it('is refused past the limit, which counts from the first reading', () => {
    const at = (limit: number) => timeForCourse(one, course([1000, 20]), seconds(600), { limit: seconds(limit) })
    expect(at(600.001).ok).toBe(true)
    expect(at(599)).toMatchObject({ problem: { code: 'dose.never-reached' } })
    expect(timeForCourse(one, course([0, 10]), seconds(50_000))).toMatchObject({
      problem: { code: 'dose.never-reached' },
    })
  })

  it.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('refuses a target of %d', (target) => {
    expect(timeForCourse(one, course([0, 20]), target as Seconds)).toMatchObject({
      problem: { code: 'quantity.out-of-range', field: 'target' },
    })
  })
  it('refuses a course without readings', () => {
    expect(timeForCourse(one, [], seconds(600))).toMatchObject({ problem: { code: 'dose.too-few-readings' } })
  })
})
