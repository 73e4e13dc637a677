import { type Celsius, failed, ok, problem, type Result } from '../../kernel/index.js'
import { sayTemperature } from '../saying.js'
import { coefficientFor } from './coefficient.js'
import type { BasisInput, SheetPoint, TimeBasis } from './definition.js'
import { isOutside, LIMITS } from './limits.js'
import { sheetPoints } from './sheet-points.js'

type Range = TimeBasis['usable']

/**
 * The one door to a developing time: checks what a person states, fills the rest, and returns a basis that
 * everything else here trusts. It refuses (never repairs): no points or more than 24, a point outside 0–45 °C or
 * 0:05–6:00:00, two times at one temperature, slower when warmer on an ordinary developer, a coefficient not
 * above 1 or over 6 (stated, or steeper points than rounding explains), a range that does not hold the points,
 * a fixed time with other than one point.
 */
export function defineBasis(input: BasisInput): Result<TimeBasis> {
  const law = input.law ?? 'exponential'
  const points = sheetPoints(input)
  if (!points.ok) return points
  const coefficient = coefficientFor(input, points.value, law)
  if (!coefficient.ok) return coefficient
  const usable = usableRange(input, points.value)
  if (!usable.ok) return usable
  const window = fixedWindow(input, points.value)
  if (!window.ok) return window
  return ok({
    kind: input.kind,
    law,
    points: points.value,
    developerClass: input.developerClass ?? 'unknown',
    coefficient: coefficient.value,
    usable: usable.value,
    window: window.value,
    reference: nearestTwenty(points.value),
  })
}

function usableRange(input: BasisInput, points: readonly SheetPoint[]): Result<Range> {
  const span = spanOf(points)
  if (input.usable === undefined) return ok(defaultRange(input, span))
  const { from, to } = input.usable
  const possible = from >= LIMITS.temperature.from && to <= LIMITS.temperature.to && from <= to
  if (!possible || isOutside(span.from, { from, to }) || isOutside(span.to, { from, to }))
    return failed(problem('times.bad-range', { from: sayTemperature(from), to: sayTemperature(to) }, 'usable'))
  return ok({ from, to })
}

function defaultRange(input: BasisInput, span: Range): Range {
  // A fixed time is refused at an impossible temperature only; a single bath by its sheet, which is narrower.
  if (input.kind === 'fixed') return { from: LIMITS.temperature.from, to: LIMITS.temperature.to }
  const { from, to } = LIMITS.usable
  return { from: Math.min(from, span.from) as Celsius, to: Math.max(to, span.to) as Celsius }
}

function fixedWindow(input: BasisInput, points: readonly SheetPoint[]): Result<Range | null> {
  if (input.kind !== 'fixed') return ok(null)
  const { temperature } = points[0] as SheetPoint
  const within = LIMITS.fixedWindow.within
  if (input.window === undefined)
    return ok({ from: (temperature - within) as Celsius, to: (temperature + within) as Celsius })
  const { from, to } = input.window
  const possible = from >= LIMITS.temperature.from && to <= LIMITS.temperature.to && from <= to
  if (!possible || isOutside(temperature, { from, to })) {
    const details = { from: sayTemperature(from), to: sayTemperature(to), temperature: sayTemperature(temperature) }
    return failed(problem('times.bad-window', details, 'window'))
  }
  return ok({ from, to })
}

const spanOf = (points: readonly SheetPoint[]): Range => ({
  from: (points[0] as SheetPoint).temperature,
  to: (points[points.length - 1] as SheetPoint).temperature,
})

/** The point nearest 20 °C, the colder of two equally near (give or take the arithmetic of °F). */
function nearestTwenty(points: readonly SheetPoint[]): SheetPoint {
  const away = (point: SheetPoint): number => Math.abs(point.temperature - 20)
  return points.reduce((nearest, point) => (away(point) < away(nearest) - 1e-9 ? point : nearest))
}
