import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { expectOk, millilitres, type Result } from '../../kernel/index.js'
import { silverOfARoll } from '../fixing/index.js'
import { foldsToLimit, type JugPour, SILVER_RULE, silverHeld } from './index.js'

const fixer = (rolls: number, volume = 1000): JugPour => ({
  volume: millilitres(volume),
  silver: { by: 'rolls', rolls },
})
const read = (gramsPerLitre: number, volume = 1000, offBy = 0): JugPour => ({
  volume: millilitres(volume),
  silver: { by: 'reading', gramsPerLitre, offBy },
})
const water = (volume: number): JugPour => ({ volume: millilitres(volume), silver: { by: 'none' } })
const field = (result: Result<unknown>) => (result.ok ? 'answered' : [result.problem.code, result.problem.field])

describe('silver in a jug', () => {
  it('rolls bring the band of negative film', () => {
    const { grams, origin } = expectOk(silverHeld([fixer(10)]))
    expect(grams.low).toBeCloseTo(10 * expectOk(silverOfARoll(3, 0.5)), 9)
    expect(grams.usual).toBeCloseTo(10 * expectOk(silverOfARoll(5, 0.6)), 9)
    expect(grams.high).toBeCloseTo(10 * expectOk(silverOfARoll(8, 0.8)), 9)
    expect(origin).toBe('assumption')
  })
  it('one’s own film has no band', () => {
    const film = { gramsPerM2: 5, share: 0.6 }
    const pour: JugPour = { volume: millilitres(1000), silver: { by: 'rolls', rolls: 20, film } }
    const { gramsPerLitre, origin } = expectOk(silverHeld([pour]))
    expect(gramsPerLitre.low).toBe(gramsPerLitre.high)
    expect(origin).toBe('measured')
  })
  it('a reading brings what it may be off, and never less than nothing', () => {
    expect(expectOk(silverHeld([read(2, 500, 0.5)])).grams).toEqual({ low: 0.75, usual: 1, high: 1.25 })
    expect(expectOk(silverHeld([read(0.2, 1000, 0.5)])).grams.low).toBe(0)
  })
  it('pours add up', () => {
    const held = expectOk(silverHeld([read(3), read(1, 2000), water(1000)]))
    expect(held).toMatchObject({ volume: 4000, silverRich: 3000 })
    expect(held.grams.usual).toBeCloseTo(5, 12)
    expect(held.gramsPerLitre.usual).toBeCloseTo(1.25, 12)
    expect(held.undiluted.usual).toBeCloseTo(5000 / 3, 9)
  })
  it('at the limit is above it; a band on both sides is in doubt', () => {
    const says = (pour: JugPour) => expectOk(silverHeld([pour])).rule.says
    const limit = SILVER_RULE.milligramsPerLitre / 1000
    expect(says(read(limit))).toBe('above')
    expect(says(read(limit - 1e-5))).toBe('below')
    expect(says(read(limit, 1000, 0.001))).toBe('in-doubt')
  })
  it('one’s own limit stands beside the rule, stricter or not', () => {
    const held = expectOk(silverHeld([read(0.002)], 1.2))
    expect(held.rule.says).toBe('below')
    expect(held.own).toEqual({ limit: 1.2, says: 'above' })
    expect(expectOk(silverHeld([read(0.002)])).own).toBe(null)
  })
  it('a jug of water alone holds none', () => {
    expect(expectOk(silverHeld([water(500)]))).toMatchObject({ silverRich: 0, rule: { says: 'below' } })
  })
  it('refuses what no pour can be', () => {
    expect(field(silverHeld([]))).toEqual(['waste.bad-value', 'pours'])
    expect(field(silverHeld([fixer(-1)]))).toEqual(['waste.bad-value', 'rolls'])
    expect(field(silverHeld([read(51)]))).toEqual(['waste.bad-value', 'gramsPerLitre'])
    expect(field(silverHeld([fixer(1, 0)]))).toEqual(['waste.bad-value', 'volume'])
    expect(field(silverHeld([fixer(1)], Number.NaN))).toEqual(['waste.bad-value', 'limit'])
    expect(field(foldsToLimit(3, 0))).toEqual(['waste.bad-value', 'limit'])
  })
})

const seeded = { seed: 20_261, numRuns: 300 }
const pours = fc.array(
  fc.record({
    volume: fc.double({ min: 1, max: 20_000, noNaN: true }).map(millilitres),
    silver: fc.oneof(
      fc.record({ by: fc.constant('rolls' as const), rolls: fc.integer({ min: 0, max: 40 }) }),
      fc.record({
        by: fc.constant('reading' as const),
        gramsPerLitre: fc.double({ min: 0, max: 10, noNaN: true }),
        offBy: fc.double({ min: 0, max: 2, noNaN: true }),
      }),
    ),
  }),
  { minLength: 1, maxLength: 12 },
)

describe('dilution is not disposal', () => {
  it('water poured in thins the jug, and changes neither grams nor any verdict', () => {
    fc.assert(
      fc.property(pours, fc.double({ min: 1, max: 100_000, noNaN: true }), (list, added) => {
        const [before, after] = [expectOk(silverHeld(list, 1.2)), expectOk(silverHeld([...list, water(added)], 1.2))]
        expect(after.grams).toEqual(before.grams)
        expect(after.undiluted).toEqual(before.undiluted)
        expect([after.rule, after.own]).toEqual([before.rule, before.own])
        // A strength of some 1e-323 g/L is the smallest number there is, and nothing thins that.
        if (before.gramsPerLitre.usual > 1e-300)
          expect(after.gramsPerLitre.usual).toBeLessThan(before.gramsPerLitre.usual)
      }),
      seeded,
    )
  })
  it('a pour in two parts holds what it holds in one, and low, usual, high stay in order', () => {
    fc.assert(
      fc.property(pours, fc.double({ min: 0.1, max: 0.9, noNaN: true }), (list, part) => {
        const readings = list.filter(({ silver, volume }) => silver.by === 'reading' && volume > 10)
        fc.pre(readings.length > 0)
        const split = readings.flatMap(({ volume, silver }) => [
          { volume: millilitres(volume * part), silver },
          { volume: millilitres(volume * (1 - part)), silver },
        ])
        const [whole, parts] = [expectOk(silverHeld(readings)).grams, expectOk(silverHeld(split)).grams]
        for (const name of ['low', 'usual', 'high'] as const) expect(parts[name]).toBeCloseTo(whole[name], 8)
        expect(whole.low).toBeLessThanOrEqual(whole.usual)
        expect(whole.usual).toBeLessThanOrEqual(whole.high)
      }),
      seeded,
    )
  })
})
