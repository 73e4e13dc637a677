import { ok, type Result } from '../../kernel/index.js'
import { refusedOutside } from '../range.js'
import { STOP } from './density.js'

/** An average scene: 160 to 1, 2.20 in logarithms, 7⅓ stops (US Army SS0514, p. 2-19). */
export const AVERAGE_SUBJECT_RANGE = 2.2

/** What flare makes of a subject's range. */
export interface RangeAtFilm {
  /** Lightest to darkest at the film, as a ratio. */
  readonly ratio: number
  /** The same as a difference of log exposure. */
  readonly logRange: number
  /** What flare took off the subject's log range. */
  readonly lost: number
}

/**
 * Range at the film of a subject whose lightest part is `subjectRatio` (1 to 1,000,000) times its darkest, when
 * flare adds `flare` (0 to 100) times the light of the darkest everywhere: (L + f) / (1 + f). Outside, refused.
 */
export const rangeAtFilm = (subjectRatio: number, flare: number): Result<RangeAtFilm> => {
  const refused =
    refusedOutside('curve.bad-value', 'A subject range', subjectRatio, { low: 1, high: 1e6 }, 'subjectRatio') ??
    refusedOutside('curve.bad-value', 'A flare', flare, { low: 0, high: 100 }, 'flare')
  if (refused) return refused
  const ratio = (subjectRatio + flare) / (1 + flare)
  const logRange = Math.log10(ratio)
  return ok({ ratio, logRange, lost: Math.max(0, Math.log10(subjectRatio) - logRange) })
}

/** Log exposure range that a negative of a density range has room for, in logs and stops. */
export interface SubjectRoom {
  readonly logRange: number
  readonly stops: number
}

/**
 * How much log exposure fits between two net densities of the negative at an average gradient: their difference
 * over the gradient. Densities 0 to 6, the second above the first; gradient 0.02 to 6. Outside, refused.
 */
export const roomBetween = (fromNet: number, toNet: number, gradient: number): Result<SubjectRoom> => {
  const refused =
    refusedOutside('curve.bad-value', 'The lower density', fromNet, { low: 0, high: 6 }) ??
    refusedOutside('curve.bad-value', 'The upper density', toNet, { low: fromNet, high: 6 }) ??
    refusedOutside('curve.bad-value', 'A gradient', gradient, { low: 0.02, high: 6 })
  if (refused) return refused
  const logRange = (toNet - fromNet) / gradient
  return ok({ logRange, stops: logRange / STOP })
}

/**
 * Contrast of print against subject: the product of the gradients of film and paper (0.02 to 6 each, else
 * refused). It holds in the middle of both, not in toes and shoulders. Source: an encyclopaedia, "Sensitometry".
 */
export const printGamma = (film: number, paper: number): Result<number> =>
  refusedOutside('curve.bad-value', 'The gradient of the film', film, { low: 0.02, high: 6 }) ??
  refusedOutside('curve.bad-value', 'The gradient of the paper', paper, { low: 0.02, high: 6 }) ??
  ok(film * paper)
