import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import {
  type Reading,
  readDuration,
  readMass,
  readRatio,
  readTemperature,
  readTemperatureDifference,
  readVolume,
  type UnitSystem,
} from './index.js'

/** The tables of the document that have these columns are run: what a field shows for a typed text. */
const HEADING = ['Field', 'Typed', 'Becomes', 'Shown']
const FIELDS: Record<string, (text: string, system: UnitSystem) => Reading<unknown>> = {
  temperature: (text, system) => readTemperature(text, { system }),
  difference: (text, system) => readTemperatureDifference(text, { system }),
  time: (text) => readDuration(text),
  volume: (text, system) => readVolume(text, { system }),
  mass: (text, system) => readMass(text, { system }),
  ratio: (text) => readRatio(text),
}

const cells = (line: string): string[] =>
  line
    .split('|')
    .slice(1, -1)
    .map((cell) => cell.trim())

function examples(document: string): string[][] {
  const rows: string[][] = []
  let inside = false
  for (const line of document.split('\n')) {
    const row = cells(line)
    if (row.join() === HEADING.join()) inside = true
    else if (!line.startsWith('|')) inside = false
    else if (inside && !line.startsWith('|-')) rows.push(row)
  }
  return rows
}

function shown(reading: Reading<unknown>): string {
  if (reading.kind === 'read') return reading.echo
  return reading.kind === 'asked' ? reading.choices.map(({ label }) => label).join(' or ') : reading.problem.sentence
}

describe('the examples in docs/quantities.md', () => {
  const rows = examples(readFileSync(new URL('../../../docs/quantities.md', import.meta.url), 'utf8'))

  it('are there, for every kind of field and every outcome', () => {
    expect(new Set(rows.map(([field = '']) => field.split(', ')[0]))).toEqual(new Set(Object.keys(FIELDS)))
    expect(new Set(rows.map(([, , outcome]) => outcome))).toEqual(new Set(['read', 'asked', 'refused']))
  })

  it.each(rows)('%s: %s is %s', (field, typed, outcome, text) => {
    const [name = '', unit] = field.split(', ')
    const reading = FIELDS[name]?.(typed.replaceAll('`', ''), unit === 'US' ? 'us' : 'metric')
    if (reading === undefined) throw new Error(`No field is called ${name}.`)
    // The document has ordinary spaces where the program prints narrow ones.
    expect([reading.kind, shown(reading).replaceAll('\u202f', ' ')]).toEqual([outcome, text])
  })
})
