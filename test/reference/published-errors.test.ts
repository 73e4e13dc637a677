import { describe, expect, it } from 'vitest'
import { celsius, expectOk, grams, millilitres, seconds } from '../../src/kernel/index.js'
import {
  afterChanges,
  crissCross,
  densityOf,
  estimateWash,
  firstFill,
  partAfterRinse,
  substitute,
  transmittanceOf,
  weightPercent,
} from '../../src/science/index.js'

/** Grams of what is at hand for each gram that is called for. */
const factor = (wanted: string, have: string): number => expectOk(substitute(wanted, have, grams(1))).amount

describe('where a published figure is itself wrong, what we answer and why', () => {
  it('three substitution rows stand upside down in a formulary: molar masses answer, and each is one over what it prints', () => {
    // Printed 0.855, 1.40 and 0.72 for these; a heavier salt in place of a lighter one needs more of it, never less.
    expect(factor('metabisulfite-sodium', 'metabisulfite-potassium')).toBeCloseTo(1.169, 3)
    expect(factor('hydroxide-potassium', 'hydroxide-sodium')).toBeCloseTo(0.713, 3)
    expect(factor('hydroxide-sodium', 'hydroxide-potassium')).toBeCloseTo(1.403, 3)
    for (const [wanted, have, printed] of [
      ['metabisulfite-sodium', 'metabisulfite-potassium', 0.855],
      ['hydroxide-potassium', 'hydroxide-sodium', 1.4],
      ['hydroxide-sodium', 'hydroxide-potassium', 0.72],
    ] as const)
      expect(Math.abs(factor(wanted, have) * printed - 1)).toBeLessThan(0.011)
  })

  it('1.32 for borax with ten waters in place of five is 1.309: it was one over 0.76, a figure already rounded', () => {
    const there = factor('borax', 'borax-penta')
    const back = factor('borax-penta', 'borax')
    expect(back).toBeCloseTo(1.3092, 4)
    // There and back is the same mass again; with 0.76 and 1.32 three grams in a thousand would appear.
    expect(there * back).toBeCloseTo(1, 12)
    expect(Number((1 / 0.76).toFixed(2))).toBe(1.32)
    expect(1.32 / back - 1).toBeCloseTo(0.008, 3)
  })

  it('a density of 3 is a thousandth, 0.1 %, and not 0.01 %: that is a density of 4', () => {
    expect(100 * expectOk(transmittanceOf(3))).toBeCloseTo(0.1, 12)
    expect(expectOk(densityOf(0.01 / 100))).toBeCloseTo(4, 12)
  })

  it('a fill of a wash does not remove half: 10 mL carried into 500 mL leave a fiftieth, waited for', () => {
    expect(expectOk(afterChanges(1, 490, 10))).toBeCloseTo(1 / 50, 12)
    const fill = expectOk(firstFill(600, 500, expectOk(partAfterRinse('film-and-walls'))))
    expect(fill.gramsPerLitre).toBeCloseTo(1.2, 12)
    expect(fill.rinsed).toBeCloseTo(0.24, 12)
    const waited = expectOk(
      estimateWash({
        after: { state: 'usable', by: 'count' },
        steps: [{ kind: 'change', volume: millilitres(490), time: seconds(1800) }],
        fixer: 60,
        rolls: 1,
        temperature: celsius(20),
      }),
    )
    // By both together too, once the gelatin has had its half-hour.
    expect(waited.perRoll / 240).toBeCloseTo(1 / 50, 6)
  })

  it('3 + 8 parts of glacial acid are 28 % by weight; by volume alone they would be 27.1 %', () => {
    const acid = { volumes: 3, density: 1.0477, percent: 99.5 }
    const byWeight = expectOk(weightPercent(acid, { volumes: 8, density: 0.9982 }))
    expect(byWeight.percent).toBeCloseTo(28.1, 1)
    expect((3 * 99.5) / 11).toBeCloseTo(27.14, 2)
    // The same question as a blend: its parts are parts by weight, 28 to 71.5.
    const { strong, weak } = expectOk(crissCross(99.5, 0, 28))
    expect(weak / strong).toBeCloseTo(71.5 / 28, 12)
  })
})
