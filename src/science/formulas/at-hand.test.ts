import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { expectOk, grams, millilitres, type Result } from '../../kernel/index.js'
import { type BathFormula, MIXING_WATER, mixingSheet, molarMass, SALTS, SHIPPED_FORMULAS, withAtHand } from './index.js'

const seeded = { seed: 20_261, numRuns: 300 }
const code = (result: Result<unknown>) => (result.ok ? 'answered' : result.problem.code)
const shipped = (id: string) => SHIPPED_FORMULAS.find((one) => one.id === id) as BathFormula
const of = (...additions: [salt: string, gramsPerLitre: number][]): BathFormula => ({
  ...shipped('metol-sulfite'),
  additions: additions.map(([salt, gramsPerLitre]) => ({ salt, gramsPerLitre })),
})
const moles = (salt: string, amount: number) =>
  amount / expectOk(molarMass(SALTS.find(({ id }) => id === salt)?.formula as string))

describe('what is at hand', () => {
  it('takes the place of its own salt with as many moles, and leaves the rest as it is', () => {
    const hydrates = SALTS.filter(({ id, family }) => SALTS.some((one) => one.family === family && one.id !== id))
    const pairs = hydrates.flatMap((one) =>
      SALTS.filter(({ id, family }) => family === one.family && id !== one.id).map(
        (other) => [one.id, other.id] as const,
      ),
    )
    fc.assert(
      fc.property(fc.constantFrom(...pairs), fc.double({ min: 1, max: 300, noNaN: true }), ([wanted, have], each) => {
        const { formula, swaps } = expectOk(
          withAtHand(of(['metol', 2], [wanted, each], ['bromide-potassium', 1]), [{ salt: have }]),
        )
        expect(formula.additions.map(({ salt }) => salt)).toEqual(['metol', have, 'bromide-potassium'])
        const taken = formula.additions[1]?.gramsPerLitre as number
        expect(moles(have, taken)).toBeCloseTo(moles(wanted, each), 9)
        expect(formula.additions[2]?.gramsPerLitre).toBe(1)
        expect(swaps).toMatchObject([{ wanted, have, wantedPerLitre: each }])
      }),
      seeded,
    )
  })

  it('what the formula calls for anyway changes nothing', () => {
    const fixer = shipped('plain-hypo')
    expect(expectOk(withAtHand(fixer, [{ salt: 'hypo' }]))).toEqual({ formula: fixer, swaps: [] })
  })

  it('another salt comes with its companion right after it, added to what is there already', () => {
    const calls = of(['ascorbate', 10], ['metaborate-octa', 20], ['bicarbonate', 1])
    const { additions } = expectOk(withAtHand(calls, [{ salt: 'ascorbic-acid' }])).formula
    expect(additions.map(({ salt }) => salt)).toEqual(['ascorbic-acid', 'bicarbonate', 'metaborate-octa'])
    // As many moles of bicarbonate as of acid, and the gram that was called for.
    const acid = moles('ascorbic-acid', additions[0]?.gramsPerLitre as number)
    expect(moles('bicarbonate', (additions[1]?.gramsPerLitre as number) - 1)).toBeCloseTo(acid, 9)
  })

  it('is refused where it is another salt, stands for nothing, or is not known', () => {
    const fixer = shipped('plain-hypo')
    expect(code(withAtHand(fixer, [{ salt: 'ammonium-thiosulfate', instead: 'hypo' }]))).toBe(
      'formula.not-the-same-salt',
    )
    expect(withAtHand(fixer, [{ salt: 'carbonate-mono' }])).toMatchObject({
      problem: { code: 'formula.nothing-to-replace', details: { calls: 'hypo' } },
    })
    expect(code(withAtHand(fixer, [{ salt: 'hypo-anhydrous', instead: 'borax' }]))).toBe('formula.nothing-to-replace')
    expect(code(withAtHand(fixer, [{ salt: 'salt of nowhere' }]))).toBe('formula.salt-unknown')
    expect(code(withAtHand(fixer, [{ salt: 'hypo', instead: 'salt of nowhere' }]))).toBe('formula.salt-unknown')
    expect(code(withAtHand(shipped('acetic-stop'), [{ salt: 'acetic-acid' }]))).toBe('formula.nothing-to-replace')
  })

  it('may change again what was changed: one jar after the other', () => {
    const calls = of(['carbonate-anhydrous', 30])
    const { formula, swaps } = expectOk(withAtHand(calls, [{ salt: 'carbonate-mono' }, { salt: 'carbonate-deca' }]))
    expect(formula.additions).toHaveLength(1)
    expect(moles('carbonate-deca', formula.additions[0]?.gramsPerLitre as number)).toBeCloseTo(
      moles('carbonate-anhydrous', 30),
      9,
    )
    expect(swaps.map(({ have }) => have)).toEqual(['carbonate-mono', 'carbonate-deca'])
  })

  it('without crystals that cool it, a fixer is begun no warmer than fixers are', () => {
    const crystals = shipped('plain-hypo')
    expect(crystals.temperature).toBe(MIXING_WATER.crystalsOfHypo)
    const { formula } = expectOk(withAtHand(crystals, [{ salt: 'hypo-anhydrous' }]))
    expect(expectOk(mixingSheet(formula, millilitres(1000))).temperature).toMatchObject({ high: 27, cold: false })
    const own = { ...crystals, temperature: { ...MIXING_WATER.tap, source: 'as stated' } }
    expect(expectOk(withAtHand(own, [{ salt: 'hypo-anhydrous' }])).formula.temperature).toBe(own.temperature)
  })
})

describe('a mixing sheet', () => {
  it('says the strength of a liquid, and none of what is weighed', () => {
    const { lines } = expectOk(mixingSheet(shipped('sulfate-stop'), millilitres(500)))
    expect(lines.map(({ grams: dry, millilitres: liquid, percent }) => [dry, liquid, percent])).toEqual([
      [null, millilitres(16), 28],
      [grams(22.5), null, null],
    ])
    expect(lines[0]?.cautions).toContain('acid-into-water')
  })
})
