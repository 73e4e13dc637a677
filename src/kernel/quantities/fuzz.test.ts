import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  celsius,
  degrees,
  grams,
  millilitres,
  minutes,
  RATIO_LIMITS,
  type Reading,
  readDuration,
  readMass,
  readRatio,
  readTemperature,
  readTemperatureDifference,
  readVolume,
  seconds,
} from './index.js'

const parts = (reading: Reading<{ parts: readonly number[] }>): number[] =>
  valuesOf(reading).flatMap((one) => one.parts)

function valuesOf<T>(reading: Reading<T>): T[] {
  if (reading.kind === 'read') return [reading.value]
  return reading.kind === 'asked' ? reading.choices.map(({ value }) => value) : []
}

interface Fuzzed {
  name: string
  low: number
  high: number
  read: (text: string) => { kind: string; values: number[] }
}

const plain = (reading: Reading<number>) => ({ kind: reading.kind, values: valuesOf(reading) })

const readers: Fuzzed[] = (['metric', 'us'] as const).flatMap((system): Fuzzed[] => [
  {
    name: `temperature, ${system}`,
    low: 5,
    high: 60,
    read: (text) => plain(readTemperature(text, { system, low: celsius(5), high: celsius(60) })),
  },
  {
    name: `difference, ${system}`,
    low: -5,
    high: 5,
    read: (text) => plain(readTemperatureDifference(text, { system, low: degrees(-5), high: degrees(5) })),
  },
  {
    name: `volume, ${system}`,
    low: 0,
    high: 5000,
    read: (text) => plain(readVolume(text, { system, low: millilitres(0), high: millilitres(5000) })),
  },
  {
    name: `mass, ${system}`,
    low: 0.1,
    high: 1000,
    read: (text) => plain(readMass(text, { system, low: grams(0.1), high: grams(1000) })),
  },
])
readers.push(
  {
    name: 'time',
    low: 5,
    high: 7200,
    read: (text) => plain(readDuration(text, { low: seconds(5), high: minutes(120) })),
  },
  {
    name: 'ratio',
    low: RATIO_LIMITS.low,
    high: RATIO_LIMITS.high,
    read: (text) => {
      const reading = readRatio(text)
      return { kind: reading.kind, values: parts(reading) }
    },
  },
)

/** Half are strings of any characters, half are built from what quantities are made of, to come close to sense. */
const texts = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 60 }),
  fc
    .array(
      fc.oneof(
        { weight: 3, arbitrary: fc.nat(1200).map(String) },
        fc.constantFrom(...'.,:+-−/%°\'" ½⅔²∞٣５eE'),
        fc.constantFrom(
          'mL',
          'L',
          'oz',
          'fl oz',
          'g',
          'kg',
          'min',
          's',
          'h',
          '°C',
          'F',
          'NaN',
          '\u202f',
          '\u200f',
          'stock',
        ),
      ),
      { maxLength: 7 },
    )
    .map((pieces) => pieces.join('')),
)

describe.each(readers)('any text at all as a $name', ({ low, high, read }) => {
  it('becomes a reading whose values are finite and in range', () => {
    const seen = new Set<string>()
    fc.assert(
      fc.property(texts, (text) => {
        const { kind, values } = read(text)
        seen.add(kind)
        if (kind === 'refused') return values.length === 0
        return values.length > 0 && values.every((value) => Number.isFinite(value) && value >= low && value <= high)
      }),
      { seed: 20261, numRuns: 10_000 },
    )
    // Without both kinds the texts drawn would not have reached the code that reads.
    expect([...seen]).toEqual(expect.arrayContaining(['read', 'refused']))
  })
})
