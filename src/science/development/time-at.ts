import { type Celsius, failed, ok, type Result, type Seconds } from '../../kernel/index.js'
import { curveOf, type Place, timeOn } from './curve.js'
import type { TimeBasis } from './definition.js'

/** A time at a temperature before any modifier, with what is said of it. */
export interface TimeAnswer extends Place {
  readonly time: Seconds
}
/** How fast a developer works at a temperature against its reference, with what is said of it. */
export interface RateAnswer {
  /** Development per second against the reference temperature: 1 there, above 1 where it is faster. */
  readonly rate: number
  readonly position: Place['position']
}

/**
 * The developing time of a basis at a temperature, before any modifier. A sheet point answers with its own
 * time; between two points ln t follows them without overshooting; past the ends it goes on from the end
 * point's own time with the law's slope, and the answer says so. Outside the usable range, or outside the
 * sheet of a single bath, there is a refusal and never a time.
 */
export function timeAt(basis: TimeBasis, temperature: Celsius): Result<TimeAnswer> {
  const time = timeOn(basis, temperature)
  return time.ok ? ok({ time: time.value, ...curveOf(basis).place(temperature) }) : time
}

/**
 * The rate of development at a temperature: reference time ÷ time there. Plan, dose, run and print all read
 * this one function.
 */
export function rateAt(basis: TimeBasis, temperature: Celsius): Result<RateAnswer> {
  const answer = timeAt(basis, temperature)
  if (!answer.ok) return failed(answer.problem)
  return ok({ rate: basis.reference.time / answer.value.time, position: answer.value.position })
}

/** `rateAt` for many temperatures of one basis. */
export const rateOf =
  (basis: TimeBasis): ((temperature: Celsius) => Result<number>) =>
  (temperature) => {
    const time = timeOn(basis, temperature)
    return time.ok ? ok(basis.reference.time / time.value) : time
  }
