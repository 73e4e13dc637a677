import { type Celsius, fahrenheit, toFahrenheit, type UnitSystem } from '../../kernel/index.js'
import type { DevelopingTime, TimeBasis } from '../../science/index.js'
import { type Course, sheetRange } from './course.js'
import { roundSpan } from './ticks.js'

export interface Span {
  readonly from: number
  readonly to: number
}

/** The bench's own degrees for a temperature in °C, and back. */
export const toBench = (value: number, units: UnitSystem): number =>
  units === 'us' ? toFahrenheit(value as Celsius) : value
export const fromBench = (value: number, units: UnitSystem): number => (units === 'us' ? fahrenheit(value) : value)

/** °C shown to either side of the sheet, of the asked temperature, and at least in all. */
const AROUND = { sheet: 2, asked: 1, least: 8, fixed: 3 }

/**
 * The temperatures a graph shows, °C: the sheet and some of what lies beyond, the asked one, nothing where no
 * time is given; the ends are whole steps of the bench's degrees.
 */
export function temperatureSpan(basis: TimeBasis, asked: DevelopingTime | null, units: UnitSystem, step: number): Span {
  const sheet = sheetRange(basis)
  const around = basis.kind === 'ordinary' ? AROUND.sheet : 1
  const least = basis.kind === 'fixed' ? AROUND.fixed : AROUND.least
  const [coldest, warmest] = asked === null ? [sheet.from, sheet.to] : [asked.temperature, asked.temperature]
  let from = Math.min(sheet.from - around, coldest - AROUND.asked)
  let to = Math.max(sheet.to + around, warmest + AROUND.asked)
  const missing = Math.max(0, least - (to - from)) / 2
  ;[from, to] = [from - missing, to + missing]
  const usable = { from: Math.max(from, basis.usable.from), to: Math.min(to, basis.usable.to) }
  return {
    from: fromBench(Math.floor(toBench(usable.from, units) / step + 1e-6) * step, units),
    to: fromBench(Math.ceil(toBench(usable.to, units) / step - 1e-6) * step, units),
  }
}

/** A time axis never spans less than this ratio: a flat course is to look flat, not steep. */
const LEAST_RATIO = 1.4

/** The times a graph shows, seconds: everything drawn, with a little air, ends at round times. */
export function timeSpan(basis: TimeBasis, asked: DevelopingTime | null, course: Course): Span {
  const drawn = [...course.cold, ...course.inside, ...course.warm]
  const times = [
    ...basis.points.map((point) => point.time),
    ...drawn.flatMap(({ time, doubt }) => [time + doubt, Math.max(time / 2, time - doubt)]),
    ...(asked === null ? [] : [asked.time]),
  ]
  const [shortest, longest] = [Math.min(...times), Math.max(...times)]
  const air = Math.max(1.04, Math.sqrt(LEAST_RATIO / (longest / shortest)))
  return roundSpan(shortest / air, longest * air)
}
