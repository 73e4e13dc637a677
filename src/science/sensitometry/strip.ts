import { failed, ok, problem, type Result } from '../../kernel/index.js'
import { refusedOutside } from '../range.js'
import { short } from '../saying.js'
import type { Strip, StripInput, StripStep } from './definition.js'
import { SENSITOMETRY_LIMITS as LIMITS } from './limits.js'

/**
 * Checks what a person states about a strip: 4 to 64 steps from the least light to the most, densities 0 to 6,
 * no fall beyond what reading errors explain. Defaults are filled in. Refused with the step that is wrong.
 */
export function defineStrip(input: StripInput): Result<Strip> {
  const { steps, baseFog, exposure = 'relative' } = input
  const { readingError = LIMITS.readingError, stripScatter = LIMITS.stripScatter } = input
  if (steps.length < LIMITS.steps.fewest)
    return failed(problem('curve.too-few-steps', { count: steps.length, fewest: LIMITS.steps.fewest }, 'steps'))
  if (steps.length > LIMITS.steps.most)
    return failed(problem('curve.too-many-steps', { count: steps.length, most: LIMITS.steps.most }, 'steps'))
  const readings = baseFog?.readings ?? 1
  const refused =
    refusedOutside('curve.bad-value', 'A reading error', readingError, LIMITS.readingErrors, 'readingError') ??
    refusedOutside('curve.bad-value', 'A strip scatter', stripScatter, LIMITS.stripScatters, 'stripScatter') ??
    (baseFog && refusedOutside('curve.bad-value', 'Base and fog', baseFog.density, LIMITS.density, 'baseFog')) ??
    refusedOutside('curve.bad-value', 'The number of readings of base and fog', readings, { low: 1, high: 1000 }) ??
    badStep(steps) ??
    fallingStep(steps, readingError)
  if (refused) return refused
  return ok({
    steps,
    baseFog: baseFog ? { density: baseFog.density, readings } : null,
    exposure,
    readingError,
    stripScatter,
  })
}

function badStep(steps: readonly StripStep[]) {
  for (const [i, { logExposure, density }] of steps.entries()) {
    const field = `steps[${i}]`
    const refused =
      refusedOutside('curve.bad-value', `The log exposure of step ${i + 1}`, logExposure, LIMITS.logExposure, field) ??
      refusedOutside('curve.bad-value', `The density of step ${i + 1}`, density, LIMITS.density, field)
    if (refused) return refused
    const before = steps[i - 1]
    if (before && !(logExposure - before.logExposure >= LIMITS.closest)) {
      const details = { step: i + 1, first: short(before.logExposure, 3), second: short(logExposure, 3) }
      return failed(problem('curve.steps-out-of-order', details, field))
    }
  }
  return null
}

/** A reading far below an earlier one is a mistake (or reversal by light), never noise. */
function fallingStep(steps: readonly StripStep[], readingError: number) {
  const most = LIMITS.fall * Math.SQRT2 * readingError
  let densest = Number.NEGATIVE_INFINITY
  for (const [i, { density }] of steps.entries()) {
    if (density < densest - most) {
      const details = { step: i + 1, first: short(densest, 3), second: short(density, 3) }
      return failed(problem('curve.falls', details, `steps[${i}]`))
    }
    densest = Math.max(densest, density)
  }
  return null
}
