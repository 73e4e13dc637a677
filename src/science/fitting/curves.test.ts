import { describe, expect, it } from 'vitest'
import { expectOk } from '../../kernel/index.js'
import { type CurveName, fitNamedCurve, NAMED_CURVES, type XY } from './index.js'

const pairs = (name: CurveName, b: readonly number[], xs: readonly number[]): XY[] =>
  xs.map((x) => [x, NAMED_CURVES[name].at(b, x)])
const codeOf = (...asked: Parameters<typeof fitNamedCurve>): string => {
  const found = fitNamedCurve(...asked)
  return found.ok ? 'served' : found.problem.code
}
const XS = Array.from({ length: 12 }, (_, i) => 1 + i)

describe('a named curve', () => {
  const cases: [CurveName, number[], number[]?][] = [
    ['line', [-4, 0.25]],
    ['rise', [2.1, 0.4]],
    ['peak', [3, 1.5, 6]],
    ['quotient', [0.2, 0.3, 0.1, 0.14], [0.25, 0.39, 0.415, 0.39]],
  ]
  it.each(cases)('%s comes back from its own values', (name, b, start) => {
    const { value, stopped } = expectOk(fitNamedCurve(name, pairs(name, b, XS), start))
    expect(stopped).toBe('converged')
    for (const [i, found] of value.entries()) expect(found).toBeCloseTo(b[i] as number, 5)
  })

  it('needs as many pairs as parameters, and a start of as many numbers', () => {
    expect(codeOf('rise', [[1, 2]])).toBe('fit.points')
    expect(codeOf('quotient', pairs('line', [0, 1], XS))).toBe('fit.bad-start')
    expect(codeOf('line', pairs('line', [0, 1], XS), [1])).toBe('fit.bad-start')
  })

  it('refuses numbers that are none, and a start at which it has no value', () => {
    expect(
      codeOf('line', [
        [1, Number.NaN],
        [2, 3],
      ]),
    ).toBe('fit.bad-value')
    expect(codeOf('peak', pairs('line', [0, 1], XS), [1, 0, 3])).toBe('fit.no-value-at-start')
  })

  it('finds a start in any data for the curves that have one', () => {
    const level: XY[] = XS.map((x) => [x, 0])
    for (const name of ['line', 'rise', 'peak'] as const) {
      const found = fitNamedCurve(name, level)
      if (found.ok) for (const value of found.value.residuals) expect(Number.isFinite(value)).toBe(true)
      else expect(found.problem.code).toBe('fit.no-value-at-start')
    }
  })
})
