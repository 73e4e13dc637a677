import { failed, ok, type Problem, problem, type Result } from '../../kernel/index.js'
import { sayTemperature, sayTime } from '../saying.js'
import type { BasisInput, SheetPoint } from './definition.js'
import { LIMITS } from './limits.js'

/**
 * The points of a sheet, checked and sorted by temperature. The same point twice counts once; two different
 * times at one temperature, or a time that grows with warmth on an ordinary developer, are refused.
 */
export function sheetPoints(input: BasisInput): Result<readonly SheetPoint[]> {
  const count = input.points.length
  if (count === 0) return failed(problem('times.no-points', {}, 'points'))
  if (count > LIMITS.points.most)
    return failed(problem('times.too-many-points', { count, most: LIMITS.points.most }, 'points'))
  for (const [index, point] of input.points.entries()) {
    const wrong = impossible(point, `points[${index}]`)
    if (wrong !== null) return failed(wrong)
  }
  const points = withoutRepeats([...input.points].sort((one, other) => one.temperature - other.temperature))
  if (input.kind === 'fixed' && points.length !== 1)
    return failed(problem('times.fixed-needs-one-point', { count: points.length }, 'points'))
  return checkedOrder(input, points)
}

function impossible(point: SheetPoint, field: string): Problem | null {
  const [baths, times] = [LIMITS.temperature, LIMITS.pointTime]
  if (!(point.temperature >= baths.from && point.temperature <= baths.to)) {
    const bounds = { low: sayTemperature(baths.from), high: sayTemperature(baths.to) }
    return problem('times.impossible-temperature', { ...said(point), ...bounds }, field)
  }
  if (point.time >= times.from && point.time <= times.to) return null
  const bounds = { low: sayTime(times.from), high: sayTime(times.to) }
  return problem('times.impossible-time', { ...said(point), ...bounds }, field)
}

const atOneTemperature = (one: SheetPoint, other: SheetPoint): boolean =>
  Math.abs(one.temperature - other.temperature) <= LIMITS.sameTemperature.within + 1e-9

const withoutRepeats = (sorted: readonly SheetPoint[]): readonly SheetPoint[] =>
  sorted.filter((point, index) => {
    const before = sorted[index - 1]
    return before === undefined || !(atOneTemperature(before, point) && before.time === point.time)
  })

function checkedOrder(input: BasisInput, points: readonly SheetPoint[]): Result<readonly SheetPoint[]> {
  for (const [index, warmer] of points.entries()) {
    const cooler = points[index - 1]
    if (cooler === undefined) continue
    const field = `points[${input.points.indexOf(warmer)}]`
    const details = { first: sayTime(cooler.time), second: sayTime(warmer.time) }
    if (atOneTemperature(cooler, warmer))
      return failed(
        problem(
          'times.two-times-at-one-temperature',
          { ...details, temperature: sayTemperature(warmer.temperature) },
          field,
        ),
      )
    if (input.kind === 'ordinary' && warmer.time > cooler.time)
      return failed(
        problem(
          'times.slower-when-warmer',
          { ...details, cooler: sayTemperature(cooler.temperature), warmer: sayTemperature(warmer.temperature) },
          field,
        ),
      )
  }
  return ok(points)
}

const said = ({ temperature, time }: SheetPoint) => ({ time: sayTime(time), temperature: sayTemperature(temperature) })
