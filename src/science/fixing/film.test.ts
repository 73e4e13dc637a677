import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { expectOk } from '../../kernel/index.js'
import { areaOf, FILM_FORMATS, type FilmPiece, FORMAT_FACTS, fitting, frameAreaOf, rollsOf } from './index.js'

const SEEDED = { seed: 20_261, numRuns: 300 }
/** The bench's litre for twenty rolls: many formats in one bath. */
const MIXED: readonly FilmPiece[] = [
  { format: '135', count: 1 },
  { format: '120', count: 2 },
  { format: '4x5', count: 12 },
  { format: '8x10', count: 4 },
  { format: '11x14', count: 5 },
]

const piece: fc.Arbitrary<FilmPiece> = fc.record({
  format: fc.constantFrom(...FILM_FORMATS),
  frames: fc.integer({ min: 1, max: 100 }),
  count: fc.integer({ min: 0, max: 200 }),
})

describe('film as rolls', () => {
  it('a mixed litre is 20 by the tally and 19.625 with its fractions', () => {
    const count = expectOk(rollsOf(MIXED))
    expect(count.tally).toBe(20)
    expect(count.exact).toBeCloseTo(19.625, 9)
    expect(count.pieces.map(({ by }) => by)).toEqual(['convention', 'convention', 'area', 'convention', 'area'])
  })

  it('in what that leaves of twenty no roll fits, but one 4×5', () => {
    const left = 20 - expectOk(rollsOf(MIXED)).exact
    expect([fitting(left, '135'), fitting(left, '4x5'), fitting(left, '135', 12)].map(expectOk)).toEqual([0, 1, 1])
  })

  it('lengths of 135 count by their frames', () => {
    expect(expectOk(rollsOf([{ format: '135', frames: 24, count: 3 }])).exact).toBeCloseTo(2, 12)
    expect(expectOk(rollsOf([{ format: '135', frames: 37, count: 1 }])).tally).toBe(2)
  })

  it('nine short ends of four frames tally to one roll, though they add up to a last digit more', () => {
    const ends = Array.from({ length: 9 }, () => ({ format: '135', frames: 4, count: 1 }) as const)
    const { exact, tally } = expectOk(rollsOf(ends))
    expect(exact).toBeGreaterThan(1)
    expect(tally).toBe(1)
  })

  it('220 is two rolls, an 8×10 sheet one, four 4×5 one', () => {
    const exact = (format: FilmPiece['format'], count: number) => expectOk(rollsOf([{ format, count }])).exact
    expect([exact('220', 1), exact('8x10', 1)]).toEqual([2, 1])
    expect(exact('4x5', 4)).toBeCloseTo(1, 12)
    expect(exact('127', 1)).toBeCloseTo(areaOf('127') / areaOf('8x10'), 12)
  })

  it('the area beside it is that of the film itself, ends of rolls included', () => {
    const { areaCm2, byArea } = expectOk(rollsOf([{ format: '135', count: 2 }]))
    expect(areaCm2).toBeCloseTo(2 * areaOf('135'), 9)
    expect(byArea).toBeCloseTo(areaCm2 / areaOf('8x10'), 9)
    expect(areaOf('135')).toBeGreaterThan(frameAreaOf(36))
  })

  it('nothing is nothing', () => {
    expect(expectOk(rollsOf([]))).toEqual({ exact: 0, tally: 0, areaCm2: 0, byArea: 0, pieces: [] })
  })

  it.each([
    ['a format nobody makes', { format: '620mm' as never, count: 1 }, 'fixing.format-unknown'],
    ['a format from the object itself', { format: 'constructor' as never, count: 1 }, 'fixing.format-unknown'],
    ['half a roll', { format: '120', count: 0.5 }, 'fixing.not-whole'],
    ['fewer than none', { format: '120', count: -1 }, 'fixing.bad-value'],
    ['no frames', { format: '135', frames: 0, count: 1 }, 'fixing.bad-value'],
    ['frames without end', { format: '135', frames: Number.POSITIVE_INFINITY, count: 1 }, 'fixing.not-whole'],
    ['no number', { format: '135', count: Number.NaN }, 'fixing.not-whole'],
  ] as const)('is refused: %s', (_, one, code) => {
    const count = rollsOf([one])
    expect(count.ok ? count.value : count.problem.code).toBe(code)
  })

  it('adds up over any split, and never tallies less than its fractions', () => {
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 8 }), fc.array(piece, { maxLength: 8 }), (some, others) => {
        const [both, a, b] = [expectOk(rollsOf([...some, ...others])), rollsOf(some), rollsOf(others)]
        expect(both.exact).toBeCloseTo(expectOk(a).exact + expectOk(b).exact, 6)
        expect(both.areaCm2).toBeCloseTo(expectOk(a).areaCm2 + expectOk(b).areaCm2, 3)
        expect(both.tally).toBeGreaterThanOrEqual(both.exact - 1e-6)
        expect(both.tally - both.exact).toBeLessThan(1)
      }),
      SEEDED,
    )
  })

  it('what fits leaves less than one more', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 500, noNaN: true }), fc.constantFrom(...FILM_FORMATS), (left, format) => {
        const count = expectOk(fitting(left, format))
        const takes = (some: number) => expectOk(rollsOf([{ format, count: some }])).exact
        expect(takes(count)).toBeLessThanOrEqual(left + 1e-6)
        expect(takes(count + 1)).toBeGreaterThan(left)
      }),
      SEEDED,
    )
  })

  it('every format has a size and an origin', () => {
    for (const format of FILM_FORMATS) {
      expect(areaOf(format)).toBeGreaterThan(50)
      expect(['law', 'assumption']).toContain(FORMAT_FACTS[format].origin)
    }
  })
})
