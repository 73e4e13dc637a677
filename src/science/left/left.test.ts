import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { expectOk, millilitres } from '../../kernel/index.js'
import { type Fills, leastOf, rollsByVolume } from './index.js'

const bottle = (inBottle: number, changed: Partial<Fills> = {}): Fills => ({
  inBottle: millilitres(inBottle),
  fill: millilitres(500),
  rollsPerFill: 1,
  lost: millilitres(20),
  ...changed,
})

describe('what is left by several things', () => {
  it('the least decides and is named; what is not known does not', () => {
    expect(leastOf({ count: 9.2, silver: 4.9, tests: null })).toEqual({ amount: 4.9, decides: 'silver' })
  })
  it('of two alike the first is named', () => {
    expect(leastOf({ volume: 3, count: 3 })).toEqual({ amount: 3, decides: 'volume' })
  })
  it('less than none is none', () => {
    expect(leastOf({ count: -2, age: 4 })).toEqual({ amount: 0, decides: 'count' })
  })
  it('nothing known is nothing said', () => {
    expect(leastOf({ count: null })).toBeNull()
  })
})

describe('rolls by the volume of a bottle', () => {
  it('a litre fills half a litre twenty-six times when each takes 20 mL', () => {
    expect(expectOk(rollsByVolume(bottle(1000)))).toBe(26)
  })
  it('what is used once fills as often as it holds fills', () => {
    const once = { lost: millilitres(500), rollsPerFill: 2 }
    expect(expectOk(rollsByVolume(bottle(1000, once)))).toBe(4)
    expect(expectOk(rollsByVolume(bottle(999, once)))).toBe(2)
  })
  it('a tank that cannot be filled takes none', () => {
    expect(expectOk(rollsByVolume(bottle(499)))).toBe(0)
    expect(expectOk(rollsByVolume(bottle(500)))).toBe(1)
  })
  it('tenths of a millilitre do not lose a fill', () => {
    expect(expectOk(rollsByVolume(bottle(0.3, { fill: millilitres(0.1), lost: millilitres(0.1) })))).toBe(3)
  })
  it('losing nothing, or more than the fill, is refused', () => {
    for (const lost of [0, 501]) expect(rollsByVolume(bottle(1000, { lost: millilitres(lost) })).ok).toBe(false)
    expect(rollsByVolume({ ...bottle(1), inBottle: Number.NaN as never }).ok).toBe(false)
  })
  it('counts what pouring fill after fill does', () => {
    const whole = (low: number, high: number) => fc.integer({ min: low, max: high }).map(millilitres)
    fc.assert(
      fc.property(whole(0, 5000), whole(100, 1000), whole(1, 100), (inBottle, fill, lost) => {
        let [left, rolls] = [inBottle as number, 0]
        while (left >= fill) {
          left -= lost
          rolls++
        }
        expect(expectOk(rollsByVolume({ inBottle, fill, lost, rollsPerFill: 1 }))).toBe(rolls)
      }),
      { seed: 20_261, numRuns: 300 },
    )
  })
})
