import { ok, type Result } from '../../kernel/index.js'
import { refusedOutside } from '../range.js'

const TIMES = { low: 0.1, high: 3600 } as const

/** A net density by matching greys under the enlarger. */
export interface MatchedDensity {
  /** Over base and fog, as the enlarger sees it: a condenser sees more than a densitometer. */
  readonly density: number
  readonly standardError: number
}

/**
 * Density over base and fog by the enlarger: the blank film prints a mid grey at one time, the frame to be measured
 * matches it at a longer one; D = log10 of their ratio. Times 0.1 to 3600 s, the second not shorter; outside,
 * refused. `timeError` is how well a match can be told, as a part of the time (0 to 0.5, default 0.05: two greys
 * a twentieth apart look alike). Each time counts with it. Correct with `calibrationOf`.
 */
export function densityByEnlarger(blankTime: number, matchedTime: number, timeError = 0.05): Result<MatchedDensity> {
  const refused =
    refusedOutside('curve.bad-value', 'The time of the blank film', blankTime, TIMES, 'blankTime') ??
    refusedOutside(
      'curve.bad-value',
      'The matching time',
      matchedTime,
      { low: blankTime, high: 3600 },
      'matchedTime',
    ) ??
    refusedOutside('curve.bad-value', 'The error of a match', timeError, { low: 0, high: 0.5 }, 'timeError')
  if (refused) return refused
  return ok({
    density: Math.log10(matchedTime / blankTime),
    standardError: (Math.SQRT2 * timeError) / Math.LN10,
  })
}
