import { integrate } from '../fitting/index.js'
import { curveOf } from './curve.js'
import type { CourseReading, TimeBasis } from './definition.js'

/** A stretch of a course over which the temperature runs straight and the rate is smooth. */
export interface Stretch {
  /** Seconds from the first reading. */
  readonly start: number
  readonly duration: number
  readonly from: number
  readonly to: number
}

/** The course cut at every reading and wherever it crosses the temperature of a sheet point. */
export function stretchesOf(basis: TimeBasis, readings: readonly CourseReading[]): Stretch[] {
  const origin = readings[0]?.at ?? 0
  return readings.slice(1).flatMap((next, index) => {
    const before = readings[index] as CourseReading
    return cutAtPoints(basis, {
      start: before.at - origin,
      duration: next.at - before.at,
      from: before.temperature,
      to: next.temperature,
    })
  })
}

function cutAtPoints(basis: TimeBasis, whole: Stretch): Stretch[] {
  const change = whole.to - whole.from
  const [low, high] = [Math.min(whole.from, whole.to), Math.max(whole.from, whole.to)]
  const crossed = basis.points
    .map((point) => point.temperature)
    .filter((temperature) => temperature > low && temperature < high)
  if (crossed.length === 0) return [whole]
  if (change < 0) crossed.reverse()
  const marks = [whole.from, ...crossed, whole.to]
  return marks.slice(1).map((to, index) => {
    const from = marks[index] as number
    return {
      start: whole.start + (whole.duration * (from - whole.from)) / change,
      duration: (whole.duration * (to - from)) / change,
      from,
      to,
    }
  })
}

/** Most that ln rate changes over one application of the ten-point rule; with it the sum holds to 1e-10. */
const MOST_CHANGE = 2
/**
 * Under this four points hold as well, also on the strongest bend between two sheet points: most stretches of a
 * real course. What they leave out goes with the cube of the change, and at 0.05 had come to 5e-10.
 */
const SMALL_CHANGE = 0.03

/** ∫ rate over the first `duration` seconds of a stretch (all of it by default): equivalent seconds. */
export function equivalentOf(basis: TimeBasis, stretch: Stretch, duration = stretch.duration): number {
  if (!(duration > 0)) return 0
  const { lnTime } = curveOf(basis)
  const lnReference = Math.log(basis.reference.time)
  // The part of the stretch, not degrees per second: these have no end when two readings are next to no time apart.
  const temperatureAt = (second: number) => stretch.from + (stretch.to - stretch.from) * (second / stretch.duration)
  const rate = (second: number): number => Math.exp(lnReference - lnTime(temperatureAt(second)))
  const change = Math.abs(lnTime(temperatureAt(duration)) - lnTime(stretch.from))
  if (change < SMALL_CHANGE) return integrate(rate, 0, duration, 4)
  const parts = Math.ceil(change / MOST_CHANGE)
  let total = 0
  for (let part = 0; part < parts; part++)
    total += integrate(rate, (duration * part) / parts, (duration * (part + 1)) / parts)
  return total
}

/** Equivalent seconds of a whole course. */
export const equivalentOver = (basis: TimeBasis, readings: readonly CourseReading[]): number =>
  stretchesOf(basis, readings).reduce((total, stretch) => total + equivalentOf(basis, stretch), 0)
