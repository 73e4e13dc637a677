import { failed, ok, problem, type Result } from '../../kernel/index.js'
import { refusedOutside } from '../range.js'
import { levenbergMarquardt, type NonlinearFit } from './levenberg.js'

/** A curve that data of one's own can be fitted with, as y of x. */
export interface NamedCurve {
  readonly formula: string
  readonly parameters: number
  readonly at: (b: readonly number[], x: number) => number
  /** A place to start from, seen from the data; null where none can be seen and one must be given. */
  readonly startFrom: ((points: readonly XY[]) => number[]) | null
}
/** One pair of data: x and the y measured there. */
export type XY = readonly [x: number, y: number]

const ys = (points: readonly XY[]): number[] => points.map(([, y]) => y)
const xs = (points: readonly XY[]): number[] => points.map(([x]) => x)
const at = (b: readonly number[], i: number): number => b[i] as number

/**
 * The curves by name. `rise`, `peak`, `quotient` and `cubics` are those of the certified problems Misra1a, Eckerle4,
 * MGH09 and Thurber of NIST's Statistical Reference Datasets, which the tests solve to six digits.
 */
export const NAMED_CURVES = {
  line: {
    formula: 'b1 + b2·x',
    parameters: 2,
    at: (b, x) => at(b, 0) + at(b, 1) * x,
    startFrom: (points) => [Math.min(...ys(points)), 1],
  },
  rise: {
    formula: 'b1·(1 − exp(−b2·x))',
    parameters: 2,
    at: (b, x) => at(b, 0) * -Math.expm1(-at(b, 1) * x),
    // A third above the greatest value, two thirds of it reached in the middle of the data.
    startFrom: (points) => [
      1.33 * Math.max(...ys(points).map(Math.abs)),
      2 / Math.max(1e-12, ...xs(points).map(Math.abs)),
    ],
  },
  peak: {
    formula: 'b1/b2 · exp(−(x − b3)² / (2·b2²))',
    parameters: 3,
    at: (b, x) => (at(b, 0) / at(b, 1)) * Math.exp(-0.5 * ((x - at(b, 2)) / at(b, 1)) ** 2),
    startFrom: (points) => {
      const highest = points.reduce((most, point) => (point[1] > most[1] ? point : most))
      const width = Math.max(1e-12, (Math.max(...xs(points)) - Math.min(...xs(points))) / 10)
      return [highest[1] * width, width, highest[0]]
    },
  },
  quotient: {
    formula: 'b1·(x² + b2·x) / (x² + b3·x + b4)',
    parameters: 4,
    at: (b, x) => (at(b, 0) * (x * x + x * at(b, 1))) / (x * x + x * at(b, 2) + at(b, 3)),
    startFrom: null,
  },
  cubics: {
    formula: '(b1 + b2·x + b3·x² + b4·x³) / (1 + b5·x + b6·x² + b7·x³)',
    parameters: 7,
    at: (b, x) =>
      (at(b, 0) + x * (at(b, 1) + x * (at(b, 2) + x * at(b, 3)))) /
      (1 + x * (at(b, 4) + x * (at(b, 5) + x * at(b, 6)))),
    startFrom: null,
  },
} as const satisfies Record<string, NamedCurve>
/** A curve of {@link NAMED_CURVES} by its name. */
export type CurveName = keyof typeof NAMED_CURVES

/** Ranges of a fit of one's own data; assumptions of ours. */
const FIT_RANGES = { value: { low: -1e12, high: 1e12 }, points: { most: 2000 } } as const

/**
 * Least squares of one named curve on pairs (x, y): value, covariance, residuals and why it stopped, as
 * `levenbergMarquardt` gives them. `start`: one number a parameter; left out, one is seen from the data where the
 * curve allows it.
 *
 * At least as many pairs as parameters and at most 2000, numbers from −10¹² to 10¹²; else refused, as are a start of
 * another length and one at which the curve has no value. A fit that did not converge is an answer that says so:
 * look at `stopped` before using it. About 10 ms for a hundred pairs.
 */
export function fitNamedCurve(name: CurveName, points: readonly XY[], start?: readonly number[]): Result<NonlinearFit> {
  const curve: NamedCurve = NAMED_CURVES[name]
  const refused = refusedPoints(curve, points)
  if (refused) return refused
  const from = start ?? curve.startFrom?.(points)
  if (from === undefined || from.length !== curve.parameters)
    return failed(
      problem('fit.bad-start', { curve: name, count: from?.length ?? 0, wanted: curve.parameters }, 'start'),
    )
  const residuals = (b: readonly number[]): number[] => points.map(([x, y]) => curve.at(b, x) - y)
  const unusable = from.some((b) => !Number.isFinite(b)) || residuals(from).some((r) => !Number.isFinite(r * r))
  return unusable
    ? failed(problem('fit.no-value-at-start', { curve: name, start: from.join(', ') }, 'start'))
    : ok(levenbergMarquardt(residuals, from))
}

function refusedPoints({ parameters }: NamedCurve, points: readonly XY[]) {
  if (points.length < parameters || points.length > FIT_RANGES.points.most)
    return failed(
      problem('fit.points', { count: points.length, fewest: parameters, most: FIT_RANGES.points.most }, 'points'),
    )
  for (const [i, pair] of points.entries())
    for (const value of pair) {
      const refused = refusedOutside('fit.bad-value', `A number of pair ${i + 1}`, value, FIT_RANGES.value, 'points')
      if (refused) return refused
    }
  return null
}
