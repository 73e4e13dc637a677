import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { expectOk, millilitres } from '../../kernel/index.js'
import {
  afterRolls,
  ageOf,
  CARRIED_ALKALI,
  FILL_STATES,
  KEEPING,
  neutralisedAt,
  plateau,
  type Replenished,
  rollsToPlateau,
  stopCapacity,
} from './index.js'

const seeded = (numRuns: number) => ({ seed: 20_261, numRuns })
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const replenished: fc.Arbitrary<Replenished> = fc
  .record({
    volume: between(100, 20_000),
    part: between(0.005, 0.9),
    perRoll: between(0, 1),
    replenisher: between(0, 50),
    start: between(0, 50),
  })
  .map(({ volume, part, ...rest }) => ({ ...rest, volume: millilitres(volume), rate: millilitres(volume * part) }))

describe('a replenished bath', () => {
  it('comes roll by roll to what the closed form says at once', () => {
    fc.assert(
      fc.property(replenished, fc.integer({ min: 0, max: 200 }), (bath, rolls) => {
        // The second way: grams in the bath, film by film and jug by jug.
        let held = (bath.start * bath.volume) / 1000
        for (let roll = 0; roll < rolls; roll++) {
          held += bath.perRoll
          held -= (held * bath.rate) / bath.volume
          held += (bath.replenisher * bath.rate) / 1000
        }
        expect(expectOk(afterRolls(bath, rolls))).toBeCloseTo((held * 1000) / bath.volume, 8)
      }),
      seeded(300),
    )
  })

  it('never moves away from where it settles, and is there within the rolls it says', () => {
    fc.assert(
      fc.property(replenished, between(0.001, 0.9), (bath, part) => {
        const end = expectOk(plateau(bath)).afterTopping
        const away = (rolls: number) => Math.abs(expectOk(afterRolls(bath, rolls)) - end)
        expect(away(7)).toBeLessThanOrEqual(away(6) + 1e-9)
        const rolls = Math.ceil(expectOk(rollsToPlateau(bath, part)))
        expect(away(rolls)).toBeLessThanOrEqual(part * away(0) + 1e-9)
      }),
      seeded(300),
    )
  })
})

describe('age', () => {
  const stretch = fc.record({ state: fc.constantFrom(...FILL_STATES), days: between(0, 60) })
  const { days } = KEEPING.fixer

  it('adds up over any cut of a stretch, and only grows', () => {
    fc.assert(
      fc.property(fc.array(stretch, { minLength: 1, maxLength: 10 }), between(0, 1), (stretches, part) => {
        const cut = stretches.flatMap(({ state, days }) => [
          { state, days: days * part },
          { state, days: days * (1 - part) },
        ])
        const [whole, parts] = [expectOk(ageOf(stretches, days)), expectOk(ageOf(cut, days))]
        expect(parts.used).toBeCloseTo(whole.used, 9)
        expect(parts.daysLeft).toBeCloseTo(whole.daysLeft, 6)
        expect(expectOk(ageOf([...stretches, { state: 'full', days: 1 }], days)).used).toBeGreaterThan(whole.used)
      }),
      seeded(300),
    )
  })

  it('the days left are just the days that end it', () => {
    fc.assert(
      fc.property(stretch, (one) => {
        const age = expectOk(ageOf([one], days))
        if (age.daysLeft < 0.01) return
        const verdict = (more: number) => expectOk(ageOf([one, { ...one, days: more }], days)).verdict
        expect([verdict(age.daysLeft * 0.999), verdict(age.daysLeft)]).toEqual(['keeps', 'past'])
      }),
      seeded(300),
    )
  })
})

describe('a stop bath', () => {
  it('takes more with a higher pH, twice as much with twice the acid, and half the rolls at twice the alkali', () => {
    fc.assert(
      fc.property(between(0, 13), between(0.01, 1), between(0.01, 2), (pH, molarity, alkali) => {
        expect(expectOk(neutralisedAt(pH + 0.5))).toBeGreaterThanOrEqual(expectOk(neutralisedAt(pH)))
        const rolls = (acid: number, base: number) =>
          expectOk(
            stopCapacity({
              volume: millilitres(1000),
              molarity: acid,
              carried: { ...CARRIED_ALKALI, alkali: base },
            }),
          ).byAcid
        expect(rolls(2 * molarity, alkali) / rolls(molarity, alkali)).toBeCloseTo(2, 9)
        expect(rolls(molarity, alkali) / rolls(molarity, 2 * alkali)).toBeCloseTo(2, 9)
      }),
      seeded(300),
    )
  })

  it('the part of acetic acid is what Henderson and Hasselbalch say', () => {
    fc.assert(
      fc.property(between(0, 14), (pH) => {
        expect(expectOk(neutralisedAt(pH))).toBeCloseTo(1 / (1 + 10 ** (4.756 - pH)), 12)
      }),
      seeded(300),
    )
  })
})
