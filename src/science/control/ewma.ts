import { ok, type Result } from '../../kernel/index.js'
import { refusedOutside } from '../range.js'
import { refusedValues } from './checked.js'
import { CONTROL_RANGES } from './limits.js'

/** A chart of exponentially weighted moving averages: it sees small lasting shifts that single values hide. */
export interface EwmaChart {
  readonly averages: readonly number[]
  readonly lower: number | null
  readonly upper: number
  readonly outside: readonly number[]
}

/** What a chart of moving averages starts from. */
export interface EwmaSettings {
  /** Where the averages start: the aim, or the mean of earlier values. */
  readonly start: number
  /** Standard deviation of single values from earlier ones. */
  readonly deviation: number
  /** Weight of the newest value, 0.05 to 1. Default 0.3. */
  readonly weight?: number
  /** Limits in standard deviations, 1 to 6. Default 3. */
  readonly width?: number
  readonly oneSided?: boolean
}

/**
 * EWMA: z = λ·value + (1 − λ)·z before; limits start ± width · deviation · √(λ / (2 − λ)), those of a chart that
 * has run for a while. One to 2000 values; else refused.
 * Source: NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.4.
 */
export function ewmaChart(values: readonly number[], settings: EwmaSettings): Result<EwmaChart> {
  const { start, deviation, weight = 0.3, width = 3, oneSided = false } = settings
  const refused =
    refusedValues('An EWMA chart', values, 1) ??
    refusedOutside('control.bad-value', 'A start', start, CONTROL_RANGES.value, 'start') ??
    refusedOutside('control.bad-value', 'A standard deviation', deviation, { low: 0, high: 1e6 }, 'deviation') ??
    refusedOutside('control.bad-value', 'A weight', weight, { low: 0.05, high: 1 }, 'weight') ??
    refusedOutside('control.bad-value', 'A width', width, { low: 1, high: 6 }, 'width')
  if (refused) return refused
  let average = start
  const averages = values.map((value) => {
    average = weight * value + (1 - weight) * average
    return average
  })
  const half = width * deviation * Math.sqrt(weight / (2 - weight))
  const [lower, upper] = [oneSided ? null : start - half, start + half]
  return ok({
    averages,
    lower,
    upper,
    outside: averages.flatMap((z, i) => (z > upper || (lower !== null && z < lower) ? [i] : [])),
  })
}
