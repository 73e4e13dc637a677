import { type Celsius, problem } from '../../kernel/index.js'
import { rateOf, timeForCourse } from '../../science/index.js'
import { courseOf, temperatureAt } from '../plan/course.js'
import type { Development, Reading } from '../plan/definition.js'
import type { Screened } from './definition.js'

/** Ours after common practice: a thermometer read at a glance is trusted this far. */
export const SCREEN = {
  /** °C from the expected temperature, past which a second reading is asked for. */
  far: 1,
  /** A second reading within this of the first confirms it, °C. */
  agrees: 0.5,
  /** Shift of the pour-out, part of the planned time, past which the person is asked. */
  shift: 0.1,
} as const

export type Followable = Extract<Development, { from: 'basis' }>

/** A developing bath as far as it is known. */
export interface Course {
  readonly development: Followable
  /** Seconds from the tank's zero. */
  readonly clockStart: number
  /** Those that count so far. */
  readonly readings: readonly Reading[]
  /** Length by the plan, no reading taken. */
  readonly planned: number
  /** Length that the person last agreed to: the plan's, or that after a confirmed reading. */
  readonly agreed: number
}

/** Seconds from the clock's start until development is done. */
export function lengthOf({ development, clockStart, readings }: Omit<Course, 'planned' | 'agreed'>): number {
  const course = courseOf(development.course, development.basis, clockStart, readings)
  const time = timeForCourse(development.basis, course, development.target)
  return time.ok ? time.value.elapsed : Number.POSITIVE_INFINITY
}

/** What a reading is worth before it moves anything. */
export function screenReading(course: Course, reading: Reading): Screened {
  const { development, clockStart, readings, planned, agreed } = course
  const { basis } = development
  const known = courseOf(development.course, basis, clockStart, readings)
  const expected = temperatureAt(known, Math.max(0, reading.at - clockStart)) as Celsius
  const told = { temperature: reading.temperature, expected }
  if (!rateOf(basis)(reading.temperature).ok) {
    const { from, to } = basis.usable
    const details = { temperature: { celsius: reading.temperature }, from: { celsius: from }, to: { celsius: to } }
    return { ...told, shift: 0, verdict: 'outside', problem: problem('score.reading-outside', details) }
  }
  const before = lengthOf(course)
  const after = lengthOf({ ...course, readings: [...readings, reading] })
  const shift = after - before
  if (Math.abs(reading.temperature - expected) > SCREEN.far + SLACK) return { ...told, shift, verdict: 'read-again' }
  const most = SCREEN.shift * planned
  return { ...told, shift, verdict: Math.abs(after - agreed) > most ? 'confirm-shift' : 'fine' }
}

/** Of temperatures read in steps of a tenth. */
const SLACK = 1e-6
