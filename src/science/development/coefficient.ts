import { failed, ok, problem, type Result } from '../../kernel/index.js'
import { type Line, studentT95 } from '../fitting/index.js'
import { short } from '../saying.js'
import { DEVELOPER_CLASSES } from './classes.js'
import type { BasisInput, RateLaw, SheetPoint, TimeBasis } from './definition.js'
import { lineThrough } from './fit.js'
import { coefficientOf, warmth } from './law.js'
import { LIMITS } from './limits.js'
import { halfStep } from './rounding.js'

type Coefficient = TimeBasis['coefficient']

/**
 * The ten-degree coefficient of a basis with its low and high end: by the points when there are two or more,
 * else the developer's own, else its class's default.
 *
 * Points so close together that the sheet's rounding decides their slope (two rows of a half-minute table,
 * one °F apart) say nothing about the coefficient: then one's own or the class's holds beyond them. Points
 * steeper than rounding can explain are refused.
 */
export function coefficientFor(input: BasisInput, points: readonly SheetPoint[], law: RateLaw): Result<Coefficient> {
  if (input.kind === 'fixed') return ok({ value: 1, low: 1, high: 1, origin: 'sheet' })
  const stated = input.coefficient
  if (stated !== undefined && !(stated > LIMITS.coefficient.above && stated <= LIMITS.coefficient.to))
    return refused(stated, 'coefficient')
  if (points.length === 1) return ok(withoutSlope(input))
  const bounds = { low: input.kind === 'single-bath' ? 1 / LIMITS.coefficient.to : 1, high: LIMITS.coefficient.to }
  const fit = byPoints(points, law)
  if (fit.value >= bounds.low && fit.value <= bounds.high)
    return ok({
      value: fit.value,
      low: Math.max(fit.low, bounds.low),
      high: Math.min(fit.high, bounds.high),
      origin: 'law',
    })
  if (fit.low > bounds.high || fit.high < bounds.low) return refused(fit.value, 'points')
  return ok(withoutSlope(input))
}

function withoutSlope(input: BasisInput): Coefficient {
  const half = LIMITS.coefficientRounding.half
  const stated = input.coefficient
  if (stated === undefined) return DEVELOPER_CLASSES[input.developerClass ?? 'unknown']
  return { value: stated, low: Math.max(LIMITS.coefficient.above, stated - half), high: stated + half, origin: 'sheet' }
}

function byPoints(points: readonly SheetPoint[], law: RateLaw): { value: number; low: number; high: number } {
  const line = lineThrough(points, law)
  // A flat table must not come out as slower when warmer by the last digit of the arithmetic.
  const slope = Math.abs(coefficientOf(law, line.slope) - 1) < 1e-12 ? 0 : line.slope
  const most = slopeByEnds(points, law, worstMisfit(points, law, line))
  const half =
    line.slopeStandardError === null
      ? most
      : Math.min(most, studentT95(line.degreesOfFreedom) * line.slopeStandardError)
  return {
    value: coefficientOf(law, slope),
    low: coefficientOf(law, slope + half),
    high: coefficientOf(law, slope - half),
  }
}

/** The largest departure of a point from the line, in ln t. */
const worstMisfit = (points: readonly SheetPoint[], law: RateLaw, line: Line): number =>
  Math.max(
    ...points.map(({ temperature, time }) =>
      Math.abs(Math.log(time) - line.intercept - line.slope * warmth(law, temperature)),
    ),
  )

/**
 * The slope if both end points were off, in opposite directions, by half a rounding step or the worst misfit. It
 * holds for two points, and caps Student's t for a few: with one degree of freedom that would claim a minute on
 * a sheet whose own points agree to seconds.
 */
function slopeByEnds(points: readonly SheetPoint[], law: RateLaw, misfit: number): number {
  const half = halfStep(points)
  const [cold, warm] = [points[0] as SheetPoint, points[points.length - 1] as SheetPoint]
  const off = ({ time }: SheetPoint) => Math.max(half / time, misfit)
  return (off(cold) + off(warm)) / Math.abs(warmth(law, warm.temperature) - warmth(law, cold.temperature))
}

function refused(coefficient: number, field: string): Result<never> {
  const said = coefficient > 1000 ? 'more than 1000' : short(coefficient, 2)
  const { above: low, to: high } = LIMITS.coefficient
  return failed(problem('times.bad-coefficient', { coefficient: said, low, high }, field))
}
