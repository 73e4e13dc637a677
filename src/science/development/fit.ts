import type { Celsius, Seconds } from '../../kernel/index.js'
import { linearLeastSquares } from '../fitting/index.js'
import type { LawFit, RateLaw, SheetPoint, TimeBasis } from './definition.js'
import { activationEnergy, coefficientOf, slopeOf, warmth } from './law.js'

/**
 * One of the two laws laid through the points of a sheet: least squares of ln t on °C or on 1/T, all points
 * weighing the same. It gives slope, coefficient and misfit; answers to people come from `timeAt`, which keeps
 * to the sheet's own times.
 *
 * From a basis whose points cannot give a slope (one point, or points so close that rounding decides), the
 * line through its reference point with the basis's own coefficient. From bare points: two or more at
 * different temperatures; fewer is a bug and throws.
 * `timeAt` of a fit is for drawing and comparing: it knows no limits.
 */
export function fitLaw(from: TimeBasis | readonly SheetPoint[], law: RateLaw): LawFit {
  if (!isBasis(from)) return fitted(from, law)
  if (from.points.length > 1 && from.coefficient.origin === 'law') return fitted(from.points, law)
  const slope = slopeOf(law, from.coefficient.value)
  const intercept = Math.log(from.reference.time) - slope * warmth(law, from.reference.temperature)
  return described(from.points, law, { slope, intercept, slopeStandardError: null })
}

const isBasis = (from: TimeBasis | readonly SheetPoint[]): from is TimeBasis => 'coefficient' in from

const fitted = (points: readonly SheetPoint[], law: RateLaw): LawFit => described(points, law, lineThrough(points, law))

/** ln t on warmth by least squares. */
export const lineThrough = (points: readonly SheetPoint[], law: RateLaw) =>
  linearLeastSquares(
    points.map((point) => warmth(law, point.temperature)),
    points.map((point) => Math.log(point.time)),
  )

interface StraightLine {
  readonly slope: number
  readonly intercept: number
  readonly slopeStandardError: number | null
}

function described(points: readonly SheetPoint[], law: RateLaw, line: StraightLine): LawFit {
  const timeAt = (temperature: Celsius): Seconds =>
    Math.exp(line.intercept + line.slope * warmth(law, temperature)) as Seconds
  const misfits = points.map((point) => timeAt(point.temperature) / point.time - 1)
  const worst = misfits.reduce(
    (most, misfit, index) => (Math.abs(misfit) > Math.abs(misfits[most] as number) ? index : most),
    0,
  )
  return {
    law,
    // Warmth under Arrhenius is −1/T; people and books state the slope on 1/T.
    slope: law === 'exponential' ? line.slope : -line.slope,
    slopeStandardError: line.slopeStandardError,
    coefficient: coefficientOf(law, line.slope),
    activationEnergy: activationEnergy(law, line.slope),
    timeAt,
    misfits,
    worst: { index: worst, misfit: misfits[worst] as number },
  }
}
