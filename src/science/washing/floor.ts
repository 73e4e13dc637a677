import { WASH_FLOORS, type WashFloor, type WashScheme, type WashStep } from './definition.js'
import type { SpotReading, WashDone } from './tests.js'

/** The floor that a wash is held against. */
export interface FloorHeld extends WashFloor {
  readonly met: boolean
  /** A residual test on one's own film has allowed less than what is published. */
  readonly byOwnTest: boolean
}

/**
 * Which published scheme some steps are: after an aid; changes where there are no others, or enough of them whatever
 * runs besides; else running water.
 */
export function schemeOf(steps: readonly WashStep[], washAid: boolean): WashScheme {
  if (washAid) return 'after-aid'
  const changes = changesIn(steps)
  return changes === steps.length || changes >= WASH_FLOORS.changes.changes ? 'changes' : 'running'
}

export const changesIn = (steps: readonly WashStep[]): number => steps.filter(({ kind }) => kind === 'change').length

/**
 * The published least of a scheme, its time longer in the cold; or the least wash of one's own that a residual-hypo test
 * has passed, as long as no test failed after a wash that was no less. `cold` is the factor on the time, 1 or more.
 */
export function floorOf(done: WashDone, cold: number, readings: readonly SpotReading[]): FloorHeld {
  const published = WASH_FLOORS[done.scheme]
  const floor = { ...published, seconds: published.seconds * cold }
  const own = leastPassed(done, readings)
  if (own !== null && own.time < floor.seconds)
    return {
      seconds: own.time,
      changes: own.changes,
      source: 'a residual test on your own film',
      met: true,
      byOwnTest: true,
    }
  return { ...floor, met: done.time >= floor.seconds && done.changes >= floor.changes, byOwnTest: false }
}

/** The shortest own wash that passed, speaks for this one, and is contradicted by no failure. */
function leastPassed(done: WashDone, readings: readonly SpotReading[]): WashDone | null {
  const hypo = readings.filter(({ test }) => test === 'residual-hypo')
  const failures = hypo.filter(({ passed }) => !passed).map(({ washed }) => washed)
  const passes = hypo
    .filter(({ passed, washed }) => passed && noLess(done, washed))
    .map(({ washed }) => washed)
    .filter((washed) => !failures.some((failed) => noLess(failed, washed)))
  return passes.length === 0 ? null : passes.reduce((least, one) => (one.time < least.time ? one : least))
}

/** Whether a wash is at least as thorough as another in everything that counts, and of the same kind. */
const noLess = (one: WashDone, other: WashDone): boolean =>
  one.scheme === other.scheme &&
  one.time >= other.time &&
  one.changes >= other.changes &&
  one.temperature >= other.temperature &&
  one.waterPerRoll >= other.waterPerRoll &&
  (!(one.hardened ?? false) || (other.hardened ?? false))
