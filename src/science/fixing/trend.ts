import { failed, ok, problem, type Result, type Seconds } from '../../kernel/index.js'
import { linearLeastSquares, studentT95 } from '../fitting/index.js'
import { refusedOutside } from '../range.js'
import { FINISHED_AT } from './clearing.js'

/** One clearing test of a bath and the rolls it had fixed by then. */
export interface ClearingTest {
  readonly rolls: number
  readonly clearing: Seconds
}

/** Where the tests say that the bath ends. */
export interface ClearingTrend {
  /** Rolls in all, from fresh, at which the clearing time will have doubled. */
  readonly endsAt: number
  /** 95 % by the scatter of the tests about their line; null where it leaves an end open, or two tests leave none. */
  readonly low: number | null
  readonly high: number | null
}

/**
 * The straight line through clearing times on rolls, and where it comes to twice the fresh time. Two tests at different
 * counts at least; refused when clearing does not grow. The interval is Fieller's for the crossing of a level
 * (Draper & Smith, Applied Regression Analysis, §3.2).
 */
export function clearingTrend(fresh: Seconds, tests: readonly ClearingTest[]): Result<ClearingTrend> {
  const wrong = refusedOutside('fixing.bad-value', 'The clearing time when fresh, in seconds,', fresh, {
    low: 3,
    high: 3600,
  })
  if (wrong) return wrong
  for (const { rolls, clearing } of tests) {
    const refused =
      refusedOutside('fixing.bad-value', 'Rolls', rolls, { low: 0, high: 10_000 }) ??
      refusedOutside('fixing.bad-value', 'A clearing time in seconds', clearing, { low: 3, high: 3600 })
    if (refused) return refused
  }
  if (tests.length > 500 || new Set(tests.map(({ rolls }) => rolls)).size < 2)
    return failed(problem('fixing.too-few-tests', { count: tests.length }))
  const line = linearLeastSquares(
    tests.map(({ rolls }) => rolls),
    tests.map(({ clearing }) => clearing),
  )
  if (line.slope <= 1e-9) return failed(problem('fixing.no-trend', {}))
  const level = FINISHED_AT * fresh
  const endsAt = (level - line.intercept) / line.slope
  return ok({ endsAt: Math.max(0, endsAt), ...crossing(tests, line, level) })
}

type Fitted = ReturnType<typeof linearLeastSquares>

/** Fieller's limits of where the line crosses a level. */
function crossing(tests: readonly ClearingTest[], line: Fitted, level: number): Pick<ClearingTrend, 'low' | 'high'> {
  const { slope, intercept, slopeStandardError, residualStandardError, degreesOfFreedom } = line
  if (slopeStandardError === null || residualStandardError === null) return { low: null, high: null }
  const t = studentT95(degreesOfFreedom)
  const mean = tests.reduce((sum, { rolls }) => sum + rolls, 0) / tests.length
  const spread = tests.reduce((sum, { rolls }) => sum + (rolls - mean) ** 2, 0)
  const g = (t * slopeStandardError) ** 2 / slope ** 2
  // A slope that may be none leaves the end open.
  if (g >= 1) return { low: null, high: null }
  const away = (level - (intercept + slope * mean)) / slope
  const half = ((t * residualStandardError) / slope) * Math.sqrt((1 - g) / tests.length + away ** 2 / spread)
  const middle = away
  return {
    low: Math.max(0, mean + (middle - half) / (1 - g)),
    high: Math.max(0, mean + (middle + half) / (1 - g)),
  }
}
