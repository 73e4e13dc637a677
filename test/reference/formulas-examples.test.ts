import { describe, expect, it } from 'vitest'
import { expectOk, grams, millilitres } from '../../src/kernel/index.js'
import {
  hydrateFactor,
  mixingSheet,
  SHIPPED_FORMULAS,
  saltNamed,
  substitute,
  volumeFrom,
  weighingOf,
  withAtHand,
} from '../../src/science/index.js'
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
  it('what the scale does not tell, by way of a solution', () => {
    const bromide = expectOk(saltNamed('bromide-potassium'))
    const weighing = (amount: number) => weighingOf(bromide, grams(amount), grams(0.1), millilitres(1000))
    const found = expectOk(weighing(0.5))
    if (found.by !== 'solution') throw new Error('half a gram was weighed')
    expect(`${found.measured} mL of ${found.percent} %`).toBe(says('0.5 g of bromide, scale of 0.1 g'))
    const least = Number.parseFloat(says('the least that a scale of 0.1 g tells'))
    expect([expectOk(weighing(least)).by, expectOk(weighing(least - 0.01)).by]).toEqual(['scale', 'solution'])
  })
  it('a fixer from what is at hand, as far as that goes', () => {
    const hypo = SHIPPED_FORMULAS.find(({ id }) => id === 'plain-hypo')
    if (hypo === undefined) throw new Error('the fixer does not ship')
    const { formula } = expectOk(withAtHand(hypo, [{ salt: 'hypo-anhydrous' }]))
    const volume = expectOk(volumeFrom(formula, 'hypo-anhydrous', grams(320)))
    const { high } = expectOk(mixingSheet(formula, volume)).temperature
    expect(`${volume.toFixed(0)} mL, begun at ${high} °C at most`).toBe(
      says('fixer of 240 g/L of crystals from 320 g of dry salt'),
    )
  })
  it('an acid with what must go with it', () => {
    const { amount, companion } = expectOk(substitute('ascorbate', 'ascorbic-acid', grams(10)))
    expect(`${amount.toFixed(2)} g`).toBe(says('ascorbic acid for 10 g of ascorbate'))
    expect(`${companion?.amount.toFixed(2)} g`).toBe(says('and bicarbonate'))
  })
})
