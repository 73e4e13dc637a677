import { ok, type Result } from '../../kernel/index.js'
import { refusedOutside } from '../range.js'
import { meanOf, refusedValues } from './checked.js'
import { CONTROL_RANGES } from './limits.js'

/** d2 for two values: a mean moving range over it estimates the standard deviation. */
const RANGE_OF_TWO = 1.128
/** D4 for two values. */
const MOVING_RANGE_LIMIT = 3.267

/** A chart of single values with their moving ranges. */
export interface IndividualsChart {
  readonly centre: number
  readonly meanMovingRange: number
  /** Standard deviation by the moving ranges. */
  readonly deviation: number
  /** Null where falling is no fault. */
  readonly lower: number | null
  readonly upper: number
  readonly movingRanges: readonly number[]
  readonly movingRangeLimit: number
  /** Positions, from 0, of values outside the limits and of moving ranges above theirs (the later value of each). */
  readonly outside: readonly number[]
  readonly jumps: readonly number[]
}

/**
 * Individuals and moving range: centre ± 3 · mean moving range / 1.128, about the mean of the values or a stated
 * aim. `oneSided` for fog, where only a rise is a fault. Two to 2000 values; else refused.
 * Source: NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2.
 */
export function individualsChart(
  values: readonly number[],
  options: { readonly aim?: number; readonly oneSided?: boolean } = {},
): Result<IndividualsChart> {
  const centre = options.aim ?? meanOf(values)
  const refused =
    refusedValues('A chart of individuals', values, 2) ??
    refusedOutside('control.bad-value', 'An aim', centre, CONTROL_RANGES.value, 'aim')
  if (refused) return refused
  const movingRanges = values.slice(1).map((value, i) => Math.abs(value - (values[i] as number)))
  const meanMovingRange = meanOf(movingRanges)
  const deviation = meanMovingRange / RANGE_OF_TWO
  const [lower, upper] = [options.oneSided === true ? null : centre - 3 * deviation, centre + 3 * deviation]
  const movingRangeLimit = MOVING_RANGE_LIMIT * meanMovingRange
  return ok({
    centre,
    meanMovingRange,
    deviation,
    lower,
    upper,
    movingRanges,
    movingRangeLimit,
    outside: values.flatMap((value, i) => (value > upper || (lower !== null && value < lower) ? [i] : [])),
    jumps: movingRanges.flatMap((range, i) => (range > movingRangeLimit ? [i + 1] : [])),
  })
}
