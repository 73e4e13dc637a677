import type { Celsius, Instant, Seconds } from '../../kernel/index.js'
import { type CourseReading, dose, rateOf } from '../../science/index.js'
import type { TankState } from '../events/fold.js'
import { courseUntil, temperatureAt } from '../plan/course.js'
import type { Laid, TankPlan } from '../plan/definition.js'
import type { Changed, Developed, ReadingTold } from './definition.js'
import { laidOut, type Reckoned } from './facts.js'
import { type Unsure, unsureOf } from './stated.js'

const SHORTEST = 0.002

/**
 * Development done by `now` (seconds from the tank's zero), or at the end of the bath's clock; null before it starts.
 * Its band holds what the thermometer may be out and, for a run from paper, what its times leave open.
 */
export function developedBy(tank: TankState, laid: readonly Laid[], now: number): Developed | null {
  const bath = laid.find(({ development }) => development?.from === 'basis')
  if (bath === undefined || bath.course === null || bath.development?.from !== 'basis') return null
  const { development, course } = bath
  const until = (bath.outBy === 'waiting' ? now : Math.min(now, bath.clockEnd)) - bath.in
  if (until < SHORTEST) return null
  const part = courseUntil(course, until)
  const equivalent = (points: readonly CourseReading[]): number | null => {
    const done = dose(development.basis, points)
    return done.ok ? done.value.equivalent : null
  }
  const done = equivalent(part) ?? 0
  const fraction = done / development.target
  const { thermometerError } = development.answer.band
  const sides = [-thermometerError, thermometerError].map((by) => {
    const shifted = equivalent(part.map(({ at, temperature }) => ({ at, temperature: (temperature + by) as Celsius })))
    return shifted === null ? null : shifted / development.target - fraction
  })
  // Where the basis gives no answer on one side, the other side's width stands for it.
  const [down, up] = [sides[0] ?? -(sides[1] ?? 0), sides[1] ?? -(sides[0] ?? 0)]
  const clock = byTheClock(unsureOf(tank, laid, bath), rateOf(development.basis), part)
  return {
    index: bath.index,
    done: done as Seconds,
    target: development.target,
    fraction,
    low: Math.max(0, fraction + Math.min(down, up) - clock.less / development.target),
    high: fraction + Math.max(down, up) + clock.more / development.target,
    byTheClock: clock.more > 0,
    temperature: temperatureAt(course, until) as Celsius,
  }
}

/**
 * Equivalent seconds that unsure times leave open. A length counts at the fastest rate of the course; a reading that
 * is moved changes the rate for as long, by no more than the course's rates differ.
 */
function byTheClock(
  { length, longer, readings }: Unsure,
  rate: ReturnType<typeof rateOf>,
  course: readonly CourseReading[],
): { readonly less: number; readonly more: number } {
  const rates = course.flatMap(({ temperature }) => {
    const one = rate(temperature)
    return one.ok ? [one.value] : []
  })
  const [fastest, slowest] = [Math.max(...rates, 0), Math.min(...rates)]
  const moved = readings === 0 ? 0 : readings * (fastest - slowest)
  return { less: length * fastest + moved, more: (length + longer) * fastest + moved }
}

/** What the last reading that counts has done to the pour-out. */
export function changedBy(plan: TankPlan, reckoned: Reckoned, now: number): Changed | null {
  const last = reckoned.readings.filter(({ counts }) => counts).at(-1)
  const bath = reckoned.laid.find(({ development }) => development?.from === 'basis')
  if (last === undefined || bath === undefined || bath.outBy === 'pressed') return null
  const own = reckoned.facts.get(bath.index)
  const without = new Map(reckoned.facts).set(bath.index, { ...own, readings: (own?.readings ?? []).slice(0, -1) })
  const before = laidOut(plan.tank, without, now)[bath.index] as Laid
  return changeOf(last, reckoned.zeroMs, before.due, bath.due)
}

function changeOf(reading: ReadingTold, zeroMs: Instant, before: number, after: number): Changed | null {
  const by = Math.abs(after - before)
  if (by < 1) return null
  return {
    code: after < before ? 'pour-out-earlier' : 'pour-out-later',
    by: by as Seconds,
    from: Math.round(zeroMs + before * 1000),
    to: Math.round(zeroMs + after * 1000),
    temperature: reading.temperature,
    expected: reading.expected,
  }
}
