import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { expectOk, type Result } from '../../kernel/index.js'
import {
  ACIDS,
  type AcidName,
  acidToReach,
  chargeAt,
  fanFor,
  formsAt,
  generatorOf,
  pHOf,
  pouredTogether,
  ppmInRoom,
  type Solution,
  sulfiteIn,
  sulfurDioxideShare,
} from './index.js'

const of = (acid: AcidName, molarity: number, spectators = 0): Solution => ({ acids: [{ acid, molarity }], spectators })
const pH = (solution: Solution) => expectOk(pHOf(solution))
const code = (result: Result<unknown>) => (result.ok ? 'answered' : result.problem.code)
const sulfite = of('sulfurous', 0.8, 1.6)
const vinegar = of('acetic', 0.83)
const seeded = { seed: 20_261, numRuns: 300 }
const names = Object.keys(ACIDS) as AcidName[]
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })

describe('charge balance', () => {
  it('an acid at its pKa is half and half, with all its protons far below and none far above', () => {
    for (const name of names) {
      const { pKa } = ACIDS[name]
      expect(chargeAt(ACIDS[name], -6)).toBeCloseTo(0, 5)
      expect(chargeAt(ACIDS[name], 20)).toBeCloseTo(pKa.length, 5)
    }
    expect(formsAt(ACIDS.acetic, ACIDS.acetic.pKa[0])).toEqual([0.5, 0.5])
  })
  it('water is neutral, and strong alkali alone has the pH of its hydroxide', () => {
    expect(pH({ acids: [], spectators: 0 })).toBeCloseTo(7, 9)
    expect(pH({ acids: [], spectators: 0.01 })).toBeCloseTo(12, 6)
    expect(pH({ acids: [], spectators: -0.01 })).toBeCloseTo(2, 6)
  })
  it('a weak acid alone has the pH of its quadratic', () => {
    fc.assert(
      fc.property(between(0.01, 2), (molarity) => {
        const K = 10 ** -4.756
        const hydrogen = (-K + Math.sqrt(K * K + 4 * K * molarity)) / 2
        expect(pH(of('acetic', molarity))).toBeCloseTo(-Math.log10(hydrogen), 5)
      }),
      seeded,
    )
  })
  it('thiosulfate with its sodium is a spectator: it moves no pH', () => {
    const spectators = 2 * 0.97 - 2 * 0.97
    expect(pH({ ...sulfite, spectators: sulfite.spectators + spectators })).toBe(pH(sulfite))
  })
  it('balances by another sum: every form counted with its charge', () => {
    fc.assert(
      fc.property(
        fc.array(fc.record({ acid: fc.constantFrom(...names), molarity: between(0.001, 1) }), {
          minLength: 1,
          maxLength: 4,
        }),
        between(-0.5, 3),
        (acids, spectators) => {
          const found = pH({ acids, spectators })
          const h = 10 ** -found
          let negative = 1e-14 / h
          for (const { acid, molarity } of acids) {
            // Products of constants, as textbooks write it: c K1 h^(n−1) + 2 c K1 K2 h^(n−2) … over their sum.
            const K = ACIDS[acid].pKa.map((one) => 10 ** -one)
            const terms = [h ** K.length]
            K.forEach((_, i) => {
              terms.push(h ** (K.length - i - 1) * K.slice(0, i + 1).reduce((product, one) => product * one, 1))
            })
            const whole = terms.reduce((sum, one) => sum + one, 0)
            negative += molarity * (terms.reduce((sum, one, charge) => sum + one * charge, 0) / whole)
          }
          expect(Math.abs(spectators + h - negative)).toBeLessThan(1e-6 * (1 + negative))
        },
      ),
      seeded,
    )
  })
  it('falls as acid is poured in, and is at the wanted pH after the millilitres it says', () => {
    fc.assert(
      fc.property(between(4, 9), between(0.01, 1), (wanted, molarity) => {
        const bath = of('sulfurous', molarity, 2 * molarity)
        const needed = expectOk(acidToReach(bath, vinegar, wanted))
        expect(pH(expectOk(pouredTogether(bath, 1000, vinegar, needed)))).toBeCloseTo(wanted, 6)
        const half = pH(expectOk(pouredTogether(bath, 1000, vinegar, needed / 2)))
        expect(half).toBeGreaterThan(wanted)
      }),
      seeded,
    )
  })
  it('refuses what balances nowhere and what cannot be reached', () => {
    expect(code(pHOf({ acids: [], spectators: 20 }))).toBe('waste.no-balance')
    expect(code(pHOf(of('acetic', -1)))).toBe('waste.bad-value')
    expect(code(acidToReach(sulfite, vinegar, 1))).toBe('waste.pH-out-of-reach')
    expect(code(acidToReach(sulfite, vinegar, 12))).toBe('waste.pH-out-of-reach')
    expect(code(acidToReach(sulfite, vinegar, 15))).toBe('waste.bad-value')
    expect(code(pouredTogether(sulfite, 0, vinegar, 0))).toBe('waste.bad-value')
    expect(code(ppmInRoom(1, 0))).toBe('waste.bad-value')
  })
})

describe('why sulfite baths are not acidified', () => {
  it('hardly any gas at the pH of the bath, tens of thousands of times as much once it is acid', () => {
    const [bath, sour] = [sulfite, expectOk(pouredTogether(sulfite, 1, of('acetic', 16), 1))]
    const before = expectOk(sulfiteIn(bath))
    const after = expectOk(sulfiteIn(sour))
    expect(before.pH).toBeGreaterThan(9)
    expect(before.gasGramsPerLitre).toBeLessThan(1e-6)
    expect(after.pH).toBeLessThan(5)
    expect(after.gasGramsPerLitre / before.gasGramsPerLitre).toBeGreaterThan(1e4)
  })
  it('the three forms are the whole, and gas only grows as pH falls', () => {
    let before = 0
    for (let at = 10; at >= 0; at--) {
      const share = expectOk(sulfurDioxideShare(at))
      expect(share).toBeGreaterThan(before)
      before = share
    }
    const { sulfurDioxide, bisulfite, sulfite: rest } = expectOk(sulfiteIn(sulfite))
    expect(sulfurDioxide + bisulfite + rest).toBeCloseTo(1, 12)
  })
  it('a gram in a small room is far above what is bearable', () => {
    expect(expectOk(ppmInRoom(1, 10))).toBeCloseTo((24.45 / 64.064) * 100, 9)
  })
})

describe('reference', () => {
  it('categories of generators at their edges', () => {
    const of = (kilograms: number) => expectOk(generatorOf(kilograms))
    expect([of(0), of(100), of(100.1), of(999), of(1000)]).toEqual([
      'very-small',
      'very-small',
      'small',
      'small',
      'large',
    ])
    expect(code(generatorOf(-1))).toBe('waste.bad-value')
  })
  it('a fan moves the room so many times an hour', () => {
    expect(expectOk(fanFor(10, 12))).toBe(120)
    expect(code(fanFor(10, 0))).toBe('waste.bad-value')
  })
})
