import type { Reading } from './reading.js'
import { type Field, multiple, readOn, type Scale } from './scale.js'
import { type Millilitres, millilitres, POSSIBLE, type UnitSystem } from './units.js'
import { type Step, writeInSteps } from './write.js'

/** The US fluid ounce: 1/128 of a gallon of 231 cubic inches of 2.54 cm. Exact by definition. */
const FLUID_OUNCE = 29.5735295625

const MILLILITRE = multiple('mL', 1, 'cc', 'cm3', 'ccm', 'millilitre', 'millilitres', 'milliliter', 'milliliters')
const LITRE = multiple('L', 1000, 'litre', 'litres', 'liter', 'liters', 'ltr')
const OUNCE = multiple('fl oz', FLUID_OUNCE, 'oz', 'ounce', 'ounces', 'fluidounce', 'fluidounces')

/** Whoever types less than 4 mL or more than 64 fl oz (half a gallon) without a unit may think in litres or mL. */
const VOLUME: Scale<Millilitres> = {
  what: 'a volume',
  example: { metric: '500 mL', us: '17 fl oz' },
  units: [
    MILLILITRE,
    LITRE,
    OUNCE,
    multiple('cL', 10, 'centilitre', 'centilitres'),
    multiple('dL', 100, 'decilitre', 'decilitres'),
    multiple('pt', 16 * FLUID_OUNCE, 'pint', 'pints'),
    multiple('qt', 32 * FLUID_OUNCE, 'quart', 'quarts'),
    multiple('gal', 128 * FLUID_OUNCE, 'gallon', 'gallons'),
  ],
  bare: {
    metric: { unit: MILLILITRE, doubt: { below: 4, other: LITRE } },
    us: { unit: OUNCE, doubt: { above: 64, other: MILLILITRE } },
  },
  possible: POSSIBLE.millilitres,
  make: millilitres,
  write: (value, system) => writeVolume(value, system),
}

/** As fine as a graduate of that size is marked. */
const STEPS: Readonly<Record<UnitSystem, readonly Step[]>> = {
  metric: [
    { below: 10, sign: 'mL', factor: 1, digits: 1 },
    { below: 10_000, sign: 'mL', factor: 1, digits: 0 },
    { sign: 'L', factor: 1000, digits: 2 },
  ],
  us: [
    { below: 4, sign: 'fl oz', factor: FLUID_OUNCE, digits: 2 },
    { sign: 'fl oz', factor: FLUID_OUNCE, digits: 1 },
  ],
}

/** Reads `500ml`, `½ l`, `17 oz` (US fluid ounces), `1 quart`, or a bare number in the field's unit. */
export const readVolume = (text: string, field: Field<Millilitres>): Reading<Millilitres> => readOn(VOLUME, text, field)

/** `4.5 mL`, `500 mL`, `12.50 L`; `0.39 fl oz`, `16.9 fl oz`. */
export const writeVolume = (value: Millilitres, system: UnitSystem): string => writeInSteps(value, STEPS[system])
