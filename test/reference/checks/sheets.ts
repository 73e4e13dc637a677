import { celsius, expectOk, fahrenheit, minutes, seconds } from '../../../src/kernel/index.js'
import { type DeveloperKind, defineBasis, type RateLaw, type TimeBasis } from '../../../src/science/index.js'

/** A basis from a sheet in °F and minutes. */
export const sheetInFahrenheit = (
  points: readonly { readonly fahrenheit: number; readonly minutes: number }[],
  law: RateLaw = 'exponential',
): TimeBasis =>
  expectOk(
    defineBasis({
      kind: 'ordinary',
      law,
      points: points.map((point) => ({ temperature: fahrenheit(point.fahrenheit), time: minutes(point.minutes) })),
    }),
  )

/** A basis from one point at 20 °C with a stated coefficient. */
export const onePoint = (coefficient: number, time = 600, law: RateLaw = 'exponential'): TimeBasis =>
  expectOk(
    defineBasis({ kind: 'ordinary', law, coefficient, points: [{ temperature: celsius(20), time: seconds(time) }] }),
  )

export const sheetInCelsius = (
  kind: DeveloperKind,
  points: readonly { readonly celsius: number; readonly seconds: number }[],
): TimeBasis =>
  expectOk(
    defineBasis({
      kind,
      points: points.map((point) => ({ temperature: celsius(point.celsius), time: seconds(point.seconds) })),
    }),
  )
