import { failed, ok, problem, type Result } from '../../kernel/index.js'
import { short } from '../saying.js'
import type { RateLaw } from './definition.js'

/** 0 °C in kelvin. */
export const KELVIN = 273.15
/** Molar gas constant, kJ/(mol·K): CODATA 2018, exact. */
const GAS = 8.314462618e-3
/** The two temperatures between which K and Ea are turned into each other. */
const FROM = KELVIN + 15
const TO = KELVIN + 25

/**
 * Warmth: the scale on which ln t runs straight under a law. It rises with temperature under both:
 * °C for the exponential law, −1/T (per kelvin) for Arrhenius.
 */
export const warmth = (law: RateLaw, temperature: number): number =>
  law === 'exponential' ? temperature : -1 / (temperature + KELVIN)

/** Change of warmth per °C at a temperature. */
export const warmthPerDegree = (law: RateLaw, temperature: number): number =>
  law === 'exponential' ? 1 : 1 / (temperature + KELVIN) ** 2

/** Warmth between the two temperatures that K is stated for. */
const tenDegrees = (law: RateLaw): number => (law === 'exponential' ? 10 : 1 / FROM - 1 / TO)

/** Slope of ln t on warmth that a ten-degree coefficient means; negative, because warmer is faster. */
export const slopeOf = (law: RateLaw, coefficient: number): number => -Math.log(coefficient) / tenDegrees(law)

/** The ten-degree coefficient that a slope of ln t on warmth means. */
export const coefficientOf = (law: RateLaw, slope: number): number => Math.exp(-slope * tenDegrees(law))

const energyOf = (coefficient: number): number => (Math.log(coefficient) / (1 / FROM - 1 / TO)) * GAS

/** Activation energy in kJ/mol for a slope of ln t on warmth. */
export const activationEnergy = (law: RateLaw, slope: number): number =>
  law === 'exponential' ? energyOf(coefficientOf(law, slope)) : -slope * GAS

const MOST_COEFFICIENT = 1e3
const MOST_ENERGY = 600

/**
 * Activation energy, kJ/mol, of a ten-degree coefficient K between 15 and 25 °C:
 * Ea = R · ln K · T1 · T2 / 10. K above 0 and up to 1000; outside it is refused.
 */
export function energyFromCoefficient(coefficient: number): Result<number> {
  if (!(coefficient > 0 && coefficient <= MOST_COEFFICIENT))
    return failed(
      problem('times.bad-coefficient', { coefficient: short(coefficient, 3), low: 0, high: MOST_COEFFICIENT }),
    )
  return ok(energyOf(coefficient))
}

/** The ten-degree coefficient between 15 and 25 °C of an activation energy of 0 to 600 kJ/mol. */
export function coefficientFromEnergy(energy: number): Result<number> {
  if (!(energy >= 0 && energy <= MOST_ENERGY))
    return failed(
      problem('quantity.out-of-range', {
        text: `${short(energy, 1)} kJ/mol`,
        what: 'an activation energy',
        low: 0,
        high: `${MOST_ENERGY} kJ/mol`,
      }),
    )
  return ok(Math.exp((energy / GAS) * (1 / FROM - 1 / TO)))
}

/**
 * The ten-degree coefficient of a coefficient stated over another span, `over` °C: Ives 1920 prints his over
 * 7 °C. Exponential law: K = c^(10/over). c above 0 and up to 1000, span 1 to 40 °C.
 */
export function coefficientOverTen(coefficient: number, over: number): Result<number> {
  if (!(coefficient > 0 && coefficient <= MOST_COEFFICIENT))
    return failed(
      problem('times.bad-coefficient', { coefficient: short(coefficient, 3), low: 0, high: MOST_COEFFICIENT }),
    )
  if (!(over >= 1 && over <= 40))
    return failed(
      problem('quantity.out-of-range', {
        text: `${short(over, 2)} °C`,
        what: 'the span of a coefficient',
        low: 1,
        high: '40 °C',
      }),
    )
  return ok(coefficient ** (10 / over))
}
