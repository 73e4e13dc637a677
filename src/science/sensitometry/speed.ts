import { andThen, failed, ok, type Problem, problem, type Result } from '../../kernel/index.js'
import { refusedOutside } from '../range.js'
import { short } from '../saying.js'
import type { StripCurve } from './curve.js'
import type { CharacteristicCurve, Measured } from './definition.js'
import { SPEED_CRITERION } from './limits.js'
import { measured } from './measured.js'
import { densityAt, exposureAtNet } from './reach.js'
import { type NamedSpeed, nameSpeed } from './speed-names.js'

/**
 * The speed of a strip: an ISO 6 speed when its development meets the triangle, else one by Δ-X, which must
 * always be called so.
 */
export interface FilmSpeed {
  readonly kind: 'iso' | 'delta-x'
  /** Its interval is of log10 H turned into speeds; standard errors are of log10 H. */
  readonly speed: Measured
  readonly named: NamedSpeed
  /** `100/21°`, or `100/21° by Δ-X`. */
  readonly label: string
  /** Log exposure of the speed point, 0.10 over base and fog. */
  readonly speedPoint: Measured
  /** Density gained over 1.30 of log exposure from there. */
  readonly rise: Measured
  /** Whether the whole interval of the rise lies on one side of the tolerance: else another strip may decide otherwise. */
  readonly sure: boolean
  /** Why it is no ISO speed; null when it is one. */
  readonly refusal: Problem | null
}

/** The polynomial's data span no more than this. An assumption: the paper itself was not at hand. */
const RISES = { low: 0.4, high: 1.3 } as const

/**
 * Distance ΔX on log exposure from the speed point back to the fractional-gradient point, from the density gained
 * over 1.30: 0.83 − 0.86 ΔD + 0.24 ΔD². ΔD from 0.40 to 1.30; outside, refused.
 * Source: Nelson & Simonds, JOSA 46 (1956); 0.296 at 0.80 was seen, the polynomial is remembered and agrees.
 */
export const deltaX = (rise: number): Result<number> =>
  refusedOutside('speed.bad-value', 'The density gained over 1.30', rise, RISES) ?? ok(polynomial(rise))

const polynomial = (rise: number): number => 0.83 - 0.86 * rise + 0.24 * rise * rise

/** Log exposure of the speed point. */
export const logSpeedPoint = (curve: CharacteristicCurve): Result<number> =>
  exposureAtNet(curve, SPEED_CRITERION.speedPoint, 'A film speed')

/** Density gained over 1.30 of log exposure from the speed point. */
export const riseFromSpeedPoint = (curve: CharacteristicCurve): Result<number> =>
  andThen(logSpeedPoint(curve), (m) => {
    const far = densityAt(curve, m + SPEED_CRITERION.distance, 'A film speed')
    return far.ok ? ok(far.value - curve.at(m)) : far
  })

/** Whether a rise meets the triangle; a last digit of rounding does not exclude it. */
const isValid = (rise: number): boolean =>
  Math.abs(rise - SPEED_CRITERION.rise) <= SPEED_CRITERION.tolerance + Number.EPSILON * 8

/** log10 of the exposure that stands for a speed by Δ-X: the speed point, moved by what the rise says. */
const logDeltaX = (curve: CharacteristicCurve): Result<number> =>
  andThen(riseFromSpeedPoint(curve), (rise) =>
    andThen(deltaX(rise), (distance) =>
      andThen(logSpeedPoint(curve), (m) => ok(m - distance + polynomial(SPEED_CRITERION.rise))),
    ),
  )

/**
 * Film speed from the curve of a strip whose exposures are lux-seconds: S = 0.8 / Hm, valid when the density
 * rises by 0.80 ± 0.05 over 1.30 of log exposure. Off that triangle the answer is the speed by Δ-X, labelled, and
 * carries the refusal of an ISO speed. Named by degrees from the list.
 *
 * Refused when the exposures are relative, the curve does not reach both points, the rise is past what Δ-X covers,
 * or the speed is outside the list. About 200 measures of the curve. Source: ISO 6:1993; Δ-X as `deltaX`.
 */
export function filmSpeed(of: StripCurve): Result<FilmSpeed> {
  if (of.strip.exposure !== 'lux-seconds') return failed(problem('speed.relative-only', {}, 'exposure'))
  const speedPoint = measured(of, logSpeedPoint)
  if (!speedPoint.ok) return speedPoint
  const rise = measured(of, riseFromSpeedPoint)
  if (!rise.ok) return rise
  const kind = isValid(rise.value.value) ? 'iso' : 'delta-x'
  const logH = kind === 'iso' ? speedPoint : measured(of, logDeltaX)
  if (!logH.ok) return logH
  const speed = asSpeed(logH.value)
  return andThen(nameSpeed(speed.value), (named) =>
    ok({
      kind,
      speed,
      named,
      label: kind === 'iso' ? named.name : `${named.name} by Δ-X`,
      speedPoint: speedPoint.value,
      rise: rise.value,
      sure: isSure(rise.value),
      refusal: kind === 'iso' ? null : offTriangle(rise.value.value),
    }),
  )
}

function asSpeed({ value, low, high, byReadings, byStrips }: Measured): Measured {
  const speed = (logH: number): number => SPEED_CRITERION.numerator / 10 ** logH
  return {
    value: speed(value),
    low: high === null ? null : speed(high),
    high: low === null ? null : speed(low),
    byReadings,
    byStrips,
  }
}

const isSure = ({ value, low, high }: Measured): boolean => {
  if (low === null || high === null) return false
  const { rise, tolerance } = SPEED_CRITERION
  return isValid(value) ? isValid(low) && isValid(high) : high < rise - tolerance || low > rise + tolerance
}

function offTriangle(rise: number): Problem {
  const { rise: aim, tolerance } = SPEED_CRITERION
  return problem('speed.off-triangle', {
    rise: short(rise, 3),
    low: short(aim - tolerance, 2),
    high: short(aim + tolerance, 2),
    remedy: rise > aim ? 'for less time' : 'for longer',
  })
}

/**
 * Speed on the scale of Hurter and Driffield, 34 over the inertia in candle-metre-seconds (0.0001 to 100, else
 * refused). Historical; for reading old tables. Source: Ives, Airplane Photography, 1920.
 */
export const hurterDriffieldSpeed = (inertia: number): Result<number> =>
  refusedOutside('speed.bad-value', 'An inertia', inertia, { low: 1e-4, high: 100 }) ?? ok(34 / inertia)
