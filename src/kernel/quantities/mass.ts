import type { Reading } from './reading.js'
import { type Field, multiple, readOn, type Scale } from './scale.js'
import { type Grams, grams, POSSIBLE, type UnitSystem } from './units.js'
import { type Step, writeInSteps } from './write.js'

/** The avoirdupois ounce: 1/16 of the pound of 453.59237 g. Exact by definition. */
const OUNCE_GRAMS = 28.349523125

const GRAM = multiple('g', 1, 'gram', 'grams', 'gramme', 'grammes')
const OUNCE = multiple('oz', OUNCE_GRAMS, 'ounce', 'ounces')

/** Powders are weighed in grams on both sides, so a bare number in an ounce field is asked about whatever it is. */
const MASS: Scale<Grams> = {
  what: 'a mass',
  example: { metric: '12.5 g', us: '4 oz' },
  units: [
    GRAM,
    OUNCE,
    multiple('kg', 1000, 'kilo', 'kilogram', 'kilograms'),
    multiple('mg', 0.001, 'milligram', 'milligrams'),
    multiple('lb', 16 * OUNCE_GRAMS, 'lbs', 'pound', 'pounds'),
    multiple('gr', (16 * OUNCE_GRAMS) / 7000, 'grain', 'grains'),
  ],
  bare: { metric: { unit: GRAM }, us: { unit: OUNCE, doubt: { above: 0, other: GRAM } } },
  possible: POSSIBLE.grams,
  make: grams,
  write: (value, system) => writeMass(value, system),
}

/** As fine as a small balance shows; a thousandth of an ounce is 0.03 g. */
const STEPS: Readonly<Record<UnitSystem, readonly Step[]>> = {
  metric: [
    { below: 10, sign: 'g', factor: 1, digits: 2 },
    { below: 1000, sign: 'g', factor: 1, digits: 1 },
    { sign: 'kg', factor: 1000, digits: 3 },
  ],
  us: [
    { below: 10, sign: 'oz', factor: OUNCE_GRAMS, digits: 3 },
    { sign: 'oz', factor: OUNCE_GRAMS, digits: 2 },
  ],
}

/** Reads `12.5 g`, `1 kg`, `250 mg`, `4 oz` (avoirdupois), `1 lb`, `15 gr`, or a bare number in the field's unit. */
export const readMass = (text: string, field: Field<Grams>): Reading<Grams> => readOn(MASS, text, field)

/** `2.50 g`, `100.0 g`, `1.500 kg`; `0.088 oz`, `12.50 oz`. */
export const writeMass = (value: Grams, system: UnitSystem): string => writeInSteps(value, STEPS[system])
