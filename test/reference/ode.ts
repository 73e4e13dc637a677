import { createRequire } from 'node:module'

/** The part of the ODE library that is used; it ships sources without usable types. */
interface Library {
  absoluteTolerance: number
  relativeTolerance: number
  solve(f: (x: number, y: number[]) => number[], from: number, start: number[], to: number): { y: number[] }
}
const { Solver } = createRequire(import.meta.url)('odex') as { Solver: new (dimension: number) => Library }

type Slope = (at: number, y: number) => number

/** Where y comes to from one x to another, by a library that knows nothing of our closed forms. */
export function integrated(slope: Slope, from: number, start: number, to: number): number {
  const solver = new Solver(1)
  solver.absoluteTolerance = 1e-12
  solver.relativeTolerance = 1e-12
  return solver.solve((x, [y]) => [slope(x, y as number)], from, [start], to).y[0] as number
}

/** Where a function that crosses zero once does so: halves again and again, and uses nothing else. */
export function crossing(of: (x: number) => number, low: number, high: number): number {
  let [from, to] = [low, high]
  const rising = of(high) > of(low)
  for (let i = 0; i < 200; i++) {
    const middle = (from + to) / 2
    if (of(middle) > 0 === rising) to = middle
    else from = middle
  }
  return (from + to) / 2
}
