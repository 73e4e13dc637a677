import { failed, ok, POSSIBLE, problem, type Result } from '../../kernel/index.js'
import { sayTime } from '../saying.js'
import { curveOf } from './curve.js'
import type { CourseReading, TimeBasis } from './definition.js'

/**
 * A course fit to be reckoned over: at least so many readings, each later than the one before, every
 * temperature one that the basis gives a time for. Between readings the temperature runs straight, so what
 * holds at the readings holds everywhere.
 */
export function checkedReadings(
  basis: TimeBasis,
  readings: readonly CourseReading[],
  least: number,
): Result<readonly CourseReading[]> {
  if (readings.length < least) return failed(problem('dose.too-few-readings', { count: readings.length }, 'readings'))
  const { refusal } = curveOf(basis)
  for (const [index, reading] of readings.entries()) {
    if (!(reading.at >= POSSIBLE.seconds.low && reading.at <= POSSIBLE.seconds.high))
      return failed(outOfRange(reading.at, 'the moment of a reading', `readings[${index}].at`))
    const before = readings[index - 1]
    if (before !== undefined && !(reading.at > before.at)) {
      const details = { first: sayTime(before.at), second: sayTime(reading.at) }
      return failed(problem('dose.readings-out-of-order', details, `readings[${index}].at`))
    }
    const refused = refusal(reading.temperature)
    if (refused !== null) return failed({ ...refused, field: `readings[${index}].temperature` })
  }
  return ok(readings)
}

/** A number of seconds that cannot be what it is meant for. */
export const outOfRange = (value: number, what: string, field: string) =>
  problem(
    'quantity.out-of-range',
    { text: sayTime(value), what, low: sayTime(0), high: sayTime(POSSIBLE.seconds.high) },
    field,
  )
