import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { expectOk, type Grams, grams, type Millilitres, millilitres, type Result } from '../../kernel/index.js'
import {
  ACETIC_DENSITIES,
  aceticAcid,
  blendOf,
  COMMON_MEASURES,
  crissCross,
  dilutedAcetic,
  dropsFor,
  dryFor,
  leastMeasurable,
  measuresFor,
  solutionHolding,
  WATER_20,
  weighedFor,
  weightInVolume,
  weightPercent,
} from './index.js'

const mL = millilitres
const near = (value: number) => expect.closeTo(value, 9)
const runs = { seed: 20_261, numRuns: 300 }
const percent = fc.double({ min: 0, max: 100, noNaN: true })
const refusal = <T>(result: Result<T>) => (result.ok ? null : [result.problem.code, result.problem.field])

describe('a blend of two strengths', () => {
  it('holds what both bring', () => {
    fc.assert(
      fc.property(percent, percent, fc.double({ min: 0, max: 1, noNaN: true }), (one, other, between) => {
        const [strong, weak] = [Math.max(one, other), Math.min(one, other)]
        fc.pre(strong - weak > 0.1)
        const wanted = weak + between * (strong - weak)
        const blend = expectOk(blendOf(strong, weak, wanted, mL(1000)))
        expect(blend.strong + blend.weak).toBeCloseTo(1000, 8)
        expect((blend.strong * strong + blend.weak * weak) / 1000).toBeCloseTo(wanted, 8)
      }),
      runs,
    )
  })

  it('is so many parts of the one as the wanted is from the other', () => {
    expect(expectOk(crissCross(60, 20, 30))).toEqual({ strong: 10, weak: 30 })
    expect(expectOk(crissCross(60, 20, 60))).toEqual({ strong: 40, weak: 0 })
  })

  it('cannot be outside the two, nor of two alike', () => {
    expect(refusal(crissCross(5, 0, 6))).toEqual(['dilution.out-of-reach', 'wanted'])
    expect(refusal(crissCross(28, 5, 4.9))).toEqual(['dilution.out-of-reach', 'wanted'])
    expect(refusal(crissCross(5, 5, 5))?.[0]).toBe('dilution.strong-is-weak')
    expect(refusal(crissCross(101, 5, 6))).toEqual(['dilution.bad-value', 'strong'])
    expect(refusal(blendOf(28, 0, 2, 0 as Millilitres))).toEqual(['dilution.bad-value', 'total'])
  })
})

describe('percent', () => {
  it('weight in volume: dissolved and measured out again', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 100, noNaN: true }),
        fc.double({ min: 1, max: 900, noNaN: true }),
        (p, v) => {
          const dry = expectOk(dryFor(p, mL(v)))
          expect(expectOk(solutionHolding(dry, p))).toBeCloseTo(v, 6)
        },
      ),
      runs,
    )
  })

  it('weight in weight: the parts weigh what the volume weighs', () => {
    const { dissolved, water } = expectOk(weighedFor(20, 1.1, mL(200)))
    expect([dissolved, water]).toEqual([near(44), near(176)])
    expect(expectOk(weightInVolume(20, 1.1))).toBeCloseTo(22, 10)
  })

  it('by weight of volumes: as by volume when both weigh the same, more when the acid is heavier', () => {
    const by = (density: number) =>
      expectOk(weightPercent({ volumes: 1, percent: 80, density }, { volumes: 3, density: 1 }))
    expect(by(1)).toEqual({ percent: near(20), byVolume: near(20) })
    expect(by(1.5)).toEqual({ percent: near((1.5 * 80) / 4.5), byVolume: near(20) })
  })

  it('is refused out of its ranges', () => {
    expect(refusal(dryFor(-1, mL(100)))?.[1]).toBe('percent')
    expect(refusal(solutionHolding(grams(1), 0))?.[1]).toBe('percent')
    expect(refusal(solutionHolding(-1 as Grams, 10))?.[1]).toBe('amount')
    expect(refusal(weighedFor(10, 0.4, mL(100)))?.[1]).toBe('density')
    expect(weightPercent({ volumes: 1, percent: 10, density: 3 }, { volumes: 1, density: 1 }).ok).toBe(false)
    expect(solutionHolding(grams(10_000), 0.01).ok).toBe(false)
  })
})

describe('acetic acid by weight', () => {
  it('has the density of its table at every row, and between two rows between them', () => {
    for (const [at, density] of ACETIC_DENSITIES) expect(expectOk(aceticAcid(at)).density).toBeCloseTo(density, 10)
    expect(expectOk(aceticAcid(0)).density).toBe(WATER_20)
    const halfway = expectOk(aceticAcid(45))
    expect(halfway.density).toBeCloseTo((1.0474 + 1.0562) / 2, 10)
    expect(halfway.gramsPerLitre).toBeCloseTo(450 * halfway.density, 8)
    expect(halfway.molarity * 60.052).toBeCloseTo(halfway.gramsPerLitre, 8)
  })

  it('keeps the acid when it is thinned', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 100, noNaN: true }),
        fc.double({ min: 0.01, max: 1, noNaN: true }),
        (from, part) => {
          const to = from * part
          const { acid, acidVolume, water } = expectOk(dilutedAcetic(from, to, mL(1000)))
          expect((acid * from) / 100).toBeCloseTo(expectOk(aceticAcid(to)).gramsPerLitre, 6)
          expect(acid + water).toBeCloseTo(1000 * expectOk(aceticAcid(to)).density, 6)
          expect(acidVolume * expectOk(aceticAcid(from)).density).toBeCloseTo(acid, 6)
        },
      ),
      runs,
    )
  })

  it('is not made stronger, and has no strength past all of it', () => {
    expect(refusal(dilutedAcetic(5, 6, mL(1000)))?.[1]).toBe('from')
    const [at, last] = [5.0000000000000036, 7.489866312140209]
    expect(expectOk(dilutedAcetic(at, at, mL(last))).water).toBe(0)
    expect(refusal(aceticAcid(100.1))?.[1]).toBe('percent')
    expect(refusal(aceticAcid(Number.NaN))?.[1]).toBe('percent')
  })
})

describe('measuring', () => {
  const graduate = { name: 'a graduate', kind: 'graduate' as const, holds: mL(100), marks: mL(2) }
  const syringe = { name: 'a syringe', kind: 'syringe' as const, holds: mL(10), marks: mL(0.5) }

  it('the error is half a mark for each fill, the best first', () => {
    expect(expectOk(measuresFor(mL(10), [graduate, syringe]))).toEqual([
      { measure: syringe, fills: 1, error: near(0.025), tooCoarse: false },
      { measure: graduate, fills: 1, error: near(0.1), tooCoarse: true },
    ])
    const [first] = expectOk(measuresFor(mL(200), [syringe, graduate]))
    expect(first).toEqual({ measure: graduate, fills: 2, error: near(0.01), tooCoarse: false })
  })

  it('ten marks are the least that is told to five in a hundred', () => {
    expect(leastMeasurable(graduate)).toBeCloseTo(20, 10)
    expect(expectOk(measuresFor(mL(20), [graduate]))[0]?.tooCoarse).toBe(false)
    expect(expectOk(measuresFor(mL(19.9), [graduate]))[0]?.tooCoarse).toBe(true)
  })

  it('what lies about tells every volume of one millilitre and more', () => {
    for (const volume of [1, 3, 9.6, 40, 130, 600, 5000])
      expect(expectOk(measuresFor(mL(volume)))[0]?.tooCoarse).toBe(false)
    expect(new Set(COMMON_MEASURES.map(({ kind }) => kind))).toEqual(new Set(['graduate', 'syringe']))
  })

  it('drops are whole, and say what they are', () => {
    expect(expectOk(dropsFor(mL(2.5)))).toEqual({ drops: 50, volume: near(2.5) })
    expect(expectOk(dropsFor(mL(0.01)))).toEqual({ drops: 1, volume: near(0.05) })
    expect(expectOk(dropsFor(mL(1), 33))).toEqual({ drops: 33, volume: near(1) })
  })

  it('is refused out of its ranges', () => {
    expect(refusal(measuresFor(0 as Millilitres))?.[1]).toBe('volume')
    expect(refusal(measuresFor(mL(1), [{ ...graduate, marks: mL(0) }]))?.[1]).toBe('measures[0]')
    expect(refusal(dropsFor(mL(51)))?.[1]).toBe('volume')
    expect(refusal(dropsFor(mL(1), 4))?.[1]).toBe('drops')
  })
})
