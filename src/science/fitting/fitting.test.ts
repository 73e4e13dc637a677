import { describe, expect, it } from 'vitest'
import { brent, integrate, linearLeastSquares, pchip, studentT95 } from './index.js'

describe('least squares line', () => {
  it('returns the line it was given, without scatter', () => {
    const line = linearLeastSquares([1, 2, 4, 7], [5, 7, 11, 17])
    expect(line.slope).toBeCloseTo(2, 12)
    expect(line.intercept).toBeCloseTo(3, 12)
    expect(line.slopeStandardError).toBeCloseTo(0, 12)
    expect(line.degreesOfFreedom).toBe(2)
  })

  it('two points leave nothing to judge by', () => {
    expect(linearLeastSquares([0, 2], [1, 5])).toEqual({
      slope: 2,
      intercept: 1,
      slopeStandardError: null,
      residualStandardError: null,
      degreesOfFreedom: 0,
    })
  })

  it('states the standard errors worked out by hand', () => {
    // Residuals of 1, 3, 2 about y = 1.5 + 0.5 x (x = 0, 1, 2): −0.5, 1, −0.5; squares 1.5 over 1 degree of freedom.
    const line = linearLeastSquares([0, 1, 2], [1, 3, 2])
    expect(line.slope).toBeCloseTo(0.5, 12)
    expect(line.intercept).toBeCloseTo(1.5, 12)
    expect(line.residualStandardError).toBeCloseTo(Math.sqrt(1.5), 12)
    expect(line.slopeStandardError).toBeCloseTo(Math.sqrt(1.5 / 2), 12)
  })

  it('throws on what is no line', () => {
    expect(() => linearLeastSquares([1], [1])).toThrow(RangeError)
    expect(() => linearLeastSquares([1, 2], [1])).toThrow(RangeError)
    expect(() => linearLeastSquares([2, 2], [1, 3])).toThrow('two different x')
  })
})

describe('monotone curve', () => {
  it('goes through its points and never past them', () => {
    const [xs, ys] = [
      [0, 1, 1.5, 4, 6],
      [9, 7, 6.9, 2, 2],
    ]
    const curve = pchip(xs, ys)
    xs.forEach((x, i) => {
      expect(curve.at(x)).toBeCloseTo(ys[i] as number, 12)
    })
    for (let x = 0; x < 6; x += 0.01) expect(curve.at(x + 0.01)).toBeLessThanOrEqual(curve.at(x) + 1e-12)
    expect(curve.at(5)).toBeCloseTo(2, 12)
  })

  it('is a straight line through two points', () => {
    const curve = pchip([10, 20], [3, 1])
    expect(curve.at(14)).toBeCloseTo(2.2, 12)
    expect(curve.slopeAt(14)).toBeCloseTo(-0.2, 12)
  })

  it('throws on what is no curve', () => {
    expect(() => pchip([1], [1])).toThrow(RangeError)
    expect(() => pchip([1, 2], [1])).toThrow(RangeError)
    expect(() => pchip([1, 1], [1, 2])).toThrow('rises')
  })
})

describe('root', () => {
  it.each([
    ['x³ − 2', (x: number) => x ** 3 - 2, 0, 2, Math.cbrt(2)],
    ['falling', (x: number) => Math.exp(-x) - 0.3, 0, 5, -Math.log(0.3)],
    ['flat near the root', (x: number) => (x - 1) ** 9, -3, 7, 1],
    ['at the low end', (x: number) => x - 2, 2, 3, 2],
    ['at the high end', (x: number) => x - 3, 2, 3, 3],
  ])('%s', (name, f, low, high, root) => {
    // A ninth power is flat to the last digit within a thousandth of its root.
    expect(Math.abs(brent(f, low, high, 1e-10) - root)).toBeLessThan(name.startsWith('flat') ? 2e-2 : 1e-9)
  })
  it('works on values whose product vanishes', () => {
    expect(brent((x) => (x - 0.25) * 1e-300, 0, 1, 1e-9)).toBeCloseTo(0.25, 8)
  })
  it('throws without a change of sign', () => {
    expect(() => brent((x) => x * x + 1, -1, 1, 1e-9)).toThrow('No change of sign')
  })
  it('does not need more than a few questions for a smooth curve', () => {
    let asked = 0
    brent(
      (x) => {
        asked++
        return Math.exp(x) - 5
      },
      0,
      10,
      1e-10,
    )
    expect(asked).toBeLessThan(20)
  })
})

describe('sums', () => {
  it('is exact for polynomials: seventh degree by four points, nineteenth by ten', () => {
    expect(integrate((x) => x ** 7, 1, 3, 4)).toBeCloseTo((3 ** 8 - 1) / 8, 9)
    expect(integrate((x) => x ** 19, 0, 1)).toBeCloseTo(1 / 20, 14)
    expect(integrate((x) => x ** 8, -1, 1, 4)).not.toBeCloseTo(2 / 9, 4)
  })
  it('keeps the sign of its direction', () => {
    expect(integrate(Math.exp, 0, 2)).toBeCloseTo(Math.exp(2) - 1, 12)
    expect(integrate(Math.exp, 2, 0)).toBeCloseTo(1 - Math.exp(2), 12)
  })
})

describe("Student's t", () => {
  it('falls towards the normal distribution', () => {
    expect(studentT95(1)).toBe(12.7062)
    expect(studentT95(30)).toBe(2.0423)
    expect(studentT95(31)).toBeLessThan(studentT95(30))
    expect(studentT95(1e6)).toBeCloseTo(1.959966, 5)
  })
  it.each([0, -1, 1.5, Number.NaN])('throws for %d degrees of freedom', (degrees) => {
    expect(() => studentT95(degrees)).toThrow(RangeError)
  })
})
