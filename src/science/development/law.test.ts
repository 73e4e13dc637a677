import { describe, expect, it } from 'vitest'
import { celsius, expectOk, seconds } from '../../kernel/index.js'
import { coefficientFromEnergy, coefficientOverTen, defineBasis, energyFromCoefficient, fitLaw } from './index.js'

const points = [
  { temperature: celsius(15), time: seconds(1000) },
  { temperature: celsius(25), time: seconds(400) },
]

describe('laws', () => {
  it('K over the ten degrees from 15 to 25 °C is 2.5 by both, with one energy', () => {
    const exponential = fitLaw(points, 'exponential')
    const arrhenius = fitLaw(points, 'arrhenius')
    const energy = expectOk(energyFromCoefficient(2.5))
    expect(energy).toBeCloseTo(65.45, 2)
    for (const fit of [exponential, arrhenius]) {
      expect(fit.coefficient).toBeCloseTo(2.5, 10)
      expect(fit.activationEnergy).toBeCloseTo(energy, 8)
      expect(fit.slopeStandardError).toBeNull()
      expect(fit.worst.misfit).toBeCloseTo(0, 12)
    }
    expect(exponential.slope).toBeCloseTo(-Math.log(2.5) / 10, 12)
    expect(arrhenius.slope).toBeCloseTo(energy / 8.314462618e-3, 6)
    expect(arrhenius.timeAt(celsius(35))).toBeGreaterThan(exponential.timeAt(celsius(35)))
  })

  it('the misfit is fit ÷ sheet − 1, the worst one pointed at', () => {
    const bent = [...points, { temperature: celsius(20), time: seconds(500) }]
    const fit = fitLaw(bent, 'exponential')
    expect(fit.misfits[2]).toBeCloseTo(fit.timeAt(celsius(20)) / 500 - 1, 12)
    expect(fit.misfits[2]).toBeGreaterThan(0)
    expect(fit.worst).toEqual({ index: 2, misfit: fit.misfits[2] })
    expect(fit.slopeStandardError).toBeGreaterThan(0)
  })

  it('of a basis with one point is the line of its coefficient through it', () => {
    const basis = expectOk(
      defineBasis({ kind: 'ordinary', coefficient: 3, points: [{ temperature: celsius(20), time: seconds(600) }] }),
    )
    const fit = fitLaw(basis, 'exponential')
    expect(fit.timeAt(celsius(30))).toBeCloseTo(200, 9)
    expect(fit.coefficient).toBeCloseTo(3, 12)
    expect(fit.slopeStandardError).toBeNull()
  })

  it('throws on fewer than two bare points', () => {
    expect(() => fitLaw(points.slice(1), 'exponential')).toThrow(RangeError)
  })
})

describe('conversions', () => {
  it('energy and coefficient are each other’s inverse', () => {
    for (const coefficient of [1, 1.25, 2.4, 6]) {
      const energy = expectOk(energyFromCoefficient(coefficient))
      expect(expectOk(coefficientFromEnergy(energy))).toBeCloseTo(coefficient, 10)
    }
  })
  it('a coefficient over seven degrees becomes one over ten', () => {
    expect(expectOk(coefficientOverTen(2, 10))).toBe(2)
    expect(expectOk(coefficientOverTen(2, 5))).toBeCloseTo(4, 12)
    expect(expectOk(coefficientOverTen(2, 1))).toBeCloseTo(1024, 8)
    expect(coefficientOverTen(2, 40).ok).toBe(true)
  })
  it.each([0, -1, 1000.1, Number.NaN])('refuses a coefficient of %d', (value) => {
    expect(energyFromCoefficient(value)).toMatchObject({ problem: { code: 'times.bad-coefficient' } })
    expect(coefficientOverTen(value, 7)).toMatchObject({ problem: { code: 'times.bad-coefficient' } })
  })
  it.each([-1, 601, Number.NaN])('refuses an energy of %d kJ/mol', (value) => {
    expect(coefficientFromEnergy(value)).toMatchObject({ problem: { code: 'quantity.out-of-range' } })
  })
  it.each([0.9, 41, Number.NaN])('refuses a span of %d °C', (value) => {
    expect(coefficientOverTen(2, value)).toMatchObject({ problem: { code: 'quantity.out-of-range' } })
  })
  it('accepts the ends', () => {
    expect(expectOk(coefficientFromEnergy(0))).toBe(1)
    expect(coefficientFromEnergy(600).ok).toBe(true)
    expect(energyFromCoefficient(1000).ok).toBe(true)
  })
})
