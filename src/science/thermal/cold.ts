import { type Celsius, fahrenheit, ok, type Result } from '../../kernel/index.js'
import type { Origin } from '../development/index.js'
import { temperatureOutside } from './checked.js'

/** A factor on a time, with what it rests on. */
export interface ColdFactor {
  readonly factor: number
  readonly origin: Origin
  readonly source: string
}

/** Where cold is the question; warmer than 40 °C no black-and-white bath is. */
const BATHS = { low: 0, high: 40 }
const SOURCE = 'US Army TM 11-2323, paras 32–34'

/**
 * What fixing takes longer in the cold: 2^((68 − F)/18), twice the time for each 10 °C below 20 °C, and no less than
 * the whole time above. At 15 °C (59 °F) 1.414. Baths of 0–40 °C, else refused.
 */
export function coldFixing(temperature: Celsius): Result<ColdFactor> {
  const doublings = Math.max(0, fahrenheit(68) - temperature) / 10
  return outside(temperature) ?? ok({ factor: 2 ** doublings, origin: 'law', source: SOURCE })
}

/** Where the manual gives factors on the time of washing prints: 1 at 65 °F, 2 at 50 °F, 4 at 35 °F. */
const WASHING = { whole: fahrenheit(65), twice: fahrenheit(50) }

/**
 * What washing takes longer in the cold: nothing from 18.3 °C (65 °F) up, twice the time at 10 °C (50 °F), four times
 * at 1.7 °C (35 °F), by the logarithm between and on to 0 °C. Stated for prints, so for film it is practice. Baths of
 * 0–40 °C, else refused.
 */
export function coldWashing(temperature: Celsius): Result<ColdFactor> {
  // The three temperatures lie equally far apart, and so do the logarithms of their factors.
  const doublings = Math.max(0, (WASHING.whole - temperature) / (WASHING.whole - WASHING.twice))
  return outside(temperature) ?? ok({ factor: 2 ** doublings, origin: 'practice', source: SOURCE })
}

const outside = (temperature: Celsius) => temperatureOutside('the bath', temperature, BATHS, 'temperature')
