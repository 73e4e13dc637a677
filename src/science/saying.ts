import { type QuotedDegrees, type QuotedTemperature, type Seconds, writeDuration } from '../kernel/index.js'

/** How problems quote a temperature: as a value, so that its sentence can be had in either unit. */
export const sayTemperature = (temperature: number): QuotedTemperature => ({ celsius: temperature })
export const sayDegrees = (difference: number): QuotedDegrees => ({ degrees: difference })

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
