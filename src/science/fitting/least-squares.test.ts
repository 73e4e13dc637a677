import { describe, expect, it } from 'vitest'
import { isotonic, levenbergMarquardt, monotoneSmoother, qrFactors } from './index.js'

describe('linear least squares by QR', () => {
  it('solves a square system and inverts AᵀA', () => {
    const factors = qrFactors([
      [2, 1],
      [1, 3],
    ])
    expect(factors.solve([5, 10])?.map((x) => Number(x.toFixed(10)))).toEqual([1, 3])
    // AᵀA is [[5, 5], [5, 10]]; its inverse by hand is [[0.4, −0.2], [−0.2, 0.2]].
    expect(
      factors
        .inverseOfSquares()
        ?.flat()
        .map((x) => Number(x.toFixed(10))),
    ).toEqual([0.4, -0.2, -0.2, 0.2])
  })
  it('sees columns that depend on each other', () => {
    const factors = qrFactors([
      [1, 2],
      [2, 4],
      [3, 6],
    ])
    expect(factors.fullRank).toBe(false)
    expect(factors.solve([1, 2, 3])).toBeNull()
    expect(factors.inverseOfSquares()).toBeNull()
  })
  it('throws on what is no system', () => {
    expect(() => qrFactors([])).toThrow(RangeError)
    expect(() => qrFactors([[1, 2]])).toThrow('as many rows')
    expect(() => qrFactors([[1], [2]]).solve([1])).toThrow('Expected 2')
  })
})

describe('nonlinear least squares', () => {
  const line = (values: readonly number[]) => [1, 2, 3].map((x) => (values[0] as number) * x - 2 * x)
  it('converges on a line in few steps and leaves nothing over', () => {
    const fit = levenbergMarquardt(line, [0.5])
    expect(fit.value[0]).toBeCloseTo(2, 9)
    expect(fit.stopped).toBe('converged')
    expect(fit.degreesOfFreedom).toBe(2)
    expect(fit.evaluations).toBeGreaterThan(fit.iterations)
  })
  it('says when it was not given enough steps', () => {
    const fit = levenbergMarquardt((v) => [Math.exp(v[0] as number) - 5, (v[0] as number) - 9], [0], {
      mostIterations: 2,
    })
    expect(fit.stopped).toBe('iteration limit')
  })
  it('says when nothing leads downhill', () => {
    // A step onto NaN is never taken; from here every step is one.
    const fit = levenbergMarquardt(([v]) => (v === 1 ? [1] : [Number.NaN]), [1])
    expect(fit.stopped).toBe('stalled')
  })
  it('states no scatter when nothing is left over to judge by', () => {
    const fit = levenbergMarquardt(([v]) => [(v as number) - 3], [1])
    expect(fit.residualStandardDeviation).toBeNull()
    expect(fit.standardErrors).toBeNull()
  })
  it('throws without a finite start', () => {
    expect(() => levenbergMarquardt(() => [Number.NaN], [1])).toThrow(RangeError)
    expect(() => levenbergMarquardt(() => [1], [1, 2])).toThrow(RangeError)
  })
})

describe('pooling', () => {
  it('takes dips out by their weighted mean', () => {
    expect(isotonic([1, 3, 2, 4], [1, 1, 1, 1])).toEqual([1, 2.5, 2.5, 4])
    expect(isotonic([3, 0], [1, 3])).toEqual([0.75, 0.75])
    expect(() => isotonic([1, 2], [1, 0])).toThrow(RangeError)
  })
})

describe('smooth monotone curve', () => {
  const xs = [0, 1, 2, 3, 4, 5, 6]
  const errors = xs.map(() => 0.1)
  it('leaves straight lines and rising parabolas alone', () => {
    const smoother = monotoneSmoother(xs, errors, 1)
    for (const f of [(x: number) => 2 * x + 1, (x: number) => x * x]) {
      const curve = smoother.through(xs.map(f))
      for (const x of [0, 0.5, 2.3, 5.9, 6]) expect(curve.at(x)).toBeCloseTo(f(x), 6)
    }
  })
  it('never falls, and goes on with its end tangent', () => {
    const curve = monotoneSmoother(xs, errors, 5).through([0, 0.2, 0.1, 1, 0.9, 3, 3.05])
    for (let x = -1; x < 7; x += 0.01) expect(curve.at(x + 0.01)).toBeGreaterThanOrEqual(curve.at(x) - 1e-12)
    expect(curve.slopeAt(9)).toBe(curve.slopeAt(6))
  })
  it('is the straight line through two points', () => {
    const curve = monotoneSmoother([1, 3], [0.1, 0.1], 1).through([2, 4])
    expect(curve.at(2)).toBeCloseTo(3, 9)
  })
  it('throws on what is no curve', () => {
    expect(() => monotoneSmoother([1], [0.1], 1)).toThrow(RangeError)
    expect(() => monotoneSmoother([1, 1], [0.1, 0.1], 1)).toThrow('rises')
    expect(() => monotoneSmoother([1, 2], [0.1, 0.1], 0)).toThrow(RangeError)
  })
})
