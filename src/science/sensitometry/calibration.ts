import { failed, ok, problem, type Result } from '../../kernel/index.js'
import { pchip } from '../fitting/index.js'
import { refusedOutside } from '../range.js'
import { short } from '../saying.js'
import { SENSITOMETRY_LIMITS } from './limits.js'

/** A density that an instrument read, and the one it is known to be. */
export interface KnownDensity {
  readonly read: number
  readonly true: number
}

/** A density put right, with the standard error that is left. */
export interface CorrectedDensity {
  readonly density: number
  readonly standardError: number
  /** `uncalibrated`: as read; `one-step`: by the ratio of one known step; `between`: between two known steps. */
  readonly basis: 'uncalibrated' | 'one-step' | 'between'
}

/** How well an instrument that is no densitometer reads, as data; assumptions of ours. */
export const CALIBRATION = {
  /** A reading of an enlarger or scanner nobody calibrated may be off by this part (specular light, glare). */
  uncalibratedPart: 0.15,
  /** One known step speaks for readings within this factor of it. */
  oneStepReach: 2,
  /** What a known step leaves open, as a part of the density. */
  calibratedPart: 0.03,
} as const

/** Puts the readings of one instrument right. */
export interface Calibration {
  readonly correct: (read: number) => Result<CorrectedDensity>
}

/**
 * Makes a scanner or an enlarger into a densitometer for one film and one setting: no known steps give the reading
 * itself with a wide error, one gives a ratio that holds near it, two or more a monotone curve between them.
 * It speaks for that instrument only. Readings 0 to 6; what the known steps do not cover is refused.
 */
export function calibrationOf(
  known: readonly KnownDensity[],
  readingError: number = SENSITOMETRY_LIMITS.readingError,
): Result<Calibration> {
  const { density, readingErrors } = SENSITOMETRY_LIMITS
  const wrongError = refusedOutside('curve.bad-value', 'A reading error', readingError, readingErrors, 'readingError')
  if (wrongError) return wrongError
  const sorted = [...known].sort((one, other) => one.read - other.read)
  for (const [i, step] of sorted.entries()) {
    const refused =
      refusedOutside('curve.bad-value', 'A reading', step.read, { low: 0.005, high: density.high }, `known[${i}]`) ??
      refusedOutside('curve.bad-value', 'A known density', step.true, { low: 0.005, high: density.high }, `known[${i}]`)
    if (refused) return refused
    const before = sorted[i - 1]
    if (before && !(step.read - before.read > 1e-6 && step.true > before.true)) return contradiction(before, step)
  }
  const inner = correctionBy(sorted)
  return ok({
    correct: (read) => refusedOutside('curve.bad-value', 'A reading', read, density) ?? inner(read, readingError),
  })
}

function contradiction(before: KnownDensity, step: KnownDensity): Result<never> {
  const details = {
    first: short(before.read, 3),
    second: short(step.read, 3),
    firstTrue: short(before.true, 3),
    secondTrue: short(step.true, 3),
  }
  return failed(problem('curve.bad-calibration', details, 'known'))
}

type Correction = (read: number, readingError: number) => Result<CorrectedDensity>

function correctionBy(known: readonly KnownDensity[]): Correction {
  const [first, second] = known
  const [lowest, highest] = [known[0]?.read ?? 0, known.at(-1)?.read ?? 0]
  const left = (density: number, slope: number, part: number, readingError: number): number =>
    Math.hypot(readingError * slope, part * density)
  if (first === undefined)
    return (read, error) =>
      ok({
        density: read,
        standardError: left(read, 1, CALIBRATION.uncalibratedPart, error),
        basis: 'uncalibrated',
      })
  if (second === undefined) {
    const ratio = first.true / first.read
    const reach = { low: lowest / CALIBRATION.oneStepReach, high: highest * CALIBRATION.oneStepReach }
    return (read, error) =>
      read >= reach.low && read <= reach.high
        ? ok({
            density: read * ratio,
            standardError: left(read * ratio, ratio, CALIBRATION.calibratedPart, error),
            basis: 'one-step',
          })
        : outside(read, reach)
  }
  const curve = pchip(
    known.map(({ read }) => read),
    known.map((step) => step.true),
  )
  return (read, error) =>
    read >= lowest && read <= highest
      ? ok({
          density: curve.at(read),
          standardError: left(curve.at(read), curve.slopeAt(read), CALIBRATION.calibratedPart, error),
          basis: 'between',
        })
      : outside(read, { low: lowest, high: highest })
}

const outside = (read: number, { low, high }: { low: number; high: number }): Result<never> =>
  failed(
    problem('curve.outside-calibration', { read: short(read, 3), low: short(low, 3), high: short(high, 3) }, 'read'),
  )
