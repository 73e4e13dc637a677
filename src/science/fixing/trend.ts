import { failed, ok, problem, type Result, type Seconds } from '../../kernel/index.js'
import { type Line, linearLeastSquares, studentT95 } from '../fitting/index.js'
import { refusedOutside } from '../range.js'
import { CLEARING_RANGE, FINISHED_AT } from './clearing.js'

/** One clearing test of a bath and the rolls it had fixed by then. */
export interface ClearingTest {
  readonly rolls: number
  readonly clearing: Seconds
}

/** Where the tests say that the bath ends. */
export interface ClearingTrend {
  /** Rolls in all, from fresh, at which the clearing time will have doubled. */
  readonly endsAt: number
  /** 95 % by the scatter of the tests about their line; null where they leave that end open (two tests leave both). */
  readonly low: number | null
  readonly high: number | null
  /** Seconds that a roll adds to the clearing time; null where tests at one count find the bath finished. */
  readonly perRoll: number | null
  /** Tests that the line goes through, the fresh bath's among them. */
  readonly tests: number
}

const MOST_TESTS = 500
/** Counts nearer than the smallest sheet are one count: no line goes through them. */
const APART = 0.01
/** A line that comes to the level past so many rolls is one that does not grow. */
const MOST_ROLLS = 10_000

/**
 * The straight line through clearing times on rolls, and where it comes to twice the fresh time. The fresh bath counts
 * as a test at 0 rolls unless one is given. Refused: one count only; a clearing time that does not grow. The interval is
 * Fieller's for where a line crosses a level (Draper & Smith, Applied Regression Analysis, §3.2). A last test that finds
 * the bath finished ends it there, whatever the line says.
 * Fresh 0:30, 0:36 after 6 rolls and 0:42 after 12: doubled after 30.
 */
export function clearingTrend(fresh: Seconds, given: readonly ClearingTest[]): Result<ClearingTrend> {
  const refused = refusedTests(fresh, given)
  if (refused) return refused
  const tests = given.some(({ rolls }) => rolls === 0) ? given : [{ rolls: 0, clearing: fresh }, ...given]
  const level = FINISHED_AT * fresh
  const last = tests.reduce((latest, test) => (test.rolls >= latest.rolls ? test : latest))
  const done = last.clearing >= level ? last.rolls : Number.POSITIVE_INFINITY
  const apart = last.rolls - Math.min(...tests.map(({ rolls }) => rolls)) >= APART
  if (tests.length > MOST_TESTS || (!apart && done === Number.POSITIVE_INFINITY))
    return failed(problem('fixing.too-few-tests', { count: tests.length, most: MOST_TESTS }))
  if (!apart) return ok({ endsAt: done, low: null, high: null, perRoll: null, tests: tests.length })
  return alongLine(tests, level, done)
}

/** The end by the line, at most where the bath was found finished. */
function alongLine(tests: readonly ClearingTest[], level: number, done: number): Result<ClearingTrend> {
  const line = linearLeastSquares(
    tests.map(({ rolls }) => rolls),
    tests.map(({ clearing }) => clearing),
  )
  const endsAt = line.slope > 0 ? (level - line.intercept) / line.slope : MOST_ROLLS
  if (endsAt >= MOST_ROLLS && done === Number.POSITIVE_INFINITY)
    return failed(problem('fixing.no-trend', { count: tests.length }))
  const held = (rolls: number) => Math.min(done, Math.max(0, rolls))
  const { low, high } = crossing(tests, line, level)
  return ok({
    endsAt: held(endsAt),
    low: low === null ? null : held(low),
    high: high === null || high >= MOST_ROLLS ? null : held(high),
    perRoll: line.slope,
    tests: tests.length,
  })
}

function refusedTests(fresh: Seconds, tests: readonly ClearingTest[]) {
  const wrong = refusedOutside('fixing.bad-value', 'The clearing time when fresh, in seconds,', fresh, CLEARING_RANGE)
  if (wrong) return wrong
  for (const { rolls, clearing } of tests) {
    const refused =
      refusedOutside('fixing.bad-value', 'Rolls', rolls, { low: 0, high: 10_000 }) ??
      refusedOutside('fixing.bad-value', 'A clearing time in seconds', clearing, CLEARING_RANGE)
    if (refused) return refused
  }
  return null
}

/** Fieller's limits of where the line crosses a level. */
function crossing(tests: readonly ClearingTest[], line: Line, level: number): Pick<ClearingTrend, 'low' | 'high'> {
  const open = { low: null, high: null }
  const { slope, intercept, slopeStandardError, residualStandardError, degreesOfFreedom } = line
  if (slopeStandardError === null || residualStandardError === null) return open
  const t = studentT95(degreesOfFreedom)
  const g = (t * slopeStandardError) ** 2 / slope ** 2
  // A slope that may be none at all leaves the end open.
  if (g >= 1) return open
  const mean = tests.reduce((sum, { rolls }) => sum + rolls, 0) / tests.length
  const spread = tests.reduce((sum, { rolls }) => sum + (rolls - mean) ** 2, 0)
  const away = (level - (intercept + slope * mean)) / slope
  const half = ((t * residualStandardError) / slope) * Math.sqrt((1 - g) / tests.length + away ** 2 / spread)
  return { low: mean + (away - half) / (1 - g), high: mean + (away + half) / (1 - g) }
}
