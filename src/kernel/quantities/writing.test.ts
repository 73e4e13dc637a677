import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  celsius,
  degrees,
  grams,
  millilitres,
  POSSIBLE,
  RATIO_LIMITS,
  type Ratio,
  type Reading,
  readDuration,
  readMass,
  readRatio,
  readTemperature,
  readTemperatureDifference,
  readVolume,
  seconds,
  type UnitSystem,
  writeDegrees,
  writeDuration,
  writeMass,
  writeRatio,
  writeSpan,
  writeTemperature,
  writeVolume,
} from './index.js'

const SEED = 20261

describe('the printed form', () => {
  it('of temperatures', () => {
    expect(writeTemperature(celsius(20), 'metric')).toBe('20.0\u202f°C')
    expect(writeTemperature(celsius(20), 'us')).toBe('68.0\u202f°F')
    expect(writeTemperature(celsius(-5.25), 'metric', 2)).toBe('\u22125.25\u202f°C')
    expect(writeTemperature(celsius(-0.04), 'metric')).toBe('0.0\u202f°C')
  })

  it('of differences', () => {
    expect(writeDegrees(degrees(0.4), 'metric')).toBe('0.4\u202f°C')
    expect(writeDegrees(degrees(0.4), 'metric', { signed: true })).toBe('+0.4\u202f°C')
    expect(writeDegrees(degrees(-1), 'us', { signed: true })).toBe('\u22121.8\u202f°F')
    expect(writeDegrees(degrees(0.01), 'us', { signed: true })).toBe('0.0\u202f°F')
  })

  it('of times', () => {
    expect(writeDuration(seconds(495))).toBe('8:15')
    expect(writeDuration(seconds(3750))).toBe('1:02:30')
    expect(writeDuration(seconds(59.6))).toBe('1:00')
    expect(writeDuration(seconds(3599.5))).toBe('1:00:00')
    expect(writeSpan(seconds(22.4))).toBe('22\u202fs')
    expect(writeSpan(seconds(59.5))).toBe('1:00')
  })

  it('of volumes', () => {
    expect(writeVolume(millilitres(4.54), 'metric')).toBe('4.5\u202fmL')
    expect(writeVolume(millilitres(9.96), 'metric')).toBe('10\u202fmL')
    expect(writeVolume(millilitres(9999), 'metric')).toBe('9999\u202fmL')
    expect(writeVolume(millilitres(12_500), 'metric')).toBe('12.50\u202fL')
    expect(writeVolume(millilitres(500), 'us')).toBe('16.9\u202ffl oz')
    expect(writeVolume(millilitres(11.5), 'us')).toBe('0.39\u202ffl oz')
  })

  it('of masses', () => {
    expect(writeMass(grams(2.5), 'metric')).toBe('2.50\u202fg')
    expect(writeMass(grams(100), 'metric')).toBe('100.0\u202fg')
    expect(writeMass(grams(1500), 'metric')).toBe('1.500\u202fkg')
    expect(writeMass(grams(2.5), 'us')).toBe('0.088\u202foz')
  })

  it('of ratios', () => {
    expect(writeRatio({ parts: [1, 4] })).toBe('1 + 4')
    expect(writeRatio({ parts: [1] })).toBe('stock')
  })
})

interface Printed {
  name: string
  low: number
  high: number
  write: (value: number) => string
  read: (text: string) => Reading<number>
  /** How much of the inner unit one of each printed unit is; a time has none. */
  units: Record<string, number>
}

const systems: UnitSystem[] = ['metric', 'us']
const degreeUnits = { '°C': 1, '°F': 5 / 9 }

const printed: Printed[] = [
  ...systems.flatMap((system): Printed[] => [
    ...[0, 1, 2].map((digits) => ({
      name: `temperature, ${system}, ${digits} decimals`,
      ...POSSIBLE.celsius,
      write: (value: number) => writeTemperature(celsius(value), system, digits),
      read: (text: string) => readTemperature(text, { system }),
      units: degreeUnits,
    })),
    ...[true, false].map((signed) => ({
      name: `difference, ${system}, signed ${signed}`,
      ...POSSIBLE.degrees,
      write: (value: number) => writeDegrees(degrees(value), system, { signed }),
      read: (text: string) => readTemperatureDifference(text, { system }),
      units: degreeUnits,
    })),
    {
      name: `volume, ${system}`,
      ...POSSIBLE.millilitres,
      write: (value) => writeVolume(millilitres(value), system),
      read: (text) => readVolume(text, { system }),
      units: { mL: 1, L: 1000, 'fl oz': 29.5735295625 },
    },
    {
      name: `mass, ${system}`,
      ...POSSIBLE.grams,
      write: (value) => writeMass(grams(value), system),
      read: (text) => readMass(text, { system }),
      units: { g: 1, kg: 1000, oz: 28.349523125 },
    },
  ]),
  ...[writeDuration, writeSpan].map((write) => ({
    name: write.name,
    ...POSSIBLE.seconds,
    write: (value: number) => write(seconds(value)),
    read: (text: string) => readDuration(text),
    units: { s: 1 },
  })),
]

/** Half of the last digit that was printed, in the inner unit. */
function halfDigit(text: string, units: Record<string, number>): number {
  const [number = '', sign = 's'] = text.split('\u202f')
  const decimals = number.split('.')[1]?.length ?? 0
  return (0.5 * (units[sign] ?? Number.NaN)) / 10 ** decimals
}

describe.each(printed)('reading what was printed: $name', ({ low, high, write, read, units }) => {
  // Small amounts are printed by other rules than large ones, so both kinds are drawn.
  const values = fc
    .oneof(
      fc.double({ min: low, max: high, noNaN: true }),
      fc.double({ min: Math.max(low, -20), max: 20, noNaN: true }),
      fc.constantFrom(low, high, 0, 9.96, 59.5, 9.996, 999.96, 9999.6),
    )
    .filter((value) => value >= low && value <= high)

  it('gives the same quantity within half the last digit, and the same print again', () => {
    fc.assert(
      fc.property(values, (value) => {
        const text = write(value)
        const reading = read(text)
        if (reading.kind !== 'read') throw new Error(`${text}: ${reading.problem.sentence}`)
        // The last bits of the conversions between units come on top of the rounding.
        const rounding = 1e-12 * Math.max(1, Math.abs(value))
        expect(Math.abs(reading.value - value)).toBeLessThanOrEqual(halfDigit(text, units) + rounding)
        expect(write(reading.value)).toBe(text)
      }),
      { seed: SEED, numRuns: 1000 },
    )
  })
})

describe('reading a printed ratio', () => {
  const part = fc.double({ min: RATIO_LIMITS.low, max: RATIO_LIMITS.high, noNaN: true })
  const ratios: fc.Arbitrary<Ratio> = fc.oneof(
    fc.array(part, { minLength: 2, maxLength: RATIO_LIMITS.parts }).map((parts) => ({ parts })),
    fc.constant({ parts: [1] }),
  )

  it('gives the same parts within half a thousandth, and the same print again', () => {
    fc.assert(
      fc.property(ratios, (ratio) => {
        const text = writeRatio(ratio)
        const reading = readRatio(text)
        if (reading.kind !== 'read') throw new Error(`${text}: ${reading.problem.sentence}`)
        expect(reading.value.parts).toHaveLength(ratio.parts.length)
        for (const [at, part] of reading.value.parts.entries())
          expect(Math.abs(part - (ratio.parts[at] ?? Number.NaN))).toBeLessThanOrEqual(0.000_5 + 1e-12)
        expect(writeRatio(reading.value)).toBe(text)
      }),
      { seed: SEED, numRuns: 1000 },
    )
  })
})
