import { failed, ok, problem, type Result } from '../../kernel/index.js'
import { refusedOutside } from '../range.js'
import { CONTRAST_LIMITS as LIMITS } from './limits.js'

/** One's own scatter from strip to strip. */
export interface StripScatter {
  /** Standard deviation of the contrast of one strip. */
  readonly value: number
  readonly degreesOfFreedom: number
}

/**
 * One's own standard deviation of contrast from strip to strip, by strips developed alike: each group holds the
 * contrasts of strips that had the same time, and the deviations from the groups' means are pooled. It replaces the
 * assumed 0.02; with few strips it is uncertain, so at least five deviations must be left over.
 *
 * Groups of two or more contrasts of 0.02 to 6; else refused, as is a scatter outside 0.001 to 0.5, which no
 * developing by hand has. Definition: pooled standard deviation, NIST/SEMATECH e-Handbook 1.3.5.
 */
export function stripScatterOf(groups: readonly (readonly number[])[]): Result<StripScatter> {
  for (const contrast of groups.flat()) {
    const refused = refusedOutside('contrast.bad-value', 'A contrast', contrast, LIMITS.contrast, 'groups')
    if (refused) return refused
  }
  const degreesOfFreedom = groups.reduce((sum, group) => sum + Math.max(0, group.length - 1), 0)
  if (degreesOfFreedom < FEWEST)
    return failed(problem('contrast.too-few-repeats', { fewest: FEWEST, count: degreesOfFreedom }, 'groups'))
  const squares = groups.reduce((sum, group) => {
    const mean = group.reduce((total, contrast) => total + contrast, 0) / group.length
    return sum + group.reduce((total, contrast) => total + (contrast - mean) ** 2, 0)
  }, 0)
  const value = Math.sqrt(squares / degreesOfFreedom)
  return (
    refusedOutside('contrast.bad-value', 'A scatter from strip to strip', value, LIMITS.scatters, 'groups') ??
    ok({ value, degreesOfFreedom })
  )
}

const FEWEST = 5
