import { ok, type Result } from '../../kernel/index.js'
import { refusedOutside } from '../range.js'
import { SENSITOMETRY_LIMITS } from './limits.js'

/** log10 of two: one stop. The trade's 0.30 is a rounding of it. */
export const STOP = Math.log10(2)

const TRANSMITTANCE = { low: 1e-6, high: 1 } as const

/**
 * Density of a transmittance between 0.000001 and 1 (a part, not a percentage): D = −log10 T.
 * Anything else, and T = 0, is refused. Source: Ives, Airplane Photography, 1920, ch. XVIII.
 */
export const densityOf = (transmittance: number): Result<number> =>
  // −0 would be written as such.
  refusedOutside('curve.bad-value', 'A transmittance', transmittance, TRANSMITTANCE) ??
  ok(Math.max(0, -Math.log10(transmittance)))

/** The part of the light that a density from 0 to 6 lets through: 10^−D; so 3.00 is 0.1 %. Outside, refused. */
export const transmittanceOf = (density: number): Result<number> =>
  refusedOutside('curve.bad-value', 'A density', density, SENSITOMETRY_LIMITS.density) ?? ok(10 ** -density)

/** How many times the light is weakened by a density from 0 to 6: 10^D. Outside, refused. */
export const opacityOf = (density: number): Result<number> =>
  refusedOutside('curve.bad-value', 'A density', density, SENSITOMETRY_LIMITS.density) ?? ok(10 ** density)

/** Stops in a difference of log exposure or density from −12 to 12; outside, refused. */
export const stopsIn = (logDifference: number): Result<number> =>
  refusedOutside('curve.bad-value', 'A log difference', logDifference, SENSITOMETRY_LIMITS.logExposure) ??
  ok(logDifference / STOP)
