import { failed, ok, problem, type Result } from '../../kernel/index.js'
import { refusedOutside } from '../range.js'
import { STOP } from './density.js'
import { SPEED_CRITERION } from './limits.js'

/**
 * The two published ways from N to a wanted average gradient. They differ in their normal range, density range and
 * flare, and meet at N−1 only: a figure of one must never be used with one of the other.
 *
 * - `no-flare`: normal 7 stops, a density range of 1.20 for grade 2 by diffuse light.
 * - `flare`: normal 7⅓ stops, a range of 1.05 for grade 2, less 0.40 of flare.
 */
export type ZoneModelName = 'no-flare' | 'flare'

/** The figures of a model: normal stops, density range of the negative, flare in log exposure. */
export interface ZoneModel {
  readonly name: ZoneModelName
  readonly normalStops: number
  readonly densityRange: number
  readonly flare: number
}

/** Idea of `no-flare`: Lambrecht & Woodhouse; both as practitioners state them. Stops here are the trade's 0.30. */
export const ZONE_MODELS = {
  'no-flare': { name: 'no-flare', normalStops: 7, densityRange: 1.2, flare: 0 },
  flare: { name: 'flare', normalStops: 22 / 3, densityRange: 1.05, flare: 0.4 },
} as const satisfies Record<ZoneModelName, ZoneModel>

/** Density range for a condenser enlarger in the model with flare; remembered. */
export const CONDENSER_DENSITY_RANGE = 0.8

const TRADE_STOP = 0.3
const MOST_N = 3

/** What N asks of the negative, with the model that says so. */
export interface WantedContrast {
  readonly model: ZoneModelName
  readonly n: number
  readonly stops: number
  readonly gradient: number
}

/**
 * The average gradient that N asks for: density range over the log range of the subject at the film. N from −3 to
 * +3, also in parts; a density range of one's own between 0.4 and 2. Outside, refused.
 */
export function contrastForN(n: number, model: ZoneModelName, densityRange?: number): Result<WantedContrast> {
  const { normalStops, densityRange: own, flare } = ZONE_MODELS[model]
  const range = densityRange ?? own
  const refused =
    refusedOutside('curve.bad-value', 'N', n, { low: -MOST_N, high: MOST_N }, 'n') ??
    refusedOutside('curve.bad-value', 'A density range', range, { low: 0.4, high: 2 }, 'densityRange')
  if (refused) return refused
  const stops = normalStops - n
  return ok({ model, n, stops, gradient: range / (TRADE_STOP * stops - flare) })
}

/**
 * The N that a measured average gradient stands for in one model: the inverse of `contrastForN`. Gradients that
 * would be past N−3 or N+3 are refused.
 */
export function nOfContrast(gradient: number, model: ZoneModelName, densityRange?: number): Result<WantedContrast> {
  const least = contrastForN(-MOST_N, model, densityRange)
  if (!least.ok) return least
  const most = contrastForN(MOST_N, model, densityRange)
  if (!most.ok) return most
  const range = { low: round(least.value.gradient), high: round(most.value.gradient) }
  const refused = refusedOutside('curve.bad-value', 'A gradient', round(gradient), range, 'gradient')
  if (refused) return refused
  const { normalStops, densityRange: own, flare } = ZONE_MODELS[model]
  const stops = ((densityRange ?? own) / gradient + flare) / TRADE_STOP
  return ok({ model, n: normalStops - stops, stops, gradient })
}

/** To four decimals, so that the ends of the range are in it. */
const round = (value: number): number => Math.round(value * 1e4) / 1e4

/** Stops under the meter where each zone lies: zone V is the meter's own. */
export const stopsFromMeter = (zone: number): Result<number> =>
  refusedOutside('curve.bad-value', 'A zone', zone, { low: 0, high: 10 }, 'zone') ?? ok(zone - 5)

/** A series of zones read off one's own negatives. */
export interface ZoneReading {
  /** Whether zone I has the speed point's density, 0.10 over base and fog, or more. */
  readonly speedMet: boolean
  /** Mean gradient between the two zones asked about, per log exposure with a stop of 0.30103. */
  readonly gradient: number
}

/**
 * Judges densities over base and fog of zones 0, I, II … (index is zone) exposed a stop apart: is the speed met at
 * zone I, and the mean gradient between two zones (I and VIII by custom). Densities 0 to 6; the zones must be in
 * the list, the second above the first. Refused otherwise.
 */
export function readZones(netDensities: readonly number[], fromZone = 1, toZone = 8): Result<ZoneReading> {
  const last = netDensities.length - 1
  const refusedZone =
    refusedOutside('curve.bad-value', 'The lower zone', fromZone, { low: 0, high: Math.max(0, last - 1) }) ??
    refusedOutside('curve.bad-value', 'The upper zone', toZone, { low: fromZone + 1, high: Math.max(1, last) })
  if (refusedZone) return refusedZone
  for (const [zone, density] of netDensities.entries()) {
    const refused = refusedOutside('curve.bad-value', `The density of zone ${zone}`, density, { low: -0.05, high: 6 })
    if (refused) return refused
  }
  const [low, high, first] = [netDensities[fromZone], netDensities[toZone], netDensities[1]]
  if (low === undefined || high === undefined || first === undefined)
    return failed(problem('curve.bad-value', { what: 'A zone', value: `${fromZone}`, low: 0, high: last }))
  return ok({
    speedMet: first >= SPEED_CRITERION.speedPoint - 1e-9,
    gradient: (high - low) / (STOP * (toZone - fromZone)),
  })
}
