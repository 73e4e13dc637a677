import {
  type Celsius,
  type Grams,
  type Millilitres,
  type Seconds,
  type UnitSystem,
  writeDegrees,
  writeDuration,
  writeMass,
  writeSpan,
  writeTemperature,
  writeVolume,
} from '../kernel/index.js'

/** Writes quantities in the bench's units. Sentences are given one, so that no sentence knows about units. */
export interface Writer {
  readonly units: UnitSystem
  temperature(value: Celsius): string
  /** A difference of temperatures, unsigned. */
  difference(value: number): string
  /** `8:15`. */
  time(value: Seconds | number): string
  /** `22 s`, or `1:05` from a minute up. */
  span(value: Seconds | number): string
  volume(value: Millilitres): string
  mass(value: Grams): string
  factor(value: number): string
  percent(fraction: number): string
}

const THIN = '\u202f'

export const writerFor = (units: UnitSystem): Writer => ({
  units,
  temperature: (value) => writeTemperature(value, units),
  difference: (value) => writeDegrees(value as never, units),
  time: (value) => writeDuration(value as Seconds),
  span: (value) => writeSpan(value as Seconds),
  volume: (value) => writeVolume(value, units),
  mass: (value) => writeMass(value, units),
  factor: (value) => value.toFixed(value < 1.005 ? 3 : 2),
  percent: (fraction) => `${Math.abs(fraction * 100).toFixed(Math.abs(fraction) < 0.0095 ? 1 : 0)}${THIN}%`,
})

/** For texts that go to a terminal: narrow spaces as plain ones. */
export const plain = (text: string): string => text.replaceAll(THIN, ' ')
