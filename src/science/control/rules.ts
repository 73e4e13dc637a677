import { ok, type Result } from '../../kernel/index.js'
import { refusedOutside } from '../range.js'
import { refusedValues } from './checked.js'
import { CONTROL_RANGES } from './limits.js'

/**
 * The run rules of Western Electric (1956) as the NIST/SEMATECH e-Handbook, 6.3.2, gives them, and the trend of the
 * US Army's manual SS0513, p. 71.
 */
export type RunRule = 'beyond-3' | 'two-of-three-beyond-2' | 'four-of-five-beyond-1' | 'eight-on-one-side' | 'trend'

/** One pattern found in a series. */
export interface RuleHit {
  readonly rule: RunRule
  /** Position, from 0, of the value that completes the pattern. */
  readonly at: number
  readonly rising: boolean
}

/**
 * How many moves one way make a trend. The manual's words are "five or more points moving in one direction". The
 * first plot of a series has not moved, so five moving points are five moves, six plots. By chance that happens once
 * in 360 series of six, about as seldom as a point beyond three standard deviations; five plots would be one in 60.
 */
export const TREND_MOVES = 5

/** Length of the run in one direction that ends at the last value: moves without a standstill, and which way. */
export function lastMoves(values: readonly number[]): { readonly moves: number; readonly rising: boolean } {
  const steps = values.slice(1).map((value, i) => Math.sign(round(value - (values[i] as number))))
  const last = steps.at(-1) ?? 0
  let moves = 0
  while (last !== 0 && steps.at(-1 - moves) === last) moves++
  return { moves, rising: last > 0 }
}

/** Differences of readings to 0.01 are not exact in binary; a ten-millionth is no move. */
const round = (difference: number): number => (Math.abs(difference) < 1e-7 ? 0 : difference)

/**
 * Every pattern in a series, by the value that completes it, about a centre with a standard deviation (above 0) of
 * single values. `oneSided` looks at the upper side only. Up to 2000 values; else refused.
 */
export function runRules(
  values: readonly number[],
  centre: number,
  deviation: number,
  oneSided = false,
): Result<readonly RuleHit[]> {
  const refused =
    refusedValues('A series', values, 1) ??
    refusedOutside('control.bad-value', 'A centre', centre, CONTROL_RANGES.value, 'centre') ??
    refusedOutside('control.bad-value', 'A standard deviation', deviation, { low: 1e-9, high: 1e6 }, 'deviation')
  if (refused) return refused
  const scores = values.map((value) => (value - centre) / deviation)
  const sides = oneSided ? [1] : [1, -1]
  return ok(
    values.flatMap((_, at) => [
      ...sides.flatMap((side) =>
        patterns(
          scores.slice(0, at + 1).map((score) => score * side),
          at,
          side > 0,
        ),
      ),
      ...trendAt(values.slice(0, at + 1), at, oneSided),
    ]),
  )
}

/** `scores` end at the value looked at, turned so that up is the side looked at. */
function patterns(scores: readonly number[], at: number, rising: boolean): RuleHit[] {
  const now = scores.at(-1) as number
  const beyond = (limit: number, last: number): number => scores.slice(-last).filter((score) => score > limit).length
  const hits: RunRule[] = []
  if (now > 3) hits.push('beyond-3')
  if (now > 2 && beyond(2, 3) >= 2) hits.push('two-of-three-beyond-2')
  if (now > 1 && beyond(1, 5) >= 4) hits.push('four-of-five-beyond-1')
  if (scores.length >= 8 && beyond(0, 8) === 8) hits.push('eight-on-one-side')
  return hits.map((rule) => ({ rule, at, rising }))
}

function trendAt(values: readonly number[], at: number, oneSided: boolean): RuleHit[] {
  const { moves, rising } = lastMoves(values)
  return moves >= TREND_MOVES && (rising || !oneSided) ? [{ rule: 'trend', at, rising }] : []
}
