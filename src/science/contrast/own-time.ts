import { failed, ok, problem, type Result, type Seconds } from '../../kernel/index.js'
import { brent } from '../fitting/index.js'
import { refusedOutside } from '../range.js'
import { short } from '../saying.js'
import { leastThrough, misfitOf } from './chi.js'
import type { FittedContrast, OwnTime } from './definition.js'
import { timeForContrast } from './law.js'
import { CONTRAST_LIMITS as LIMITS } from './limits.js'

/** 95 % point of chi-square with one degree of freedom. */
const CHI_SQUARE_95 = 3.841459

/**
 * One's own time for a wanted contrast, with its 95 % interval: all times through which a law passes that fits the
 * strips nearly as well as the best one (profile likelihood), strip scatter and reading errors counted. So three
 * strips have an interval although their law has no misfit.
 *
 * Contrast 0.02 to 6. Refused at or above G∞, and more than one N (0.25 in 1/G) outside the strips.
 * Source of the interval: Bates & Watts, Nonlinear Regression Analysis, 1988, §6.1. Some 5 ms.
 */
export function ownTime(fitted: FittedContrast, contrast: number): Result<OwnTime> {
  const wrong = refusedOutside('contrast.bad-value', 'A contrast', contrast, LIMITS.contrast, 'contrast')
  if (wrong) return wrong
  const contrasts = fitted.points.map((point) => point.contrast)
  const [lowest, highest] = [Math.min(...contrasts), Math.max(...contrasts)]
  const time = timeForContrast(fitted.law, contrast)
  if (!time.ok) return time
  if (1 / contrast > 1 / lowest + LIMITS.oneN || 1 / contrast < 1 / highest - LIMITS.oneN) {
    const details = { wanted: short(contrast, 3), lowest: short(lowest, 3), highest: short(highest, 3) }
    return failed(problem('contrast.beyond-strips', details, 'contrast'))
  }
  return ok({
    time: time.value,
    ...interval(fitted, contrast, time.value),
    beyondStrips: contrast < lowest || contrast > highest,
  })
}

function interval(
  fitted: FittedContrast,
  contrast: number,
  best: number,
): { low: Seconds | null; high: Seconds | null } {
  const misfit = misfitOf(fitted.points, fitted.scatter.value)
  const freeStart = fitted.method === 'least-squares'
  const least = misfit.of(fitted.law).reduce((sum, r) => sum + r * r, 0)
  const over = (time: number): number =>
    leastThrough(fitted.points, misfit, fitted.law, { time, contrast }, freeStart) - least - CHI_SQUARE_95
  const end = (towards: number): Seconds | null => {
    let near = best
    // Goes out by growing steps until the strips speak against it.
    for (let reach = 0.05; reach < 4; reach *= 1.8) {
      const far = best * Math.exp(towards * reach)
      if (over(far) > 0) return brent(over, near, far, 1e-4 * best) as Seconds
      near = far
    }
    return null
  }
  return { low: end(-1), high: end(1) }
}
