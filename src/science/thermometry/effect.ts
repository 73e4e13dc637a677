import { type Celsius, ok, type Result, type Seconds } from '../../kernel/index.js'
import { type TimeBasis, timeAt } from '../development/index.js'

/** What an uncorrected thermometer costs: the two times and the part that is missing. */
export interface UncorrectedEffect {
  /** The time that the bare reading would have given. */
  readonly byReading: Seconds
  /** The time that the true temperature wants. */
  readonly byTruth: Seconds
  /** Seconds missing from the uncorrected time; below 0 it was too long. */
  readonly missing: number
  /** The same as a part of the uncorrected time: 0.1 means 10 % too short. */
  readonly missingPart: number
}

/**
 * What an uncorrected thermometer would have done to the developing time. Refused where the basis gives no
 * time at the reading or at the true temperature.
 */
export function effectOfUncorrectedError(
  basis: TimeBasis,
  read: Celsius,
  corrected: Celsius,
): Result<UncorrectedEffect> {
  const byReading = timeAt(basis, read)
  if (!byReading.ok) return byReading
  const byTruth = timeAt(basis, corrected)
  if (!byTruth.ok) return byTruth
  const missing = byTruth.value.time - byReading.value.time
  return ok({
    byReading: byReading.value.time,
    byTruth: byTruth.value.time,
    missing,
    missingPart: missing / byReading.value.time,
  })
}
