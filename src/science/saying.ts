/** How the sentences of problems write a quantity: °C and minutes, the units the program reckons in. */

/** `21.6 °C`, at most two decimals. */
export const sayTemperature = (temperature: number): string => `${short(temperature, 2)} °C`

/** `9:30`, or `6:00:00` from an hour up; tenths of a second only when there are some. */
export function sayTime(time: number): string {
  if (!Number.isFinite(time) || time < 0) return `${time} s`
  const tenths = Math.round(time * 10)
  const [hours, minutes, rest] = [Math.floor(tenths / 36000), Math.floor(tenths / 600) % 60, (tenths % 600) / 10]
  const ending = `${rest < 10 ? '0' : ''}${short(rest, 1)}`
  return hours > 0 ? `${hours}:${String(minutes).padStart(2, '0')}:${ending}` : `${minutes}:${ending}`
}

/** A plain number with at most so many decimals and no trailing zeros. */
export const short = (value: number, decimals: number): string =>
  Number.isFinite(value) ? String(Number(value.toFixed(decimals))) : String(value)
