import { levenbergMarquardt } from '../../../src/science/fitting/index.js'
import data from '../data/nist.json' with { type: 'json' }
import type { Check } from './check.js'

type Model = (b: readonly number[], x: number) => number
const at = (b: readonly number[], i: number): number => b[i - 1] as number

/** The models as certified, parameters counted from 1 as there. */
const MODELS: Readonly<Record<string, Model>> = {
  Misra1a: (b, x) => at(b, 1) * (1 - Math.exp(-at(b, 2) * x)),
  Thurber: (b, x) =>
    (at(b, 1) + at(b, 2) * x + at(b, 3) * x ** 2 + at(b, 4) * x ** 3) /
    (1 + at(b, 5) * x + at(b, 6) * x ** 2 + at(b, 7) * x ** 3),
  MGH09: (b, x) => (at(b, 1) * (x ** 2 + x * at(b, 2))) / (x ** 2 + x * at(b, 3) + at(b, 4)),
  Eckerle4: (b, x) => (at(b, 1) / at(b, 2)) * Math.exp(-0.5 * ((x - at(b, 3)) / at(b, 2)) ** 2),
}

const relative = (found: readonly number[], certified: readonly number[]): number[] =>
  certified.map((value, i) => Math.abs((found[i] ?? Number.NaN) / value - 1))

const checksOf = (problem: (typeof data.problems)[number], start: number): Check[] => {
  const { name, points, certified, deviations, sumOfSquares, residualDeviation } = problem
  const model = MODELS[name] as Model
  const found = () =>
    levenbergMarquardt(
      (b) => points.map(([x, y]) => model(b, x as number) - (y as number)),
      problem.starts[start] as number[],
    )
  return [
    {
      rows: certified.map((_, i) => `nist-${name}.b${i + 1}`),
      says: `${name} from start ${start + 1}: values, and that it converged`,
      tolerance: data.tolerance.relative,
      errors: () => {
        const fit = found()
        return [...relative(fit.value, certified), fit.stopped === 'converged' ? 0 : 1]
      },
    },
    {
      rows: [`nist-${name}.sum-of-squares`, `nist-${name}.residual-deviation`],
      says: `${name} from start ${start + 1}: standard deviations and what is left over`,
      tolerance: data.tolerance.deviation,
      errors: () => {
        const fit = found()
        return [
          ...relative(fit.standardErrors ?? [], deviations),
          ...relative(
            [fit.sumOfSquares, fit.residualStandardDeviation ?? Number.NaN],
            [sumOfSquares, residualDeviation],
          ),
        ]
      },
    },
  ]
}

export const regressions: readonly Check[] = data.problems.flatMap((problem) =>
  problem.starts.flatMap((_, start) => checksOf(problem, start)),
)
