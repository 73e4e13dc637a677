import type { ClearingVerdict, FixerLeft } from '../fixing/index.js'

/** Why film from a fixer cannot be washed safe. */
export type FixerFault = 'clearing-doubled' | 'count-used' | 'silver-loaded'

/**
 * What the fixer of this film was found to be. A wash cannot be asked about without one, and is judged only after one
 * that is usable: film from a loaded fixer holds silver salts that no water takes out.
 */
export type FixerVerdict =
  | { readonly state: 'usable'; readonly by: 'clearing-test' | 'count' }
  | { readonly state: 'finished'; readonly because: FixerFault }
  | { readonly state: 'unknown' }

/** By a clearing test of the bath. */
export const fixerByClearing = ({ verdict }: Pick<ClearingVerdict, 'verdict'>): FixerVerdict =>
  verdict === 'finished' ? { state: 'finished', because: 'clearing-doubled' } : { state: 'usable', by: 'clearing-test' }

/** The last digit of a sum of thirds must not condemn the roll that filled the count. */
const NEGLIGIBLE = 1e-9

/**
 * By what a bath has met, this film counted in: over its count, at its limit of silver, or at twice the clearing time by
 * the trend of tests it is finished. The roll that just fills the count was still fixed.
 */
export function fixerByLeft(
  left: Pick<FixerLeft, 'by' | 'taken' | 'carries' | 'silver' | 'silverLimit'>,
): FixerVerdict {
  if (left.by.tests !== null && left.by.tests <= 0) return { state: 'finished', because: 'clearing-doubled' }
  if (left.silver.usual >= left.silverLimit) return { state: 'finished', because: 'silver-loaded' }
  if (left.taken > left.carries + NEGLIGIBLE) return { state: 'finished', because: 'count-used' }
  return { state: 'usable', by: 'count' }
}
