import { describe, expect, it } from 'vitest'
import { type Celsius, celsius, expectOk, seconds } from '../../kernel/index.js'
import { type BasisInput, defineBasis, developingTime, type Modifier, rateAt, rateOf, timeAt } from './index.js'

const basisOf = (points: readonly [number, number][], more: Partial<BasisInput> = {}) =>
  expectOk(
    defineBasis({
      kind: 'ordinary',
      points: points.map(([t, s]) => ({ temperature: celsius(t), time: seconds(s) })),
      ...more,
    }),
  )
const one = basisOf([[20, 600]], { coefficient: 2.5 })
const sheet = basisOf([
  [18, 720],
  [20, 600],
  [24, 420],
])
const codesAt = (basis: typeof one, temperature: number) =>
  expectOk(developingTime(basis, temperature as Celsius)).warnings.map(({ code }) => code)

describe('time at a temperature', () => {
  it('says where it lies', () => {
    expect(expectOk(timeAt(sheet, celsius(20)))).toEqual({ time: 600, position: 'sheet-point', beyondBy: 0 })
    expect(expectOk(timeAt(sheet, celsius(21)))).toMatchObject({ position: 'between', beyondBy: 0 })
    expect(expectOk(timeAt(sheet, celsius(16)))).toMatchObject({ position: 'beyond-cold', beyondBy: 2 })
    expect(expectOk(timeAt(sheet, celsius(25)))).toMatchObject({ position: 'beyond-warm', beyondBy: 1 })
  })

  it('goes on from the end points’ own times with the slope of the fit', () => {
    const slope = Math.log(sheet.coefficient.value) / 10
    expect(expectOk(timeAt(sheet, celsius(26))).time).toBeCloseTo(420 * Math.exp(-2 * slope), 8)
    expect(expectOk(timeAt(sheet, celsius(15))).time).toBeCloseTo(720 * Math.exp(3 * slope), 8)
  })

  it('with two points keeps to the law between and beyond them', () => {
    for (const law of ['exponential', 'arrhenius'] as const) {
      const two = basisOf(
        [
          [18, 720],
          [24, 420],
        ],
        { law },
      )
      const warmth = (t: number) => (law === 'exponential' ? t : -1 / (t + 273.15))
      const expected = (t: number) =>
        720 * Math.exp((Math.log(420 / 720) * (warmth(t) - warmth(18))) / (warmth(24) - warmth(18)))
      for (const t of [12, 19, 21.5, 30]) expect(expectOk(timeAt(two, celsius(t))).time).toBeCloseTo(expected(t), 8)
    }
  })

  it('is given to the ends of the usable range and not past them', () => {
    const narrow = basisOf([[20, 600]], { usable: { from: celsius(15), to: celsius(25) } })
    for (const t of [15, 25]) expect(timeAt(narrow, celsius(t)).ok).toBe(true)
    for (const t of [14.99, 25.01]) {
      const refused = timeAt(narrow, celsius(t))
      expect(refused).toMatchObject({ ok: false, problem: { code: 'times.outside-usable-range' } })
      expect(!refused.ok && refused.problem.sentence).toContain(`${t}\u202f°C is outside 15\u202f°C to 25\u202f°C`)
    }
    expect(timeAt(narrow, Number.NaN as Celsius)).toMatchObject({ problem: { code: 'quantity.out-of-range' } })
  })

  it('holds a single bath’s one point for 0.3 °C either side', () => {
    const bath = basisOf([[24, 360]], { kind: 'single-bath' })
    for (const t of [23.7, 24, 24.3])
      expect(expectOk(timeAt(bath, celsius(t)))).toMatchObject({ time: 360, position: 'sheet-point' })
    for (const t of [23.69, 24.31])
      expect(timeAt(bath, celsius(t))).toMatchObject({ problem: { code: 'times.single-bath-outside-sheet' } })
  })

  it('refuses a time that nobody can wait for, or catch', () => {
    const slow = basisOf([[30, 21_600]], { coefficient: 6 })
    expect(timeAt(slow, celsius(10))).toMatchObject({ problem: { code: 'times.impossible-answer' } })
    const quick = basisOf([[12, 5]], { coefficient: 6 })
    expect(timeAt(quick, celsius(32))).toMatchObject({ problem: { code: 'times.impossible-answer' } })
  })

  it('turns into a rate against the reference', () => {
    expect(expectOk(rateAt(one, celsius(30)))).toEqual({ rate: expect.closeTo(2.5, 10), position: 'beyond-warm' })
    expect(expectOk(rateOf(one)(celsius(10)))).toBeCloseTo(0.4, 10)
    expect(rateAt(one, celsius(9)).ok).toBe(false)
    expect(rateOf(one)(celsius(33)).ok).toBe(false)
  })
})

describe('factors', () => {
  const agitation: Modifier = { name: 'agitation', factor: 0.85, origin: 'practice' }
  const push: Modifier = { name: 'push-pull', factor: 1.4, origin: 'practice' }

  it('keeps them in order, the temperature first, and their product makes the time', () => {
    const answer = expectOk(developingTime(one, celsius(22), { modifiers: [agitation, push] }))
    expect(answer.factors.map(({ name }) => name)).toEqual(['temperature', 'agitation', 'push-pull'])
    expect(answer.factors[0]).toMatchObject({ factor: expect.closeTo(2.5 ** -0.2, 12), origin: 'sheet' })
    expect(answer.time).toBeCloseTo(
      answer.factors.reduce<number>((time, { factor }) => time * factor, answer.reference.time),
      9,
    )
  })

  it('names the origin of the temperature factor', () => {
    const origin = (basis: typeof one, t: number) => expectOk(developingTime(basis, celsius(t))).factors[0]?.origin
    expect(origin(sheet, 20)).toBe('sheet')
    expect(origin(sheet, 21)).toBe('law')
    expect(origin(sheet, 26)).toBe('law')
    expect(origin(basisOf([[20, 600]]), 22)).toBe('assumption')
    expect(origin(basisOf([[38, 195]], { kind: 'fixed' }), 20)).toBe('sheet')
  })

  it.each([0.3, 4])('accepts a factor of %d', (factor) => {
    expect(developingTime(one, celsius(20), { modifiers: [{ ...agitation, factor }] }).ok).toBe(true)
  })
  it.each([0.29, 4.01, 0, -1, Number.NaN, Number.POSITIVE_INFINITY])('refuses a factor of %d', (factor) => {
    const refused = developingTime(one, celsius(20), { modifiers: [push, { ...agitation, factor }] })
    expect(refused).toMatchObject({ problem: { code: 'times.bad-factor', field: 'modifiers[1].factor' } })
  })
  it.each([-0.1, 5.1, Number.NaN])('refuses a thermometer error of %d', (thermometerError) => {
    expect(developingTime(one, celsius(20), { thermometerError })).toMatchObject({
      problem: { code: 'quantity.out-of-range' },
    })
  })
  it('refuses factors that multiply past a day', () => {
    const modifiers = Array.from({ length: 4 }, () => ({ ...push, name: 'other' as const, factor: 4 }))
    expect(developingTime(one, celsius(20), { modifiers })).toMatchObject({
      problem: { code: 'times.impossible-answer' },
    })
  })
})

describe('band', () => {
  it('by the thermometer: half a degree at K 2.4 on 8:19 is some 22 s', () => {
    const basis = basisOf([[20, 499]], { coefficient: 2.4 })
    const { band } = expectOk(developingTime(basis, celsius(20)))
    expect(band.thermometerError).toBe(0.5)
    expect(band.byThermometer).toBeCloseTo(499 * (2.4 ** 0.05 - 1), 9)
    expect(Math.round(band.byThermometer)).toBe(22)
  })

  it('by the thermometer: the worse side, scaled with the modifiers, carried on past a refusal', () => {
    const edge = basisOf([[20, 600]], { coefficient: 2.5, usable: { from: celsius(20), to: celsius(25) } })
    const modifiers: Modifier[] = [{ name: 'other', factor: 2, origin: 'measured' }]
    const { band } = expectOk(developingTime(edge, celsius(20), { thermometerError: 1, modifiers }))
    expect(band.byThermometer).toBeCloseTo(1200 * (2.5 ** 0.1 - 1), 9)
    expect(expectOk(developingTime(edge, celsius(20), { thermometerError: 0 })).band.byThermometer).toBe(0)
  })

  it('by sheet and law: at a point half the rounding step, beside it the slope as well', () => {
    expect(expectOk(developingTime(one, celsius(20))).band.bySheetAndLaw).toBeCloseTo(15, 10)
    const answer = expectOk(developingTime(one, celsius(23)))
    const bySlope = (3 * Math.log(2.55 / 2.45)) / 20
    expect(answer.band.bySheetAndLaw).toBeCloseTo(answer.time * Math.hypot(15 / answer.time, bySlope), 9)
  })

  it.each([
    [[[20, 600]], 15],
    [[[20, 570]], 15],
    [[[20, 585]], 7.5],
    [[[20, 580]], 2.5],
    [[[20, 583]], 0.5],
    [
      [
        [18, 720],
        [20, 585],
      ],
      7.5,
    ],
    [[[20, 583.4]], 0.5],
  ] as [[number, number][], number][])('takes the rounding of %j as half a step of %d s', (points, half) => {
    expect(expectOk(developingTime(basisOf(points), celsius(20))).band.bySheetAndLaw).toBeCloseTo(half, 9)
  })

  it('is not zero for a single bath with one point, and is for a fixed time', () => {
    const bath = basisOf([[24, 360]], { kind: 'single-bath' })
    expect(expectOk(developingTime(bath, celsius(24))).band.byThermometer).toBeCloseTo(360 * (2.4 ** 0.05 - 1), 9)
    const fixed = basisOf([[38, 195]], { kind: 'fixed' })
    expect(expectOk(developingTime(fixed, celsius(38))).band).toMatchObject({
      byThermometer: 0,
      bySheetAndLaw: expect.closeTo(7.5, 9),
    })
  })
})

describe('warnings', () => {
  const practice = basisOf([
    [10, 900],
    [32, 400],
  ])
  it.each([
    [15.9, true],
    [16, false],
    [27, false],
    [27.1, true],
  ])('at %d °C outside practice: %s', (t, said) => {
    expect(codesAt(practice, t).includes('outside-practice')).toBe(said)
  })

  it('short time: under five minutes and not at five', () => {
    expect(codesAt(basisOf([[20, 300]]), 20)).toEqual([])
    expect(expectOk(developingTime(basisOf([[20, 299]]), celsius(20))).warnings).toEqual([
      { code: 'short-time', time: 299, limit: 300 },
    ])
    expect(codesAt(basisOf([[20, 240]], { kind: 'single-bath' }), 20)).toEqual(['single-bath-sheet-only'])
  })

  it('beyond the sheet: by how much, and the sheet’s ends', () => {
    const { warnings } = expectOk(developingTime(sheet, celsius(25.5)))
    expect(warnings).toEqual([{ code: 'beyond-sheet', by: 1.5, from: 18, to: 24 }])
    expect(expectOk(developingTime(sheet, celsius(16))).warnings).toEqual([
      { code: 'beyond-sheet', by: 2, from: 18, to: 24 },
    ])
    expect(codesAt(sheet, 18)).toEqual([])
    expect(codesAt(sheet, 21)).toEqual([])
  })

  it('assumed coefficient: with the shortest and longest time it allows, modifiers included', () => {
    const assumed = basisOf([[20, 600]])
    expect(codesAt(assumed, 20)).toEqual([])
    const modifiers: Modifier[] = [{ name: 'other', factor: 1.5, origin: 'measured' }]
    const warmer = expectOk(developingTime(assumed, celsius(24), { modifiers })).warnings
    expect(warmer).toContainEqual({
      code: 'assumed-coefficient',
      value: 2.4,
      low: 1.6,
      high: 3.8,
      shortest: expect.closeTo(900 * 3.8 ** -0.4, 8),
      longest: expect.closeTo(900 * 1.6 ** -0.4, 8),
    })
    const colder = expectOk(developingTime(assumed, celsius(17))).warnings
    expect(colder).toContainEqual(
      expect.objectContaining({
        shortest: expect.closeTo(600 * 1.6 ** 0.3, 8),
        longest: expect.closeTo(600 * 3.8 ** 0.3, 8),
      }),
    )
    expect(codesAt(one, 24)).not.toContain('assumed-coefficient')
  })

  it('a colour developer: nothing at the ends of its window, a cast past them, the time never moved', () => {
    const fixed = basisOf([[38, 195]], { kind: 'fixed', window: { from: celsius(37.7), to: celsius(38.2) } })
    for (const t of [37.7, 38.2]) expect(codesAt(fixed, t)).toEqual([])
    for (const t of [37.6, 38.3]) expect(codesAt(fixed, t)).toEqual(['colour-cast-likely'])
    expect(expectOk(developingTime(fixed, celsius(12))).time).toBe(195)
    expect(developingTime(fixed, celsius(45.1)).ok).toBe(false)
  })
})
