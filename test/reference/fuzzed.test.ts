import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import * as science from '../../src/science/index.js'

const folder = fileURLToPath(new URL('.', import.meta.url))
const fuzzes = readdirSync(folder)
  .filter((name) => /fuzz\.test\.ts$/.test(name))
  .map((name) => readFileSync(`${folder}${name}`, 'utf8'))
  .join('\n')

/** Asked through another function that is fuzzed, and of nothing that anybody types. */
const WITHIN: Readonly<Record<string, string>> = {
  agitationFactor: 'a table of three words',
  isOwnIndex: 'pushFactor asks it',
  methodOf: 'a table of words; correctionByRecord asks it',
  newestChecks: 'correctionByRecord asks it',
  rateOf: 'rateAt in another form',
  nominalDensities: 'the three tablets of the program',
  speedsNamed: 'the named speeds of the program',
  defineStrip: 'characteristicCurve asks it',
  firstReaching: 'filmSpeed asks it',
  logSpeedPoint: 'filmSpeed asks it',
  riseFromSpeedPoint: 'filmSpeed asks it',
  gammaOf: 'gamma asks it',
  contrastOf: 'familyOf asks it',
  contrastIndexOf: 'contrastIndex asks it',
  compareContrasts: 'two answers of contrastOf',
  studentT95: 'a whole number of values less those fitted; throws on anything else',
}

/** Tools under the calculations: wrong use is a bug and throws, what people type is checked before. */
const TOOLS = [
  ...['brent', 'integrate', 'isotonic', 'levenbergMarquardt', 'linearLeastSquares', 'monotoneSmoother', 'pchip'],
  'qrFactors',
]

describe('functions of the door', () => {
  const names = Object.entries(science)
    .filter(([, value]) => typeof value === 'function')
    .map(([name]) => name)
  const spared = new Set([...Object.keys(WITHIN), ...TOOLS])

  it('are fuzzed, or said to be asked through one that is', () => {
    const asked = (name: string) => new RegExp(`\\b${name}\\b`).test(fuzzes)
    expect(names.length).toBeGreaterThan(150)
    expect(names.filter((name) => !asked(name) && !spared.has(name))).toEqual([])
  })

  it('are spared only while they are there', () => {
    expect([...spared].filter((name) => !names.includes(name))).toEqual([])
  })
})
