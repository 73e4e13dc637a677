import { describe, expect, it } from 'vitest'
import { type Celsius, expectOk, fahrenheit, minutes, type Seconds } from '../../kernel/index.js'
import { type BasisInput, DEVELOPER_CLASSES, defineBasis, type SheetPoint } from './index.js'

const point = (temperature: number, time: number): SheetPoint => ({
  temperature: temperature as Celsius,
  time: time as Seconds,
})
const ordinary = (points: readonly SheetPoint[], more: Partial<BasisInput> = {}): BasisInput => ({
  kind: 'ordinary',
  points,
  ...more,
})
const range = (from: number, to: number) => ({ from: from as Celsius, to: to as Celsius })

function refusal(input: BasisInput) {
  const result = defineBasis(input)
  if (result.ok) throw new Error('expected a refusal')
  return result.problem
}

describe('what a basis is filled with', () => {
  it('sorts the points and takes the one nearest 20 °C as reference, the colder of two equally near', () => {
    const basis = expectOk(defineBasis(ordinary([point(24, 400), point(18, 600), point(22, 500)])))
    expect(basis.points.map(({ temperature }) => temperature)).toEqual([18, 22, 24])
    expect(basis.reference).toEqual(point(18, 600))
    expect(basis.law).toBe('exponential')
    expect(basis.developerClass).toBe('unknown')
    expect(basis.window).toBeNull()
  })

  it('takes 66 °F before 70 °F, which are equally near 20 °C but for the arithmetic', () => {
    const points = [66, 70].map((f) => ({ temperature: fahrenheit(f), time: minutes(f === 66 ? 6 : 5) }))
    expect(expectOk(defineBasis(ordinary(points))).reference.time).toBe(360)
  })

  it('prefers a warmer point that is really nearer', () => {
    expect(expectOk(defineBasis(ordinary([point(18, 600), point(21, 500)]))).reference.temperature).toBe(21)
  })

  it('counts the same point twice once, within 0.005 °C', () => {
    const basis = expectOk(defineBasis(ordinary([point(20, 600), point(20.004, 600), point(24, 400)])))
    expect(basis.points).toEqual([point(20, 600), point(24, 400)])
  })

  it('keeps the default range and widens it to the points', () => {
    expect(expectOk(defineBasis(ordinary([point(20, 600)]))).usable).toEqual(range(10, 32))
    expect(expectOk(defineBasis(ordinary([point(8, 900), point(35, 300)]))).usable).toEqual(range(8, 35))
    expect(expectOk(defineBasis(ordinary([point(20, 600)], { usable: range(15, 25) }))).usable).toEqual(range(15, 25))
    expect(expectOk(defineBasis(ordinary([point(20, 600)], { usable: range(20, 20) }))).usable).toEqual(range(20, 20))
  })

  it('gives a fixed time its window of 0.15 °C and every possible temperature', () => {
    const basis = expectOk(defineBasis({ kind: 'fixed', points: [point(38, 195)] }))
    expect(basis.window?.from).toBeCloseTo(37.85, 10)
    expect(basis.window?.to).toBeCloseTo(38.15, 10)
    expect(basis.usable).toEqual(range(0, 45))
    expect(basis.coefficient).toEqual({ value: 1, low: 1, high: 1, origin: 'sheet' })
    const stated = expectOk(defineBasis({ kind: 'fixed', points: [point(38, 195)], window: range(37, 39) }))
    expect(stated.window).toEqual(range(37, 39))
  })
})

describe('where the coefficient comes from', () => {
  it('one point: the class, or the developer’s own give or take its rounding', () => {
    expect(expectOk(defineBasis(ordinary([point(20, 600)]))).coefficient).toEqual(DEVELOPER_CLASSES.unknown)
    const metol = expectOk(defineBasis(ordinary([point(20, 600)], { developerClass: 'metol' })))
    expect(metol.coefficient).toEqual({ value: 1.28, low: 1.25, high: 1.3, origin: 'assumption' })
    const own = expectOk(
      defineBasis(ordinary([point(20, 600)], { coefficient: 2.5, developerClass: 'metol' })),
    ).coefficient
    expect(own).toMatchObject({ value: 2.5, origin: 'sheet' })
    expect(own.low).toBeCloseTo(2.45, 12)
    expect(own.high).toBeCloseTo(2.55, 12)
    expect(expectOk(defineBasis(ordinary([point(20, 600)], { coefficient: 1.02 }))).coefficient.low).toBe(1)
  })

  it('two points: their slope, with both half-steps as its spread; the own coefficient is not used', () => {
    // 10:00 and 7:00 are whole minutes, taken as rounded to half minutes: 15 s either way.
    const { coefficient } = expectOk(defineBasis(ordinary([point(20, 600), point(24, 420)], { coefficient: 5 })))
    const slope = Math.log(600 / 420) / 4
    const half = (15 / 600 + 15 / 420) / 4
    expect(coefficient.origin).toBe('law')
    expect(coefficient.value).toBeCloseTo(Math.exp(10 * slope), 10)
    expect(coefficient.low).toBeCloseTo(Math.exp(10 * (slope - half)), 10)
    expect(coefficient.high).toBeCloseTo(Math.exp(10 * (slope + half)), 10)
  })

  it('three points: no wider than both ends off by the worst misfit or the rounding, whichever is more', () => {
    const { coefficient } = expectOk(defineBasis(ordinary([point(18, 600), point(20, 500), point(22, 420)])))
    const ys = [600, 500, 420].map(Math.log)
    const slope = ((ys[2] as number) - (ys[0] as number)) / 4
    const mean = ys.reduce((total, y) => total + y, 0) / 3
    const worst = Math.max(...ys.map((y, i) => Math.abs(y - mean - slope * (2 * i - 2))))
    // Times in whole five seconds, so half a step is 2.5 s; Student's t with one degree of freedom claims more.
    const half = (Math.max(2.5 / 600, worst) + Math.max(2.5 / 420, worst)) / 4
    expect(coefficient.value).toBeCloseTo(Math.exp(-10 * slope), 10)
    expect(coefficient.high / coefficient.low).toBeCloseTo(Math.exp(20 * half), 8)
  })

  it('many points: the 95 % half-width of the slope', () => {
    // One misprinted time in the middle of a clean table.
    const times = [700, 651, 605, 590, 524, 487, 453]
    const { coefficient } = expectOk(defineBasis(ordinary(times.map((time, i) => point(18 + i, time)))))
    const ys = times.map(Math.log)
    const mean = ys.reduce((total, y) => total + y, 0) / 7
    const slope = ys.reduce((total, y, i) => total + (y - mean) * (i - 3), 0) / 28
    const squares = ys.reduce((total, y, i) => total + (y - mean - slope * (i - 3)) ** 2, 0)
    const half = 2.5706 * Math.sqrt(squares / 5 / 28)
    expect(coefficient.high / coefficient.low).toBeCloseTo(Math.exp(20 * half), 6)
  })

  it.each(['exponential', 'arrhenius'] as const)('equal times everywhere: K is 1 (%s)', (law) => {
    const basis = expectOk(defineBasis(ordinary([point(18, 600), point(20, 600), point(24, 600)], { law })))
    expect(basis.coefficient).toMatchObject({ value: 1, origin: 'law' })
  })

  it('points so close that rounding decides say nothing: the class holds', () => {
    const points = [78, 79].map((f) => ({ temperature: fahrenheit(f), time: minutes(f === 78 ? 2.5 : 2) }))
    expect(expectOk(defineBasis(ordinary(points))).coefficient).toEqual(DEVELOPER_CLASSES.unknown)
    expect(expectOk(defineBasis(ordinary(points, { coefficient: 3 }))).coefficient).toMatchObject({
      value: 3,
      origin: 'sheet',
    })
  })
})

describe('what a basis is refused for', () => {
  const fine = point(20, 600)
  it.each([
    ['no points', ordinary([]), 'times.no-points', 'points'],
    [
      '25 points',
      ordinary(Array.from({ length: 25 }, (_, i) => point(10 + i / 2, 600))),
      'times.too-many-points',
      'points',
    ],
    ['4 s', ordinary([fine, point(21, 4)]), 'times.impossible-time', 'points[1]'],
    ['a time over 6 h', ordinary([point(20, 21_601)]), 'times.impossible-time', 'points[0]'],
    ['no number as time', ordinary([point(20, Number.NaN)]), 'times.impossible-time', 'points[0]'],
    ['endless time', ordinary([point(20, Number.POSITIVE_INFINITY)]), 'times.impossible-time', 'points[0]'],
    ['below 0 °C', ordinary([point(-0.1, 600)]), 'times.impossible-temperature', 'points[0]'],
    ['over 45 °C', ordinary([point(45.1, 600)]), 'times.impossible-temperature', 'points[0]'],
    ['no number as temperature', ordinary([point(Number.NaN, 600)]), 'times.impossible-temperature', 'points[0]'],
    [
      'two times at one temperature',
      ordinary([point(24, 400), fine, point(20.005, 601)]),
      'times.two-times-at-one-temperature',
      'points[2]',
    ],
    ['slower when warmer', ordinary([point(24, 601), fine]), 'times.slower-when-warmer', 'points[0]'],
    ['K of 1', ordinary([fine], { coefficient: 1 }), 'times.bad-coefficient', 'coefficient'],
    ['K over 6', ordinary([fine], { coefficient: 6.01 }), 'times.bad-coefficient', 'coefficient'],
    [
      'K that is no number',
      ordinary([fine, point(24, 400)], { coefficient: Number.NaN }),
      'times.bad-coefficient',
      'coefficient',
    ],
    ['impossibly steep points', ordinary([fine, point(20.01, 100)]), 'times.bad-coefficient', 'points'],
    ['a range the wrong way round', ordinary([fine], { usable: range(25, 15) }), 'times.bad-range', 'usable'],
    [
      'a range that leaves a point out',
      ordinary([fine, point(24, 400)], { usable: range(10, 23) }),
      'times.bad-range',
      'usable',
    ],
    ['a range that starts above a point', ordinary([fine], { usable: range(20.1, 25) }), 'times.bad-range', 'usable'],
    ['a range below 0', ordinary([fine], { usable: range(-1, 25) }), 'times.bad-range', 'usable'],
    ['a range over 45', ordinary([fine], { usable: range(10, 46) }), 'times.bad-range', 'usable'],
    ['a range of no numbers', ordinary([fine], { usable: range(Number.NaN, 25) }), 'times.bad-range', 'usable'],
    [
      'a fixed time with two points',
      { kind: 'fixed', points: [point(38, 195), point(39, 190)] },
      'times.fixed-needs-one-point',
      'points',
    ],
    [
      'a window beside the point',
      { kind: 'fixed', points: [point(38, 195)], window: range(38.1, 39) },
      'times.bad-window',
      'window',
    ],
    [
      'a window of no numbers',
      { kind: 'fixed', points: [point(38, 195)], window: range(37, Number.NaN) },
      'times.bad-window',
      'window',
    ],
  ] as const)('%s', (_, input, code, field) => {
    expect(refusal(input as BasisInput)).toMatchObject({ code, field })
  })

  it('names both times and temperatures', () => {
    expect(refusal(ordinary([fine, point(24, 630)])).sentence).toContain(
      '10:30 at 24\u202f°C is longer than 10:00 at 20\u202f°C',
    )
    expect(refusal(ordinary([point(60, 600)])).sentence).toContain('10:00 at 60\u202f°C')
  })
})

describe('what is just accepted', () => {
  it.each([
    ['24 points', ordinary(Array.from({ length: 24 }, (_, i) => point(10 + i / 2, 600)))],
    ['5 s', ordinary([point(20, 5)])],
    ['6 h', ordinary([point(20, 21_600)])],
    ['0 °C', ordinary([point(0, 600)])],
    ['45 °C', ordinary([point(45, 600)])],
    ['two times 0.006 °C apart, the second no longer', ordinary([point(20, 600), point(20.006, 600)])],
    ['K of 6', ordinary([point(20, 600)], { coefficient: 6 })],
    ['the same point twice for a fixed time', { kind: 'fixed', points: [point(38, 195), point(38, 195)] }],
    ['a single bath that is slower when warmer', { kind: 'single-bath', points: [point(20, 240), point(24, 300)] }],
  ] as const)('%s', (_, input) => {
    expect(defineBasis(input as BasisInput).ok).toBe(true)
  })
})
