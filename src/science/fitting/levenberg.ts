import { type QrFactors, qrFactors } from './qr.js'

/** Why a fit ended. Only `converged` may be used as an answer. */
export type StoppingReason = 'converged' | 'iteration limit' | 'stalled'

/** What nonlinear least squares found. */
export interface NonlinearFit {
  readonly value: readonly number[]
  /** Model minus data (or whatever the caller gave) at the answer. */
  readonly residuals: readonly number[]
  readonly sumOfSquares: number
  /** Scatter of the residuals; null when nothing is left over to judge by. */
  readonly residualStandardDeviation: number | null
  /** (JᵀJ)⁻¹: times the variance of a residual it is the covariance; null when the data do not fix the values. */
  readonly unscaledCovariance: readonly (readonly number[])[] | null
  /** By the residuals' own scatter; null as above. */
  readonly covariance: readonly (readonly number[])[] | null
  readonly standardErrors: readonly number[] | null
  readonly degreesOfFreedom: number
  readonly iterations: number
  readonly evaluations: number
  readonly stopped: StoppingReason
}

/** When a fit ends. */
export interface FitOptions {
  /** Default 2000. */
  readonly mostIterations?: number
  /** Converged when no value would move by more than this part of itself. Default 1e-10. */
  readonly tolerance?: number
}

type Residuals = (values: readonly number[]) => readonly number[]

/**
 * Nonlinear least squares by Levenberg and Marquardt: the values that make Σ residual² least, starting from
 * `start`. Used for the contrast–time law. Each value is scaled by the greatest length its column of the
 * Jacobian has had, so that parameters of very different size do no harm.
 *
 * `residuals` must give as many finite numbers at `start` as it always gives, at least as many as values; anything
 * else is a bug and throws. A step onto NaN or infinity is not taken. About 2·values + 1 evaluations an iteration.
 * Sources: Marquardt 1963; Moré 1978 (scaling); Nielsen 1999 (damping).
 */
export function levenbergMarquardt(
  residuals: Residuals,
  start: readonly number[],
  options: FitOptions = {},
): NonlinearFit {
  const { mostIterations = 2000, tolerance = 1e-10 } = options
  const counted = counting(residuals)
  let value = [...start]
  let current = counted.of(value)
  let sumOfSquares = squares(current)
  mustBeUsable(current, start.length, sumOfSquares)
  const scale: number[] = new Array(start.length).fill(0)
  let damping = 0.1
  let growth = 2
  let stopped: StoppingReason = 'iteration limit'
  let iterations = 0
  let jacobian = jacobianOf(counted.of, value, current.length)
  widen(scale, jacobian)
  while (iterations < mostIterations) {
    iterations++
    const step = dampedStep(jacobian, current, scale, damping)
    if (step === null || !(damping < 1e30)) {
      stopped = 'stalled'
      break
    }
    const tried = value.map((v, i) => v + (step[i] as number))
    const triedResiduals = counted.of(tried)
    const triedSquares = squares(triedResiduals)
    const gain = (sumOfSquares - triedSquares) / predictedGain(jacobian, current, step, sumOfSquares)
    const tiny = step.every((s, i) => Math.abs(s) <= tolerance * (Math.abs(value[i] as number) + tolerance))
    if (triedSquares <= sumOfSquares && gain > 0) {
      value = tried
      current = triedResiduals
      sumOfSquares = triedSquares
      damping *= Math.max(1 / 10, 1 - (2 * gain - 1) ** 3)
      growth = 2
      jacobian = jacobianOf(counted.of, value, current.length)
      widen(scale, jacobian)
    } else {
      damping *= growth
      growth *= 2
    }
    // Heavy damping makes any step tiny: only the step without damping proves the bottom.
    if (tiny && atTheBottom(jacobian, current, value, sumOfSquares, tolerance)) {
      stopped = 'converged'
      break
    }
  }
  return described({ value, current, sumOfSquares, jacobian, iterations, evaluations: counted.count(), stopped })
}

/** The step of no damping is as small as rounding lets it be, or would gain nothing worth having. */
function atTheBottom(
  jacobian: number[][],
  residuals: readonly number[],
  value: readonly number[],
  sumOfSquares: number,
  tolerance: number,
): boolean {
  const free = qrFactors(jacobian).solve(residuals.map((r) => -r))
  if (free === null) return false
  // A gain of 1e-14 of the squares is a ten-millionth of a standard error (Bates & Watts 1981, relative offset).
  if (predictedGain(jacobian, residuals, free, sumOfSquares) <= 1e-14 * sumOfSquares) return true
  // A numerical Jacobian is good to about half the digits, so the free step has that much noise.
  return free.every((s, i) => Math.abs(s) <= 1e4 * tolerance * (Math.abs(value[i] as number) + tolerance))
}

function mustBeUsable(residuals: readonly number[], values: number, sumOfSquares: number): void {
  if (residuals.length < values || !Number.isFinite(sumOfSquares))
    throw new RangeError('A fit needs finite residuals at its start, at least as many as values.')
}

function counting(residuals: Residuals): { of: Residuals; count: () => number } {
  let evaluations = 0
  return {
    of: (values) => {
      evaluations++
      return residuals(values)
    },
    count: () => evaluations,
  }
}

const squares = (values: readonly number[]): number => values.reduce((sum, v) => sum + v * v, 0)

/** By central differences; one row a residual. */
function jacobianOf(residuals: Residuals, value: readonly number[], count: number): number[][] {
  const rows = Array.from({ length: count }, () => new Array<number>(value.length).fill(0))
  value.forEach((v, j) => {
    const width = 6e-6 * Math.max(Math.abs(v), 1e-8)
    const above = residuals(value.with(j, v + width))
    const below = residuals(value.with(j, v - width))
    for (let i = 0; i < count; i++) {
      const slope = ((above[i] as number) - (below[i] as number)) / (2 * width)
      ;(rows[i] as number[])[j] = Number.isFinite(slope) ? slope : 0
    }
  })
  return rows
}

function widen(scale: number[], jacobian: readonly (readonly number[])[]): void {
  for (let j = 0; j < scale.length; j++)
    scale[j] = Math.max(scale[j] as number, Math.hypot(...jacobian.map((row) => row[j] as number)), 1e-300)
}

/** Least squares of the straightened model with √damping · scale below it. */
function dampedStep(
  jacobian: readonly (readonly number[])[],
  residuals: readonly number[],
  scale: readonly number[],
  damping: number,
): number[] | null {
  const root = Math.sqrt(damping)
  const below = scale.map((s, i) => scale.map((_, j) => (i === j ? root * s : 0)))
  const factors: QrFactors = qrFactors([...jacobian, ...below])
  return factors.solve([...residuals.map((r) => -r), ...scale.map(() => 0)])
}

function predictedGain(
  jacobian: readonly (readonly number[])[],
  residuals: readonly number[],
  step: readonly number[],
  sumOfSquares: number,
): number {
  const after = residuals.map(
    (r, i) => r + (jacobian[i] as readonly number[]).reduce((sum, slope, j) => sum + slope * (step[j] as number), 0),
  )
  return Math.max(sumOfSquares - squares(after), Number.MIN_VALUE)
}

function described(end: {
  value: number[]
  current: readonly number[]
  sumOfSquares: number
  jacobian: number[][]
  iterations: number
  evaluations: number
  stopped: StoppingReason
}): NonlinearFit {
  const { value, current, sumOfSquares, iterations, evaluations, stopped } = end
  const degreesOfFreedom = current.length - value.length
  const variance = degreesOfFreedom > 0 ? sumOfSquares / degreesOfFreedom : null
  const unscaledCovariance = finite(qrFactors(end.jacobian).inverseOfSquares())
  const covariance =
    variance === null || unscaledCovariance === null
      ? null
      : finite(unscaledCovariance.map((row) => row.map((entry) => entry * variance)))
  return {
    value,
    residuals: current,
    sumOfSquares,
    residualStandardDeviation: variance === null ? null : Math.sqrt(variance),
    unscaledCovariance,
    covariance,
    standardErrors: covariance?.map((row, i) => Math.sqrt(row[i] as number)) ?? null,
    degreesOfFreedom,
    iterations,
    evaluations,
    stopped,
  }
}

/** A matrix past all numbers fixes its values as little as none does. */
const finite = (matrix: readonly (readonly number[])[] | null) =>
  matrix?.every((row) => row.every(Number.isFinite)) ? matrix : null
