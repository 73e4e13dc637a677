import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { expectOk, millilitres, SeededRandom, seconds } from '../../kernel/index.js'
import { clearingTrend, FIXING_FAMILY_NAMES, type FilmFixed, fixerLeft, rollsToSilver, silverAfter } from './index.js'

const seeded = (numRuns: number) => ({ seed: 20_261, numRuns })
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const film: fc.Arbitrary<FilmFixed[]> = fc.array(
  fc.record({ rolls: between(0, 20), family: fc.constantFrom(...FIXING_FAMILY_NAMES) }),
  { maxLength: 6 },
)
const litres = between(0.05, 20).map((volume) => millilitres(volume * 1000))
const kind = fc.constantFrom('sodium-thiosulfate' as const, 'ammonium-thiosulfate' as const)

describe('a fixer', () => {
  it('more film never leaves more, and the least is the least', () => {
    fc.assert(
      fc.property(film, film, litres, kind, between(1, 60), (before, more, volume, of, rollsPerLitre) => {
        const left = (fixed: FilmFixed[]) => expectOk(fixerLeft({ kind: of, volume, rollsPerLitre, fixed }))
        const [first, then] = [left(before), left([...before, ...more])]
        expect(then.rolls).toBeLessThanOrEqual(first.rolls + 1e-9)
        for (const amount of Object.values(then.by))
          if (amount !== null) expect(amount).toBeGreaterThanOrEqual(then.rolls)
        expect(then.by[then.decides]).toBe(then.rolls)
        expect(then.whole.tabular).toBeLessThanOrEqual(then.whole.ordinary)
      }),
      seeded(300),
    )
  })

  it('film for which it says there is room can be fixed, and leaves less than one roll', () => {
    fc.assert(
      fc.property(film, litres, kind, fc.constantFrom(...FIXING_FAMILY_NAMES), (fixed, volume, of, family) => {
        const left = (all: FilmFixed[]) => expectOk(fixerLeft({ kind: of, volume, rollsPerLitre: 20, fixed: all }))
        const rolls = left(fixed).whole[family]
        const after = left([...fixed, { rolls, family }])
        expect(after.whole[family]).toBe(0)
        if (rolls > 0) expect(after.taken).toBeLessThanOrEqual(after.carries + 1e-6)
      }),
      seeded(300),
    )
  })

  it('the rolls to a limit bring the bath to that limit', () => {
    fc.assert(
      fc.property(between(0.1, 4), between(0.5, 15), between(0.1, 1), (limit, gramsPerM2, share) => {
        const rolls = expectOk(rollsToSilver(limit, gramsPerM2, share))
        if (rolls > 10_000) return
        expect(expectOk(silverAfter(rolls, millilitres(1000), { gramsPerM2, share })).usual).toBeCloseTo(limit, 9)
      }),
      seeded(300),
    )
  })

  it('the end of a trend lies within its interval, and a time unit does not move it', () => {
    fc.assert(
      fc.property(
        between(10, 60),
        between(0.2, 3),
        fc.array(between(-2, 2), { minLength: 2, maxLength: 8 }),
        (fresh, growth, offs) => {
          const at = (scale: number) =>
            clearingTrend(
              seconds(fresh * scale),
              offs.map((off, i) => ({
                rolls: 3 * (i + 1),
                clearing: seconds((fresh + growth * 3 * (i + 1) + off) * scale),
              })),
            )
          const [one, two] = [at(1), at(2)]
          expect(one.ok).toBe(two.ok)
          if (!one.ok || !two.ok) return
          expect(two.value.endsAt).toBeCloseTo(one.value.endsAt, 6)
          const { low, high, endsAt } = one.value
          if (low !== null) expect(low).toBeLessThanOrEqual(endsAt + 1e-9)
          if (high !== null) expect(high).toBeGreaterThanOrEqual(endsAt - 1e-9)
        },
      ),
      seeded(300),
    )
  })
})

describe('the interval on the end of a bath', () => {
  it('holds the true end in 93 to 97 of 100 simulated series of tests', () => {
    const random = new SeededRandom(20_261)
    // Sum of twelve: a normal deviate good enough for a coverage of 95 %.
    const noise = () => Array.from({ length: 12 }, () => random.unit()).reduce((sum, value) => sum + value, -6)
    const series = 4000
    let held = 0
    for (let one = 0; one < series; one++) {
      const made = [0, 3, 6, 9, 12, 15].map((rolls) => ({ rolls, clearing: seconds(30 + 1.2 * rolls + noise()) }))
      const { low, high } = expectOk(clearingTrend(seconds(30), made))
      if (low !== null && low <= 25 && (high === null || high >= 25)) held++
    }
    expect(held / series).toBeGreaterThan(0.93)
    expect(held / series).toBeLessThan(0.97)
  })
})
