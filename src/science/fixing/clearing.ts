import { ok, type Result, type Seconds, seconds } from '../../kernel/index.js'
import { refusedOutside } from '../range.js'
import { FIXING_FAMILIES, type FixingFamily } from './families.js'

/** A fixer whose clearing time has grown so many times is finished, at exactly twice too (NAVEDTRA 14209, p. 249). */
export const FINISHED_AT = 2

/** What a clearing test says. */
export interface ClearingVerdict {
  /** How long to fix now. */
  readonly fixFor: Seconds
  /** Clearing time now over that of the fresh bath. */
  readonly grown: number
  readonly verdict: 'usable' | 'finished'
  /** The clearing time at which the bath is finished. */
  readonly finishedAt: Seconds
}

/** Clearing times that can be: seconds. */
export const CLEARING_RANGE = { low: 3, high: 3600 }

/**
 * A clip of undeveloped film, timed until it is clear: fix for twice that (three times for tabular and high-iodide
 * emulsions). `fresh` is the same film in the same fixer when it was new. 3 s to an hour; outside, refused.
 */
export function clearingVerdict(
  fresh: Seconds,
  now: Seconds,
  family: FixingFamily = 'ordinary',
): Result<ClearingVerdict> {
  const refused =
    refusedOutside('fixing.bad-value', 'The clearing time when fresh, in seconds,', fresh, CLEARING_RANGE, 'fresh') ??
    refusedOutside('fixing.bad-value', 'The clearing time now, in seconds,', now, CLEARING_RANGE, 'now')
  if (refused) return refused
  const grown = now / fresh
  return ok({
    fixFor: seconds(now * FIXING_FAMILIES[family].multiple),
    grown,
    verdict: now >= FINISHED_AT * fresh ? 'finished' : 'usable',
    finishedAt: seconds(FINISHED_AT * fresh),
  })
}
