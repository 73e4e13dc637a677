import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { expectOk, millilitres } from '../../kernel/index.js'
import { coverOf, fitsTank, type KitTank, type Load, loadOf, tanksFor } from './tank-fits.js'

const row = (format: Load['format'], count: number, ml: number) => ({ format, count, covers: millilitres(ml) })
const SMALL: KitTank = { name: 'Small steel', holds: [row('135', 1, 250)] }
const PAIR: KitTank = { name: 'Two-reel', holds: [row('135', 1, 290), row('135', 2, 580), row('120', 1, 500)] }
const TALL: KitTank = { name: 'Tall', holds: [row('135', 8, 1900), row('120', 4, 1950), row('4x5', 6, 1000)] }
const SHELF = [TALL, PAIR, SMALL]
const reels = (format: Load['format'], count: number): Load => ({ format, count })

describe('what goes into a tank', () => {
  it('counts two films on one reel as one reel, and sheets one by one', () => {
    const films = [
      { format: '120' as const, sheets: 1, reel: 1 },
      { format: '120' as const, sheets: 1, reel: 1 },
      { format: '135' as const, sheets: 1, reel: 2 },
      { format: '4x5' as const, sheets: 4, reel: 3 },
      { format: '4x5' as const, sheets: 2, reel: 3 },
    ]
    expect(loadOf(films)).toEqual([reels('120', 1), reels('135', 1), reels('4x5', 6)])
  })

  it('is covered by what the tank says of the next larger number', () => {
    expect(coverOf(PAIR, [reels('135', 1)])).toBe(290)
    expect(coverOf(PAIR, [reels('135', 2)])).toBe(580)
    expect(coverOf(TALL, [reels('135', 3)])).toBe(1900)
    expect(coverOf(PAIR, [reels('135', 3)])).toBeNull()
    expect(coverOf(PAIR, [reels('127', 1)])).toBeNull()
  })

  it('shares the height between formats', () => {
    expect(coverOf(TALL, [reels('135', 4), reels('120', 2)])).toBe(1900 + 1950)
    expect(coverOf(TALL, [reels('135', 5), reels('120', 2)])).toBeNull()
    expect(coverOf(PAIR, [reels('135', 1), reels('120', 1)])).toBeNull()
  })

  it('says which tank would do, the one that takes least', () => {
    expect(tanksFor(SHELF, [reels('135', 1)]).map(({ name }) => name)).toEqual(['Small steel', 'Two-reel', 'Tall'])
    expect(fitsTank(SMALL, [reels('135', 2)], null, SHELF)).toMatchObject({
      problem: {
        sentence: 'Small steel does not hold 2 reels of 135: Two-reel would, with 580 mL.',
      },
    })
    expect(fitsTank(PAIR, [reels('135', 2), reels('120', 3)], null, SHELF)).toMatchObject({
      problem: { details: { load: '2 reels of 135 and 3 reels of 120', others: 'Tall would, with 3850 mL' } },
    })
    expect(fitsTank(TALL, [reels('4x5', 7)], null, SHELF)).toMatchObject({
      problem: {
        sentence: 'Tall does not hold 7 sheets of 4×5: no other tank of the shelf does, so take fewer at once.',
      },
    })
  })

  it('says how much is missing, and who takes less', () => {
    expect(expectOk(fitsTank(PAIR, [reels('135', 1)], millilitres(290), SHELF))).toBe(290)
    expect(fitsTank(PAIR, [reels('135', 1)], millilitres(289), SHELF)).toMatchObject({
      problem: {
        code: 'loads.tank-does-not-cover',
        sentence:
          'Two-reel needs 290 mL to cover 1 reel of 135 and 289 mL are planned: Small steel would, with 250 mL.',
      },
    })
    expect(fitsTank(SMALL, [reels('135', 1)], millilitres(100), SHELF)).toMatchObject({
      problem: { details: { others: 'no other tank of the shelf does, so take fewer at once' } },
    })
  })

  it('never takes less for more', () => {
    const count = fc.integer({ min: 1, max: 8 })
    fc.assert(
      fc.property(count, count, (a, b) => {
        const [few, many] = [Math.min(a, b), Math.max(a, b)].map((n) => coverOf(PAIR, [reels('135', n)]))
        expect((few ?? 1e9) <= (many ?? 1e9)).toBe(true)
      }),
      { seed: 20261, numRuns: 50 },
    )
  })
})
