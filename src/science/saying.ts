import { type Seconds, writeDuration } from '../kernel/index.js'

/**
 * How the sentences of problems write a quantity: in °C and minutes, the units the program reckons in, and
 * with the digit that a value is refused for (25.01 °C is outside, 25.0 °C would not look it).
 */

/** `21.6 °C`, at most two decimals. */
export const sayTemperature = (temperature: number): string => `${short(temperature, 2)} °C`

/** `9:30`, or `6:00:00` from an hour up; tenths of a second only when there are some. */
export function sayTime(time: number): string {
  if (!Number.isFinite(time) || time < 0) return `${time} s`
  const tenths = Math.round(time * 10)
  const whole = Math.floor(tenths / 10)
  const rest = tenths % 10
  return writeDuration(whole as Seconds) + (rest === 0 ? '' : `.${rest}`)
}

/** A plain number with at most so many decimals and no trailing zeros. */
export const short = (value: number, decimals: number): string =>
  Number.isFinite(value) ? String(Number(value.toFixed(decimals))) : String(value)
