import { type Celsius, failed, ok, type Result } from '../../kernel/index.js'
import { type CourseReading, timeForCourse } from '../../science/index.js'
import type { Bath, TimeLaw } from '../recipe/definition.js'
import { courseOf } from './course.js'
import type { Development, StepFacts, Tank } from './definition.js'

/** How long a bath's clock runs, and the temperatures behind it. */
export interface BathLength {
  readonly seconds: number
  readonly course: readonly CourseReading[] | null
  readonly development: Development | null
}

/** Seconds by clearing: at least the law's least; whether the fixer is finished is judged elsewhere. */
export const secondsByClearing = (law: Extract<TimeLaw, { law: 'by-clearing' }>, clearing: number): number =>
  Math.max(law.least, law.multiple * clearing)

export function bathLength(tank: Tank, bath: Bath, clockStart: number, facts: StepFacts): Result<BathLength> {
  const longer = facts.longer ?? 0
  const { time } = bath
  if (time.law === 'fixed') return ok({ seconds: time.seconds + longer, course: null, development: null })
  if (time.law === 'by-clearing') {
    const clearing = facts.clearing ?? tank.clearing ?? time.assumed
    return ok({ seconds: secondsByClearing(time, clearing) + longer, course: null, development: null })
  }
  const development = facts.development ?? tank.development
  if (development === null) throw new Error('A tank made ready lacks its developing time.')
  return developed(development, clockStart, facts)
}

/**
 * How long its clock runs should a bath read `start` in place of what is planned: by the same room, or along the same
 * course moved to meet it. Seconds. Refused where the basis cannot follow it.
 */
export function lengthFrom(
  development: Extract<Development, { from: 'basis' }>,
  start: Celsius,
): Result<BathLength['seconds']> {
  const from = { ...development, course: { ...development.course, start } }
  const length = developed(from, 0, {})
  return length.ok ? ok(length.value.seconds) : length
}

function developed(development: Development, clockStart: number, facts: StepFacts): Result<BathLength> {
  if (development.from === 'own') return ok({ seconds: development.time, course: null, development })
  const course = courseOf(development.course, development.basis, clockStart, facts.readings ?? [])
  const time = timeForCourse(development.basis, course, development.target)
  if (!time.ok) return failed(time.problem)
  return ok({ seconds: time.value.elapsed, course, development })
}
