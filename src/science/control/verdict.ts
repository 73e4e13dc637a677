import { ok, type Result } from '../../kernel/index.js'
import { refusedOutside } from '../range.js'
import { meanOf, refusedValues } from './checked.js'
import type { ControlLimits, ControlVerdict } from './definition.js'
import { CONTROL_RANGES } from './limits.js'
import { lastMoves, TREND_MOVES } from './rules.js'

/** A deviation on a limit is inside it; readings to 0.01 are not exact in binary. */
const HAIR = 1e-7

/**
 * The operating level of a quantity: the mean of the first strips, five by custom, during which nothing is judged.
 * Two to 2000 densities; else refused. Source: FDA guidance to 21 CFR 900.12; NAVEDTRA 14208.
 */
export const operatingLevel = (densities: readonly number[]): Result<number> =>
  refusedValues('An operating level', densities, 2) ?? ok(meanOf(densities))

/** The trend that ends at the last value, when it counts for these limits. */
const trendOf = (values: readonly number[], limits: ControlLimits) => {
  const { moves, rising } = lastMoves(values)
  return moves >= TREND_MOVES && (rising || limits.lower !== null) ? { moves, rising } : null
}

/** The limit that a deviation breaks; null inside both. */
function broken(deviation: number, { lower, upper }: ControlLimits): number | null {
  if (deviation > upper + HAIR) return upper
  return lower !== null && deviation < lower - HAIR ? lower : null
}

/**
 * Act or wait: judges the last plot of a quantity against its aim. Outside a limit the first answer is to read
 * again and run a second strip; when `second`, its value, is outside on the same side, no film until it is cured.
 * Inside, five moves one way are a trend, past the warning is a watch, and anything else is chance: leave alone.
 *
 * One to 2000 values, in order of time, in the units of the aim; else refused.
 * Sources: 21 CFR 900.12(e)(1); US Army SS0513, p. 71; NAVEDTRA 14208 and 14209, p. 10-42.
 */
export function judge(
  values: readonly number[],
  aim: number,
  limits: ControlLimits,
  second?: number,
): Result<ControlVerdict> {
  const refused =
    refusedValues('A verdict', values, 1) ??
    refusedOutside('control.bad-value', 'An aim', aim, CONTROL_RANGES.value, 'aim') ??
    (second === undefined
      ? null
      : refusedOutside('control.bad-value', 'The second strip', second, CONTROL_RANGES.value, 'second'))
  if (refused) return refused
  const deviation = (values.at(-1) as number) - aim
  const limit = broken(deviation, limits)
  if (limit !== null) {
    if (second === undefined) return ok({ code: 'second-strip', deviation, limit })
    const agrees = broken(second - aim, limits) === limit
    return agrees
      ? ok({ code: 'stop', deviation, limit, second: second - aim })
      : ok({ code: 'first-strip-wrong', deviation, second: second - aim })
  }
  const trend = trendOf(values, limits)
  if (trend) return ok({ code: 'trend', deviation, ...trend })
  const { warning } = limits
  const past =
    warning !== null && (deviation > warning + HAIR || (limits.lower !== null && deviation < -warning - HAIR))
  return ok(past ? { code: 'watch', deviation, warning: warning as number } : { code: 'leave-alone', deviation })
}
