import { type Celsius, celsius, failed, ok, problem, type Result } from '../../kernel/index.js'
import { short } from '../saying.js'
import { THERMOMETER_LIMITS as LIMITS } from './limits.js'

/** Where the water boils: the height above the sea, or what a barometer reads there (not reduced to sea level). */
export type BoilingPlace = { readonly altitude_m: number } | { readonly pressure_hPa: number }

/**
 * The temperature of boiling water, °C. Altitude −500–9000 m is turned into pressure by the standard
 * atmosphere (ICAO Doc 7488, troposphere); weather moves the result by some 0.3 °C per 10 hPa. Pressure
 * 300–1100 hPa.
 */
export function boilingPoint(place: BoilingPlace): Result<Celsius> {
  if ('altitude_m' in place) {
    const { low, high } = LIMITS.altitude
    if (!(place.altitude_m >= low && place.altitude_m <= high))
      return outside(`${short(place.altitude_m, 0)} m`, 'an altitude', low, `${high} m`, 'altitude_m')
    return ok(celsius(saturation(standardPressure(place.altitude_m))))
  }
  const { low, high } = LIMITS.pressure
  if (!(place.pressure_hPa >= low && place.pressure_hPa <= high))
    return outside(`${short(place.pressure_hPa, 1)} hPa`, 'an air pressure', low, `${high} hPa`, 'pressure_hPa')
  return ok(celsius(saturation(place.pressure_hPa)))
}

const outside = (text: string, what: string, low: number, high: string, field: string): Result<never> =>
  failed(problem('quantity.out-of-range', { text, what, low, high }, field))

/** Standard atmosphere below 11 km: 1013.25 hPa, 288.15 K, 6.5 K per km; hPa. */
const standardPressure = (altitude: number): number => 1013.25 * (1 - (0.0065 * altitude) / 288.15) ** 5.255876

/** Coefficients n1–n10 of the saturation line, IAPWS-IF97 region 4. */
const N = [
  0.11670521452767e4, -0.72421316703206e6, -0.17073846940092e2, 0.1202082470247e5, -0.32325550322333e7,
  0.1491510861353e2, -0.48232657361591e4, 0.40511340542057e6, -0.23855557567849, 0.65017534844798e3,
] as const

/** Boiling point in °C at a pressure in hPa: IAPWS-IF97 backward equation, eq. 31. */
function saturation(pressure: number): number {
  const [n1, n2, n3, n4, n5, n6, n7, n8, n9, n10] = N
  const beta = (pressure / 10_000) ** 0.25
  const e = beta ** 2 + n3 * beta + n6
  const f = n1 * beta ** 2 + n4 * beta + n7
  const g = n2 * beta ** 2 + n5 * beta + n8
  const d = (2 * g) / (-f - Math.sqrt(f ** 2 - 4 * e * g))
  return (n10 + d - Math.sqrt((n10 + d) ** 2 - 4 * (n9 + n10 * d))) / 2 - 273.15
}
