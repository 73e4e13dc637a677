import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { PastedReading } from '../../../wire/index.js'
import { schemas } from '../../../wire/index.js'
import { writerFor } from '../../../words/index.js'
import { checked } from '../rules.js'
import { statementOf } from '../shape.js'
import { readTable } from './index.js'

const SEED = 20261

/** Pieces of tables, so that random texts come near to being one. */
const piece = fc.constantFrom(
  ...['18C', '20 °C', '68F', '-5C', '999C', '20,5', '(68 °F)', '℃', '°C', 'min', 'Time', 'EI 400', '@800', 'ISO 25601'],
  ...[
    '9:30',
    '11½',
    '1 1/2',
    '1o',
    '–',
    'n/a',
    '0:00',
    '99999:59',
    '1:1',
    '1+3',
    '1+5000',
    '0+1',
    '1+1+1+1+1',
    'stock',
  ],
  ...[
    'Tarn 100',
    'in',
    'at',
    'Film',
    'Developer',
    'Agitation:',
    'Source: a',
    '٢٠C',
    '\u0000',
    '\u007f',
    '_',
    '__proto__',
  ],
  ...['\t', '\t\t', ' ', '   ', '|', ';', ',', ', ', '\n', '\n\n', '\r', '=', ':', '|---|', '1e999', 'NaN', '🎞'],
)
const between = fc.constantFrom(' ', '  ', '\t', '\t\t', ' | ', ';')
const temperature = fc.constantFrom('18C', '20 °C', '20,5 °C', '68F', '24℃', '75 °F', '80C')
const time = fc.constantFrom('9:30', '8', '11½', '6.5', '7,5 min', '1o', '–', '5 1/2', '8 min 30 s', '11.25')
const label = fc.constantFrom(
  '',
  'Tarn 100',
  '400',
  'EI 800',
  'Corvane in ascorbate 1+3',
  'Film',
  'borax 1:1',
  '1+5000',
)

const ruin = fc.array(piece, { maxLength: 8 }).map((pieces) => pieces.join(' '))
const heading = fc.tuple(label, between, fc.array(temperature, { minLength: 1, maxLength: 4 }))
const row = fc.tuple(label, between, fc.array(time, { minLength: 1, maxLength: 4 }))
const joined = ([first, gap, rest]: [string, string, string[]]) => [first, ...rest].filter(Boolean).join(gap)
const pair = fc.tuple(temperature, fc.constantFrom(' ', ' = ', ': ', '\t'), time).map((parts) => parts.join(''))
const line = fc.oneof(label, heading.map(joined), row.map(joined), pair, { weight: 1, arbitrary: ruin })
const end = fc.constantFrom('\n', '\n', '\r\n', '\n\n', '\r')
const table = fc.array(fc.tuple(line, end), { maxLength: 8 }).map((lines) => lines.flat().join(''))
const tight = fc.array(piece, { maxLength: 60 }).map((pieces) => pieces.join(''))
const anything = fc.string({ unit: 'binary', maxLength: 200 })
const text = fc.oneof({ weight: 6, arbitrary: table }, { weight: 2, arbitrary: tight }, anything)

const numbersOf = (value: unknown): number[] =>
  typeof value === 'number'
    ? [value]
    : typeof value === 'object' && value !== null
      ? Object.values(value).flatMap(numbersOf)
      : []

/** Whether these times, once their film and developer are named, are kept as they stand. */
function canBeKept(reading: PastedReading): boolean {
  return reading.times.every((time) => {
    const named = { ...time, film: time.film || 'film', developer: time.developer || 'developer' }
    const shaped = schemas.TimeStatement.safeParse(named)
    return shaped.success && checked(statementOf(shaped.data), '').ok
  })
}

describe('any text at all', () => {
  it('is read or refused; what is read is finite and can be kept, or trouble is said', () => {
    let whole = 0
    fc.assert(
      fc.property(text, fc.constantFrom('metric' as const, 'us' as const), (pasted, units) => {
        const result = readTable(pasted, writerFor(units))
        if (!result.ok) return
        for (const number of numbersOf(result.value)) expect(number).toSatisfy(Number.isFinite)
        expect(schemas.PastedText.safeParse({ text: pasted }).success).toBe(true)
        const troubled = result.value.lines.some((line) => line.trouble.length > 0)
        expect(troubled || canBeKept(result.value)).toBe(true)
        if (!troubled && result.value.count > 0) whole++
      }),
      { seed: SEED, numRuns: 5000 },
    )
    // The pieces have to come together as tables often enough for this to say something.
    expect(whole).toBeGreaterThan(100)
  })

  it('of the greatest length is read in a moment', () => {
    const MOST_MS = 1500
    for (const part of ['20C 9:30\n', 'a ', '1 1/2 ', '1+1+', '20C ', '((((', '9:30 at 20C ', '| ', '–\t']) {
      const before = performance.now()
      readTable(part.repeat(20_000 / part.length), writerFor('metric'))
      expect(performance.now() - before, part).toBeLessThan(MOST_MS)
    }
  })
})
