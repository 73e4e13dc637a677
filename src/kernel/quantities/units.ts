/**
 * The quantities of the trade as distinct number types, so that seconds cannot be handed to something
 * that wants degrees. Inside the program: °C, seconds, millilitres, grams. Values come into being only
 * through the constructors here, which refuse what is not finite or not possible (a bug, so they throw;
 * what people type goes through the readers, which answer with a sentence).
 */
declare const unit: unique symbol
type Quantity<Name extends string> = number & { readonly [unit]: Name }

export type Celsius = Quantity<'°C'>
/** A difference of temperatures; 1.8 °F each. */
export type CelsiusDegrees = Quantity<'Δ°C'>
export type Seconds = Quantity<'s'>
export type Millilitres = Quantity<'mL'>
export type Grams = Quantity<'g'>

/** What each quantity can be at all; fields narrow it further. */
export const POSSIBLE = {
  celsius: { low: -90, high: 200, unit: '°C' },
  degrees: { low: -290, high: 290, unit: '°C of difference' },
  seconds: { low: 0, high: 604_800, unit: 's' },
  millilitres: { low: 0, high: 1_000_000, unit: 'mL' },
  grams: { low: 0, high: 1_000_000, unit: 'g' },
} as const

function checked(value: number, range: { low: number; high: number; unit: string }): number {
  if (!Number.isFinite(value) || value < range.low || value > range.high)
    throw new RangeError(`${value} is not a possible number of ${range.unit} (${range.low} to ${range.high}).`)
  return value
}

export const celsius = (value: number): Celsius => checked(value, POSSIBLE.celsius) as Celsius
export const seconds = (value: number): Seconds => checked(value, POSSIBLE.seconds) as Seconds
export const millilitres = (value: number): Millilitres => checked(value, POSSIBLE.millilitres) as Millilitres
export const grams = (value: number): Grams => checked(value, POSSIBLE.grams) as Grams
export const degrees = (value: number): CelsiusDegrees => checked(value, POSSIBLE.degrees) as CelsiusDegrees

export const fahrenheit = (value: number): Celsius => celsius(((value - 32) * 5) / 9)
export const toFahrenheit = (value: Celsius): number => (value * 9) / 5 + 32
export const minutes = (value: number): Seconds => seconds(value * 60)

/** Which units people read and type on this bench. */
export type UnitSystem = 'metric' | 'us'
