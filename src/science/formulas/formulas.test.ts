import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { expectOk, grams, millilitres, type Result } from '../../kernel/index.js'
import {
  type Addition,
  ATOMIC_WEIGHTS,
  doubtsAbout,
  mixingSheet,
  molarMass,
  readFormula,
  SALTS,
  SHIPPED_FORMULAS,
  substitute,
  volumeFrom,
  weighable,
  writeFormula,
} from './index.js'

const seeded = { seed: 20_261, numRuns: 300 }
const code = (result: Result<unknown>) => (result.ok ? 'answered' : result.problem.code)
const atoms = (formula: string) => expectOk(readFormula(formula)).atoms

describe('reading formulas', () => {
  it.each([
    ['Na2S2O3·5H2O', { Na: 2, S: 2, O: 8, H: 10 }],
    ['Na2S2O3.5H2O', { Na: 2, S: 2, O: 8, H: 10 }],
    ['Na2S2O3 * 5H2O', { Na: 2, S: 2, O: 8, H: 10 }],
    ['(NH4)2S2O3', { N: 2, H: 8, S: 2, O: 3 }],
    ['KAl(SO4)2·12H2O', { K: 1, Al: 1, S: 2, O: 20, H: 24 }],
    ['Fe4[Fe(CN)6]3', { Fe: 7, C: 18, N: 18 }],
    ['2NaCl', { Na: 2, Cl: 2 }],
    ['Na₂SO₃', { Na: 2, S: 1, O: 3 }],
  ])('%s', (formula, expected) => {
    expect(atoms(formula)).toEqual(expected)
  })

  it.each([
    ['S2O3^2-', -2],
    ['S2O3 2-', -2],
    ['Na+', 1],
    ['Br-', -1],
    ['NaBr', 0],
  ])('the charge of %s', (formula, charge) => {
    expect(expectOk(readFormula(formula)).charge).toBe(charge)
  })

  it.each(['', 'na', 'Na2(SO4', 'Na2)SO4', 'Na()', 'Na2SO4·', '(Na]2', 'NaCl?', 'Na0', 'x'.repeat(121)])(
    'refuses “%s” with a place',
    (formula) => {
      expect(code(readFormula(formula))).toBe('formula.unreadable')
    },
  )

  it('names an element that it does not know', () => {
    expect(readFormula('Xx2O')).toMatchObject({
      problem: { code: 'formula.element-unknown', details: { element: 'Xx' } },
    })
  })

  it('reads what it writes, whatever the elements, counts and charge', () => {
    const element = fc.constantFrom(...Object.keys(ATOMIC_WEIGHTS))
    const composition = fc.record({
      atoms: fc.dictionary(element, fc.integer({ min: 1, max: 99 }), { minKeys: 1, maxKeys: 8, noNullPrototype: true }),
      charge: fc.integer({ min: -9, max: 9 }),
    })
    fc.assert(
      fc.property(composition, (one) => {
        expect(expectOk(readFormula(writeFormula(one)))).toEqual(one)
      }),
      seeded,
    )
  })

  it('masses add up: a group twice is the group and the group', () => {
    const part = fc.constantFrom('NH4', 'SO4', 'CH3COO', 'H2O', 'Ag2S')
    fc.assert(
      fc.property(part, part, fc.integer({ min: 1, max: 20 }), (one, other, times) => {
        const [a, b] = [expectOk(molarMass(one)), expectOk(molarMass(other))]
        expect(expectOk(molarMass(`(${one})${times}${other}`))).toBeCloseTo(times * a + b, 9)
        expect(expectOk(molarMass(`${other}·${times}${one}`))).toBeCloseTo(times * a + b, 9)
      }),
      seeded,
    )
  })
})

describe('one salt for another', () => {
  it('there and back is what it was, for every pair that swaps freely', () => {
    for (const one of SALTS)
      for (const other of SALTS.filter(({ family }) => family === one.family)) {
        const there = expectOk(substitute(one.id, other.id, grams(100)))
        expect(expectOk(substitute(other.id, one.id, there.amount)).amount).toBeCloseTo(100, 9)
      }
  })

  it('another salt is refused without a published swap, and told with its companion', () => {
    expect(code(substitute('hypo', 'ammonium-thiosulfate', grams(1)))).toBe('formula.not-the-same-salt')
    expect(code(substitute('sulfite-anhydrous', 'metabisulfite-sodium', grams(1)))).toBe('formula.not-the-same-salt')
    expect(expectOk(substitute('ascorbate', 'ascorbic-acid', grams(10))).companion).toMatchObject({
      salt: 'sodium bicarbonate',
    })
    expect(expectOk(substitute('bromide-sodium', 'bromide-potassium', grams(1)))).toMatchObject({
      kind: 'published',
      companion: null,
    })
    expect(code(substitute('salt of nowhere', 'hypo', grams(1)))).toBe('formula.salt-unknown')
  })

  it('every formula of the table of salts can be read', () => {
    for (const { formula } of SALTS) expect(expectOk(molarMass(formula))).toBeGreaterThan(30)
  })
})

describe('mixing by weight', () => {
  const developer = SHIPPED_FORMULAS.find(({ id }) => id === 'metol-hydroquinone-borax') as (typeof SHIPPED_FORMULAS)[0]

  it('scales with the volume, and the volume with what is at hand', () => {
    const [litre, half] = [1000, 500].map((volume) => expectOk(mixingSheet(developer, millilitres(volume))))
    for (const [i, line] of (half?.lines ?? []).entries())
      expect(2 * Number(line.grams)).toBeCloseTo(Number(litre?.lines[i]?.grams), 9)
    expect(expectOk(volumeFrom(developer, 'sulfite-anhydrous', grams(60)))).toBeCloseTo(600, 9)
    expect(code(volumeFrom(developer, 'hypo', grams(60)))).toBe('formula.salt-unknown')
  })

  it('caustic goes into cold water, and says so at its own line', () => {
    const additions = [...developer.additions, { salt: 'hydroxide-sodium', gramsPerLitre: 1 }]
    const sheet = expectOk(mixingSheet({ ...developer, additions }, millilitres(1000)))
    expect(sheet.temperature).toMatchObject({ high: 20, cold: true })
    expect(sheet.lines.at(-1)?.cautions).toEqual(['caustic-into-cold-water', 'goggles-and-gloves'])
    expect(expectOk(mixingSheet(developer, millilitres(1000))).temperature).toMatchObject({ low: 32, cold: false })
  })

  it('what the scale does not tell is made into a solution', () => {
    expect(code(weighable('metol', grams(2), grams(0.1)))).toBe('answered')
    expect(code(weighable('metol', grams(1.9), grams(0.1)))).toBe('formula.too-little-to-weigh')
  })
})

describe('doubts about a typed formula', () => {
  const of = (...ids: string[]) =>
    doubtsAbout({ additions: ids.map((salt): Addition => ({ salt, gramsPerLitre: 10 })) })
  it.each([
    ['acid-before-sulfite', ['hypo', 'acetic-acid', 'sulfite-anhydrous']],
    ['acid-fixer-without-sulfite', ['hypo', 'acetic-acid']],
    ['alum-without-acid', ['hypo', 'potassium-alum']],
    ['sulfite-before-metol', ['sulfite-anhydrous', 'metol']],
    ['agent-without-alkali', ['hydroquinone']],
    ['agent-without-preservative', ['hydroquinone', 'carbonate-mono']],
    ['bicarbonate-meets-acid', ['bicarbonate', 'acetic-acid']],
  ] as const)('%s', (doubt, ids) => {
    expect(of(...ids)).toContain(doubt)
  })

  it('none about what ships, and more than dissolves is told', () => {
    for (const formula of SHIPPED_FORMULAS) expect(doubtsAbout(formula), formula.id).toEqual([])
    expect(doubtsAbout({ additions: [{ salt: 'borax', gramsPerLitre: 90 }] })).toEqual(['more-than-dissolves'])
  })
})
