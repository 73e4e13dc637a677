import { failed, ok, POSSIBLE, problem, type Result, type Seconds } from '../../kernel/index.js'
import { brent } from '../fitting/index.js'
import { sayTime } from '../saying.js'
import { curveOf } from './curve.js'
import type { CourseReading, TimeBasis } from './definition.js'
import { equivalentOf, type Stretch, stretchesOf } from './integral.js'
import { LIMITS } from './limits.js'
import { checkedReadings, outOfRange } from './readings.js'

/** The moment at which a course of temperatures has done the development wanted. */
export interface CourseTime {
  /** The moment of pouring out, on the clock of the readings. */
  readonly at: Seconds
  /** The same, counted from the first reading. */
  readonly elapsed: Seconds
}

/** To a tenth of a millisecond: far below what a hand can do, far above the last digit. */
const TOLERANCE = 1e-5

/**
 * The moment at which a course of temperatures reaches a dose of `target` equivalent seconds. After the last
 * reading its temperature is held. One reading is enough: then it is the plan at a constant temperature.
 *
 * Refused: readings as for `dose`, a target that is not above 0, and a target not reached within `limit`
 * seconds of the first reading (24 h when nothing is said).
 */
export function timeForCourse(
  basis: TimeBasis,
  course: readonly CourseReading[],
  target: Seconds,
  { limit = LIMITS.answerTime.to }: { readonly limit?: Seconds } = {},
): Result<CourseTime> {
  const checked = checkedReadings(basis, course, 1)
  if (!checked.ok) return checked
  if (!(target > 0 && target <= POSSIBLE.seconds.high))
    return failed(outOfRange(target, 'a development to reach', 'target'))
  const elapsed = elapsedUntil(basis, course, target)
  const at = (course[0] as CourseReading).at + elapsed
  if (!(elapsed <= limit) || at > POSSIBLE.seconds.high)
    return failed(problem('dose.never-reached', { limit: sayTime(limit) }))
  return ok({ at: at as Seconds, elapsed: elapsed as Seconds })
}

function elapsedUntil(basis: TimeBasis, course: readonly CourseReading[], target: number): number {
  let left = target
  for (const stretch of stretchesOf(basis, course)) {
    const whole = equivalentOf(basis, stretch)
    if (whole >= left) return stretch.start + within(basis, stretch, left)
    left -= whole
  }
  const [first, last] = [course[0] as CourseReading, course[course.length - 1] as CourseReading]
  const rate = basis.reference.time / Math.exp(curveOf(basis).lnTime(last.temperature))
  return last.at - first.at + left / rate
}

/** Seconds into a stretch at which it has done `left`, which it does reach. */
const within = (basis: TimeBasis, stretch: Stretch, left: number): number =>
  brent((duration) => equivalentOf(basis, stretch, duration) - left, 0, stretch.duration, TOLERANCE)
