import type { Celsius } from '../../kernel/index.js'
import { type CourseReading, drawnToward, rateOf, type TimeBasis } from '../../science/index.js'
import type { PlannedCourse, Reading, Room } from './definition.js'

/** Straight pieces per time constant; the chord then misses Newton's curve by under 1/3000 of the difference. */
const PIECES = 20
/** After so many time constants the tank is as warm as the room. */
const CONSTANTS = 5
/** Readings nearer than this are one moment, seconds. */
const SAME_MOMENT = 0.001

/** A tank's temperature in its room, seconds after it was at `from`. */
export const pulled = (room: Room, from: number, after: number): number =>
  drawnToward(room.temperature, from, room.timeConstant, after)

/**
 * Temperatures of a bath from its clock's start on: straight between the readings that count, after the last
 * one on along the plan (shifted to meet it), or toward the room, or held.
 *
 * A reading before the clock's start replaces the planned start. Where the room would pull the bath out of what
 * the basis can follow, the last temperature inside is held.
 */
export function courseOf(
  planned: PlannedCourse,
  basis: TimeBasis,
  clockStart: number,
  readings: readonly Reading[],
): CourseReading[] {
  const before = readings.filter(({ at }) => at <= clockStart + SAME_MOMENT).at(-1)
  const known: CourseReading[] = [{ at: 0 as never, temperature: before?.temperature ?? planned.start }]
  for (const { at, temperature } of readings) {
    const second = at - clockStart
    if (second <= SAME_MOMENT) continue
    // Of two at one moment the later in order stands.
    if (second - (known.at(-1) as CourseReading).at <= SAME_MOMENT) known.pop()
    known.push({ at: second as never, temperature })
  }
  return [...known, ...afterwards(planned, basis, known.at(-1) as CourseReading)]
}

function afterwards({ points, room }: PlannedCourse, basis: TimeBasis, last: CourseReading): CourseReading[] {
  const later = points === null ? (room === null ? [] : toward(room, last)) : shifted(points, last)
  const rate = rateOf(basis)
  const end = later.findIndex(({ temperature }) => !rate(temperature).ok)
  return end === -1 ? later : later.slice(0, end)
}

function toward(room: Room, last: CourseReading): CourseReading[] {
  const step = room.timeConstant / PIECES
  if (Math.abs(room.temperature - last.temperature) < 0.005) return []
  return Array.from({ length: PIECES * CONSTANTS }, (_, i) => {
    const after = (i + 1) * step
    return reading(last.at + after, pulled(room, last.temperature, after))
  })
}

function shifted(points: readonly CourseReading[], last: CourseReading): CourseReading[] {
  const off = last.temperature - temperatureAt(points, last.at)
  return points
    .filter(({ at }) => at > last.at + SAME_MOMENT)
    .map(({ at, temperature }) => reading(at, temperature + off))
}

const reading = (at: number, temperature: number): CourseReading => ({
  at: at as never,
  temperature: temperature as Celsius,
})

/** The temperature of a course at a moment: straight between its points, held before the first and after the last. */
export function temperatureAt(course: readonly CourseReading[], at: number): number {
  const next = course.findIndex((point) => point.at >= at)
  if (next === -1) return (course.at(-1) as CourseReading).temperature
  const [after, before] = [course[next] as CourseReading, course[next - 1]]
  if (before === undefined) return after.temperature
  const part = (at - before.at) / (after.at - before.at)
  return before.temperature + part * (after.temperature - before.temperature)
}

/** The part of a course up to a moment, cut there. */
export function courseUntil(course: readonly CourseReading[], until: number): CourseReading[] {
  const inside = course.filter(({ at }) => at < until - SAME_MOMENT)
  return [...inside, reading(until, temperatureAt(course, until))]
}
