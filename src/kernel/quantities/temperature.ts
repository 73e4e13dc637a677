import type { Reading } from './reading.js'
import { type Bare, type Field, multiple, readOn, type Scale, type Unit } from './scale.js'
import {
  type Celsius,
  type CelsiusDegrees,
  celsius,
  degrees,
  POSSIBLE,
  toFahrenheit,
  type UnitSystem,
} from './units.js'
import { fixed, measure } from './write.js'

const CELSIUS: Unit = { sign: '°C', names: ['°c', 'c', 'degc', 'celsius'], toInner: (value) => value }
const FAHRENHEIT: Unit = {
  sign: '°F',
  names: ['°f', 'f', 'degf', 'fahrenheit'],
  toInner: (value) => ((value - 32) * 5) / 9,
}

/**
 * No bath is warmer than 60 °C and hardly one colder than 45 °F (7 °C), so a bare number beyond may come from
 * someone who thinks in the other unit: 68 and 100 in a °C field, 20 and 38 in a °F field.
 */
const BARE_TEMPERATURE: Readonly<Record<UnitSystem, Bare>> = {
  metric: { unit: CELSIUS, doubt: { above: 60, other: FAHRENHEIT } },
  us: { unit: FAHRENHEIT, doubt: { below: 45, other: CELSIUS } },
}

const TEMPERATURE: Scale<Celsius> = {
  what: 'a temperature',
  example: { metric: '20.5 °C', us: '68 °F' },
  units: [CELSIUS, FAHRENHEIT],
  bare: BARE_TEMPERATURE,
  possible: POSSIBLE.celsius,
  make: celsius,
  write: (value, system) => writeTemperature(value, system),
}

const DEGREE_CELSIUS = multiple('°C', 1, 'c', 'k', 'degc')
const DEGREE_FAHRENHEIT = multiple('°F', 5 / 9, 'f', 'degf')

const DIFFERENCE: Scale<CelsiusDegrees> = {
  what: 'a difference of temperature',
  example: { metric: '+0.4 °C', us: '+0.7 °F' },
  units: [DEGREE_CELSIUS, DEGREE_FAHRENHEIT],
  bare: { metric: { unit: DEGREE_CELSIUS }, us: { unit: DEGREE_FAHRENHEIT } },
  possible: POSSIBLE.degrees,
  signed: true,
  make: degrees,
  write: (value, system) => writeDegrees(value, system, { signed: true }),
}

/** A degree sign alone (`20°`) says nothing about the unit: the number is bare. */
const withoutBareDegree = (text: string): string => text.replace(/[°º˚]\s*$/u, '')

/** Reads `68F`, `20,5 °C`, `−5 °C`, or a bare number in the field's unit; asks when that unit is implausible. */
export const readTemperature = (text: string, field: Field<Celsius>): Reading<Celsius> =>
  readOn(TEMPERATURE, withoutBareDegree(text), field)

/** Reads a signed difference: `+0.4`, `−1 °F`. A bare number takes the field's unit. */
export const readTemperatureDifference = (text: string, field: Field<CelsiusDegrees>): Reading<CelsiusDegrees> =>
  readOn(DIFFERENCE, withoutBareDegree(text), field)

/** `20.0 °C` or `68.0 °F`. */
export function writeTemperature(value: Celsius, system: UnitSystem, digits = 1): string {
  return system === 'us' ? measure(fixed(toFahrenheit(value), digits), '°F') : measure(fixed(value, digits), '°C')
}

/** `0.4 °C`, `−0.4 °C`; with `signed` a rise carries its plus: `+0.4 °C`. Nothing is added to zero. */
export function writeDegrees(
  value: CelsiusDegrees,
  system: UnitSystem,
  { signed = false, digits = 1 }: { signed?: boolean; digits?: number } = {},
): string {
  const number = fixed(system === 'us' ? value * 1.8 : value, digits)
  const plus = signed && Number(number) > 0 ? '+' : ''
  return measure(plus + number, system === 'us' ? '°F' : '°C')
}
