import { describe, expect, it } from 'vitest'
import { expectOk, grams, millilitres } from '../../src/kernel/index.js'
import { hydrateFactor, mixingSheet, SHIPPED_FORMULAS, substitute } from '../../src/science/index.js'
import { exampleOf } from './page-example.js'

describe('worked example of the page on formulas', () => {
  const says = exampleOf('formulas')
  it('a hydrate in place of another', () => {
    expect(expectOk(hydrateFactor(says('called for'), says('at hand'))).toFixed(4)).toBe(says('factor'))
    const { amount } = expectOk(substitute('hypo', 'hypo-anhydrous', grams(240)))
    expect(`${amount.toFixed(1)} g`).toBe(says('for 240 g'))
  })
  it('a developer scaled', () => {
    const formula = SHIPPED_FORMULAS.find(({ id }) => id === 'metol-hydroquinone-borax')
    if (formula === undefined) throw new Error('the developer does not ship')
    const sheet = expectOk(mixingSheet(formula, millilitres(600)))
    const amounts = sheet.lines.map((line) => Number((line.grams ?? 0).toFixed(6)))
    expect(`${amounts.join(', ')} g`).toBe(says('metol–hydroquinone–borax, 600 mL'))
    expect(`${sheet.water} mL`).toBe(says('water to begin with'))
  })
  it('an acid with what must go with it', () => {
    const { amount, companion } = expectOk(substitute('ascorbate', 'ascorbic-acid', grams(10)))
    expect(`${amount.toFixed(2)} g`).toBe(says('ascorbic acid for 10 g of ascorbate'))
    expect(`${companion?.amount.toFixed(2)} g`).toBe(says('and bicarbonate'))
  })
})
