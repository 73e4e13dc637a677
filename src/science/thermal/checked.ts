import { type Failed, failed, problem } from '../../kernel/index.js'
import { refusedOutside } from '../range.js'
import { sayTemperature } from '../saying.js'
import { THERMAL_LIMITS } from './definition.js'

interface Range {
  readonly low: number
  readonly high: number
}

/** Null when a temperature lies in the range, else a refusal that can be read in either unit; NaN lies nowhere. */
export function temperatureOutside(what: string, value: number, { low, high }: Range, field?: string): Failed | null {
  if (value >= low && value <= high) return null
  const details = { text: sayTemperature(value), what, low: sayTemperature(low), high: sayTemperature(high) }
  return failed(problem('quantity.out-of-range', details, field))
}

export const surroundingsOutside = (value: number, field = 'around'): Failed | null =>
  temperatureOutside('the temperature of surroundings', value, THERMAL_LIMITS.surroundings, field)

export const volumeOutside = (value: number, range: Range, field = 'volume'): Failed | null =>
  refusedOutside('thermal.bad-value', 'A volume in mL', value, range, field)

export const massOutside = (what: string, value: number, range: Range, field?: string): Failed | null =>
  refusedOutside('thermal.bad-value', `${what} in grams`, value, range, field)

export const timeOutside = (value: number, range: Range, field = 'time'): Failed | null =>
  refusedOutside('thermal.bad-value', 'A time in seconds', value, range, field)

export const tooManyParts = (count: number): Failed | null =>
  refusedOutside('thermal.bad-value', 'The number of parts', count, THERMAL_LIMITS.parts, 'parts')

export const nothingToMix = (): Failed => failed(problem('thermal.nothing-to-mix', {}, 'parts'))
