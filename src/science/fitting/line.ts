/** A straight line y = intercept + slope · x found by least squares. */
export interface Line {
  readonly slope: number
  readonly intercept: number
  /** Standard error of the slope; null for two points, which leave nothing over to judge by. */
  readonly slopeStandardError: number | null
  /** Scatter of the points about the line; null for two points. */
  readonly residualStandardError: number | null
  readonly degreesOfFreedom: number
}

/**
 * Ordinary least squares of y on x, all points weighing the same. Sums are taken about the mean of x,
 * so that values far from zero (1/T in kelvin) lose no digits.
 *
 * Needs two or more finite points that are not all at one x; anything else is a bug and throws.
 * Source: Draper & Smith, Applied Regression Analysis, ch. 1.
 */
export function linearLeastSquares(xs: readonly number[], ys: readonly number[]): Line {
  const count = xs.length
  if (count < 2 || ys.length !== count)
    throw new RangeError(`A line needs two or more x with as many y; got ${count} and ${ys.length}.`)
  const meanX = mean(xs)
  const meanY = mean(ys)
  const spread = sum(xs.map((x) => (x - meanX) ** 2))
  if (!(spread > 0)) throw new RangeError('A line needs points at two different x.')
  const slope = sum(xs.map((x, i) => (x - meanX) * ((ys[i] as number) - meanY))) / spread
  const intercept = meanY - slope * meanX
  const degreesOfFreedom = count - 2
  if (degreesOfFreedom === 0)
    return { slope, intercept, slopeStandardError: null, residualStandardError: null, degreesOfFreedom }
  const squares = sum(xs.map((x, i) => ((ys[i] as number) - meanY - slope * (x - meanX)) ** 2))
  const residualStandardError = Math.sqrt(squares / degreesOfFreedom)
  return {
    slope,
    intercept,
    slopeStandardError: residualStandardError / Math.sqrt(spread),
    residualStandardError,
    degreesOfFreedom,
  }
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0)
const mean = (values: readonly number[]): number => sum(values) / values.length
