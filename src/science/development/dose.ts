import { failed, ok, POSSIBLE, type Result, type Seconds } from '../../kernel/index.js'
import type { CourseReading, DevelopmentWarning, TimeBasis } from './definition.js'
import { equivalentOver } from './integral.js'
import { checkedReadings, outOfRange } from './readings.js'
import { leansOnAssumption, temperatureWarnings } from './warnings.js'

/** How much development a course of temperatures has done. */
export interface Dose {
  /** Equivalent seconds at the reference temperature. */
  readonly equivalent: Seconds
  /** Part of the reference time, 1 when development is done (before modifiers). */
  readonly fraction: number
  /** Equivalent seconds per second over the whole course. */
  readonly meanRate: number
  /** As for a time; `assumed-coefficient` states the equivalent seconds at its two ends. */
  readonly warnings: readonly DevelopmentWarning[]
}

/**
 * The dose of a course: ∫ rate over time, the temperature running straight between readings. The mean
 * temperature is not enough, since warm minutes gain more than cold ones lose.
 *
 * At least two readings in order of time, all at temperatures the basis gives a time for; else refused.
 * The course is cut where the rate is not smooth and each piece summed by Gauss–Legendre to 1e-10. Cost:
 * linear in readings plus crossings of sheet points.
 */
export function dose(basis: TimeBasis, readings: readonly CourseReading[]): Result<Dose> {
  const checked = checkedReadings(basis, readings, 2)
  if (!checked.ok) return checked
  const equivalent = equivalentOver(basis, readings)
  if (equivalent > POSSIBLE.seconds.high) return failed(outOfRange(equivalent, 'a dose', 'readings'))
  const duration = (readings[readings.length - 1] as CourseReading).at - (readings[0] as CourseReading).at
  return ok({
    equivalent: equivalent as Seconds,
    fraction: equivalent / basis.reference.time,
    meanRate: equivalent / duration,
    warnings: warningsOver(basis, readings),
  })
}

function warningsOver(basis: TimeBasis, readings: readonly CourseReading[]): DevelopmentWarning[] {
  const temperatures = readings.map((reading) => reading.temperature)
  const [coldest, warmest] = [Math.min(...temperatures), Math.max(...temperatures)]
  const warnings = temperatureWarnings(basis, coldest, warmest)
  if (!leansOnAssumption(basis, coldest) && !leansOnAssumption(basis, warmest)) return warnings
  const { value, low, high } = basis.coefficient
  const ends = [low, high].map((other) => equivalentOver(withCoefficient(basis, other), readings))
  const [shortest, longest] = [Math.min(...ends) as Seconds, Math.max(...ends) as Seconds]
  return [...warnings, { code: 'assumed-coefficient', value, low, high, shortest, longest }]
}

const withCoefficient = (basis: TimeBasis, value: number): TimeBasis => ({
  ...basis,
  coefficient: { ...basis.coefficient, value },
})
