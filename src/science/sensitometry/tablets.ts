import { failed, ok, problem, type Result } from '../../kernel/index.js'
import { refusedOutside } from '../range.js'
import type { FigureMark, StripStep } from './definition.js'
import { SENSITOMETRY_LIMITS } from './limits.js'

/** Nominal densities of a kind of step tablet. One's own, measured, are better: cheap tablets miss by up to 0.10. */
export interface NominalTablet {
  readonly steps: number
  readonly first: number
  readonly apart: number
  readonly mark: FigureMark
}

/** The common tablets. 21 and 11 steps: NAVEDTRA 14209, p. 10-40; 31 steps is remembered. */
export const NOMINAL_TABLETS = {
  '21-step': { steps: 21, first: 0.05, apart: 0.15, mark: 'source' },
  '11-step': { steps: 11, first: 0.05, apart: 0.3, mark: 'source' },
  '31-step': { steps: 31, first: 0.05, apart: 0.1, mark: 'memory' },
} as const satisfies Record<string, NominalTablet>

/** The nominal densities of a tablet, lightest first. */
export const nominalDensities = ({ steps, first, apart }: NominalTablet): number[] =>
  Array.from({ length: steps }, (_, i) => first + apart * i)

/**
 * Steps of a strip exposed behind a tablet: log H = log H of the lamp − density of the tablet's step.
 * `read` holds the film's densities in the order of the tablet's; the steps come back from the least light to
 * the most. Lists of different length, and values out of range, are refused.
 */
export function stepsBehindTablet(
  lampLogExposure: number,
  tablet: readonly number[],
  read: readonly number[],
): Result<StripStep[]> {
  if (tablet.length !== read.length)
    return failed(problem('curve.tablet-mismatch', { tablet: tablet.length, strip: read.length }))
  const { logExposure, density } = SENSITOMETRY_LIMITS
  const lamp = refusedOutside('curve.bad-value', 'The log exposure of the lamp', lampLogExposure, logExposure)
  if (lamp) return lamp
  for (const [name, values] of [
    ['tablet', tablet],
    ['film', read],
  ] as const)
    for (const [i, value] of values.entries()) {
      const refused = refusedOutside('curve.bad-value', `The density of ${name} step ${i + 1}`, value, density)
      if (refused) return refused
    }
  const steps = read.map((value, i) => ({ logExposure: lampLogExposure - (tablet[i] as number), density: value }))
  return ok(steps.sort((one, other) => one.logExposure - other.logExposure))
}
