import { describe, expect, it } from 'vitest'
import { type Celsius, celsius, expectOk, seconds } from '../../kernel/index.js'
import { defineBasis } from '../development/index.js'
import {
  boilingPoint,
  type CheckMethod,
  checkIsPossible,
  classSet,
  correctionOf,
  effectOfUncorrectedError,
  type ThermometerCheck,
} from './index.js'

const check = (read: number, truth: number, method: CheckMethod = 'comparison'): ThermometerCheck => ({
  read: read as Celsius,
  true: truth as Celsius,
  method,
})
const corrected = (checks: ThermometerCheck[], read: number) => expectOk(correctionOf(checks)).at(celsius(read))
const near = (value: number) => expect.closeTo(value, 10)

describe('correction', () => {
  it('without a check changes nothing and gives half a degree', () => {
    expect(corrected([], 20)).toEqual({ read: 20, true: 20, correction: 0, band: 0.5, basis: 'unchecked' })
  })

  it('one check: the same offset everywhere, the band wider away from it', () => {
    expect(corrected([check(20.4, 20)], 20.4)).toEqual({
      read: 20.4,
      true: near(20),
      correction: near(-0.4),
      band: near(0.2),
      basis: 'one-check',
    })
    expect(corrected([check(20.4, 20)], 30.4)).toMatchObject({ true: near(30), band: near(0.4), basis: 'one-check' })
  })

  it('two checks: straight between, held beyond with a wider band', () => {
    const checks = [check(38.6, 38), check(20.2, 20, 'entered')]
    expect(corrected(checks, 29.4)).toEqual({
      read: 29.4,
      true: near(29),
      correction: near(-0.4),
      band: near(0.3 + 0.092),
      basis: 'between',
    })
    expect(corrected(checks, 20.2)).toMatchObject({ correction: near(-0.2), band: near(0.3), basis: 'between' })
    expect(corrected(checks, 38.6)).toMatchObject({ correction: near(-0.6), basis: 'between' })
    expect(corrected(checks, 43.6)).toMatchObject({ correction: near(-0.6), band: near(0.3), basis: 'beyond' })
    expect(corrected(checks, 10.2)).toMatchObject({ correction: near(-0.2), band: near(0.5), basis: 'beyond' })
  })

  it('checks at one reading count once, by their mean', () => {
    expect(corrected([check(20, 19.6), check(20.05, 19.75)], 20)).toMatchObject({
      correction: near(-0.35),
      basis: 'one-check',
    })
    expect(corrected([check(20, 19.6), check(20.06, 19.9)], 20).basis).toBe('between')
  })

  it.each(['ice', 'boiling'] as const)('%s alone speaks for its own mark and says nothing near 20 °C', (method) => {
    const mark = method === 'ice' ? 0 : 100
    const correction = expectOk(correctionOf([check(mark + 0.5, mark, method)]))
    const inwards = method === 'ice' ? 1 : -1
    expect(correction.saysNothingNear).toBe(20)
    expect(correction.at(celsius(20))).toMatchObject({ true: 20, correction: 0, basis: 'unchecked' })
    expect(correction.at(celsius(mark + 0.5 + 5 * inwards))).toMatchObject({
      correction: near(-0.5),
      basis: 'one-check',
    })
    expect(correction.at(celsius(mark + 0.5 + 5.01 * inwards)).basis).toBe('unchecked')
  })

  it('ice and boiling together, or a comparison, say something near 20 °C', () => {
    const both = expectOk(correctionOf([check(0.2, 0, 'ice'), check(100.2, 100, 'boiling')]))
    expect(both.saysNothingNear).toBeNull()
    expect(both.at(celsius(20))).toMatchObject({ correction: near(-0.2), basis: 'between' })
    expect(expectOk(correctionOf([check(20, 20)])).saysNothingNear).toBeNull()
  })

  it('accepts five degrees of error and no more', () => {
    expect(correctionOf([check(25, 20)]).ok).toBe(true)
    expect(correctionOf([check(15, 20)]).ok).toBe(true)
    for (const read of [25.01, 14.99])
      expect(correctionOf([check(20, 20), check(read, 20)])).toMatchObject({
        problem: { code: 'thermometer.error-too-large', field: 'checks[1]' },
      })
  })

  it('refuses checks by which the truth falls while the reading rises', () => {
    const refused = correctionOf([check(21, 19), check(20, 20)])
    expect(refused).toMatchObject({ problem: { code: 'thermometer.checks-contradict' } })
    expect(!refused.ok && refused.problem.sentence).toContain(
      'Reading 20\u202f°C was a true 20\u202f°C, but the higher reading 21\u202f°C was a true 19\u202f°C',
    )
    expect(correctionOf([check(20, 20), check(21, 20)]).ok).toBe(false)
  })

  it('refuses what is no temperature', () => {
    for (const wrong of [check(Number.NaN, 20), check(20, Number.NaN), check(201, 200), check(-91, -90)])
      expect(correctionOf([wrong])).toMatchObject({ problem: { code: 'quantity.out-of-range' } })
  })
})

describe('which checks a scale allows', () => {
  const refused = (method: CheckMethod, low: number, high: number) => {
    const result = checkIsPossible(method, low, high)
    return result.ok ? null : result.problem.code
  }
  it('ice down to 0, boiling past 100', () => {
    expect(refused('ice', 0, 50)).toBeNull()
    expect(refused('ice', 0.5, 50)).toBe('thermometer.method-out-of-scale')
    expect(refused('boiling', 0, 100.5)).toBeNull()
    expect(refused('boiling', 0, 100)).toBe('thermometer.method-out-of-scale')
    expect(refused('comparison', 15, 50)).toBeNull()
  })
  it('refuses a scale that cannot be', () => {
    for (const [low, high] of [
      [50, 0],
      [20, 24.9],
      [-51, 50],
      [0, 201],
      [Number.NaN, 50],
    ] as const)
      expect(refused('comparison', low, high)).toBe('thermometer.bad-scale')
    expect(refused('comparison', 20, 25)).toBeNull()
    expect(refused('comparison', -50, 200)).toBeNull()
  })
  it('warns that a short spirit scale bursts, and what a fixed point does not tell', () => {
    const warnings = (method: CheckMethod, low: number, high: number) =>
      expectOk(checkIsPossible(method, low, high)).warnings
    expect(warnings('comparison', 0, 50)).toEqual([{ code: 'bursts-above-scale', above: 50 }])
    expect(warnings('comparison', 0, 60)).toEqual([])
    expect(warnings('boiling', 0, 110)).toEqual([{ code: 'says-nothing-near', temperature: 20 }])
    expect(warnings('ice', -10, 110)).toEqual([{ code: 'says-nothing-near', temperature: 20 }])
  })
})

describe('boiling water', () => {
  it('at sea level and up a mountain', () => {
    expect(expectOk(boilingPoint({ altitude_m: 0 }))).toBeCloseTo(99.974, 3)
    expect(expectOk(boilingPoint({ altitude_m: 1500 }))).toBeCloseTo(94.99, 1)
  })
  it('is refused outside its limits only', () => {
    for (const place of [{ altitude_m: -500 }, { altitude_m: 9000 }, { pressure_hPa: 300 }, { pressure_hPa: 1100 }])
      expect(boilingPoint(place).ok).toBe(true)
    for (const place of [{ altitude_m: -501 }, { altitude_m: 9001 }, { altitude_m: Number.NaN }])
      expect(boilingPoint(place)).toMatchObject({ problem: { code: 'quantity.out-of-range', field: 'altitude_m' } })
    for (const place of [{ pressure_hPa: 299 }, { pressure_hPa: 1101 }])
      expect(boilingPoint(place)).toMatchObject({ problem: { code: 'quantity.out-of-range', field: 'pressure_hPa' } })
  })
})

describe('class set', () => {
  const set = (...reads: number[]) => reads.map((read, index) => ({ name: `no. ${index + 1}`, read: read as Celsius }))
  it('against a reference: high is positive, the correction takes it back', () => {
    const result = expectOk(classSet(set(20.5, 20, 19.2), 1))
    expect(result).toMatchObject({ against: 'reference', temperature: 20, spread: near(1.3), mean: near(59.7 / 3) })
    expect(result.members.map(({ offset }) => offset)).toEqual([near(0.5), near(0), near(-0.8)])
    expect(result.members.map(({ correction }) => correction)).toEqual([near(-0.5), near(0), near(0.8)])
    expect(result.standardDeviation).toBeCloseTo(Math.sqrt((0.6 ** 2 + 0.1 ** 2 + 0.7 ** 2) / 2), 10)
  })
  it('against the median without one', () => {
    expect(expectOk(classSet(set(26.6, 24, 25), null))).toMatchObject({ against: 'median', temperature: 25 })
    expect(expectOk(classSet(set(26, 24, 25, 24.5), null)).temperature).toBe(24.75)
    expect(expectOk(classSet(set(20, 21), null)).temperature).toBe(20.5)
  })
  it('is refused when it is no set', () => {
    expect(classSet(set(20), null)).toMatchObject({ problem: { code: 'thermometer.class-set-too-small' } })
    const twice = [...set(20, 21), { name: 'no. 1', read: celsius(20) }]
    expect(classSet(twice, null)).toMatchObject({ problem: { code: 'thermometer.same-twice', field: 'readings[2]' } })
    expect(classSet(set(20, 21), 2)).toMatchObject({
      problem: { code: 'quantity.out-of-range', field: 'referenceIndex' },
    })
    expect(classSet(set(20, 25.1), 0)).toMatchObject({
      problem: { code: 'thermometer.error-too-large', field: 'readings[1]' },
    })
  })
})

describe('what an uncorrected error does', () => {
  const basis = expectOk(
    defineBasis({ kind: 'ordinary', coefficient: 2.5, points: [{ temperature: celsius(20), time: seconds(600) }] }),
  )
  it('reading high leaves the time short', () => {
    const effect = expectOk(effectOfUncorrectedError(basis, celsius(20), celsius(18)))
    const needed = 600 * 2.5 ** 0.2
    expect(effect).toEqual({
      byReading: 600,
      byTruth: near(needed),
      missing: near(needed - 600),
      missingPart: near(needed / 600 - 1),
    })
    expect(expectOk(effectOfUncorrectedError(basis, celsius(20), celsius(21))).missing).toBeLessThan(0)
  })
  it('is refused where either has no time', () => {
    expect(effectOfUncorrectedError(basis, celsius(40), celsius(20)).ok).toBe(false)
    expect(effectOfUncorrectedError(basis, celsius(20), celsius(5)).ok).toBe(false)
  })
})
