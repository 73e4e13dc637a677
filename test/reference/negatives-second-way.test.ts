import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { expectOk, type Seconds } from '../../src/kernel/index.js'
import { isotonic, qrFactors } from '../../src/science/fitting/index.js'
import {
  type ContrastLaw,
  contrastAfter,
  contrastIndexOf,
  ewmaChart,
  fitContrast,
  individualsChart,
  logSpeedPoint,
  riseFromSpeedPoint,
} from '../../src/science/index.js'
import { between, laws, truths } from './negatives-support.js'
import { bruteContrastIndex } from './simulate/coverage.js'
import { chance, type Truth, trueExposure, trueNet } from './simulate/strips.js'
import { seeded } from './support.js'

const exact = (truth: Truth) => ({
  at: (x: number) => truth.base + trueNet(truth, x),
  slopeAt: () => Number.NaN,
  baseFog: truth.base,
  from: -4,
  to: 1,
})

describe('a second computation by another method', () => {
  it('contrast index: by trying centres', () => {
    fc.assert(
      fc.property(truths, (truth) => {
        const brute = bruteContrastIndex((x) => trueNet(truth, x), -2.6, -1.9)
        expect(Math.abs(expectOk(contrastIndexOf(exact(truth))).index - brute)).toBeLessThan(1e-5)
      }),
      seeded(25),
    )
  })

  it('triangle: by the formula solved for the exposure, and by walking along the curve', () => {
    fc.assert(
      fc.property(truths, (truth) => {
        const m = trueExposure(truth, 0.1)
        expect(expectOk(logSpeedPoint(exact(truth)))).toBeCloseTo(m, 9)
        expect(expectOk(riseFromSpeedPoint(exact(truth)))).toBeCloseTo(trueNet(truth, m + 1.3) - 0.1, 9)
        let walked = -4
        while (trueNet(truth, walked) < 0.1) walked += 1e-4
        expect(Math.abs(walked - m)).toBeLessThan(1.1e-4)
      }),
      seeded(100),
    )
  })

  it('contrast in time: by small steps of dG/dt = k (G∞ − G)', () => {
    fc.assert(
      fc.property(laws, between(100, 1500), (law, time) => {
        const steps = 2000
        const width = Math.max(0, time - law.start) / steps
        let contrast = 0
        const slope = (g: number) => law.rate * (law.most - g)
        for (let i = 0; i < steps; i++) {
          const [a, b] = [slope(contrast), slope(contrast + (width / 2) * slope(contrast))]
          const c = slope(contrast + (width / 2) * b)
          contrast += (width / 6) * (a + 2 * b + 2 * c + slope(contrast + width * c))
        }
        expect(expectOk(contrastAfter(law, time as Seconds))).toBeCloseTo(contrast, 8)
      }),
      seeded(50),
    )
  })

  it('fitted law: no law of a fine net about it lies nearer to the strips', () => {
    fc.assert(
      fc.property(laws, fc.integer({ min: 1, max: 1e6 }), (law, seed) => {
        const random = chance(seed)
        const points = [240, 330, 480, 660, 960].map((time) => ({
          time: time as Seconds,
          contrast: expectOk(contrastAfter(law, time as Seconds)) + 0.02 * (random() - 0.5),
        }))
        const fitted = fitContrast(points)
        if (!fitted.ok) return
        const squares = (l: ContrastLaw) =>
          points.reduce((sum, p) => sum + (l.most * -Math.expm1(-l.rate * (p.time - l.start)) - p.contrast) ** 2, 0)
        const least = squares(fitted.value.law)
        for (const most of [0.98, 0.995, 1, 1.005, 1.02])
          for (const rate of [0.97, 0.99, 1, 1.01, 1.03])
            for (const later of [-5, -1, 0, 1, 5]) {
              const found = fitted.value.law
              const near = { most: found.most * most, rate: found.rate * rate, start: Math.max(0, found.start + later) }
              expect(squares(near)).toBeGreaterThanOrEqual(least - 1e-12)
            }
      }),
      seeded(40),
    )
  })

  it('pooled readings: by the greatest of the least means', () => {
    fc.assert(
      fc.property(fc.array(between(0, 1), { minLength: 1, maxLength: 12 }), (values) => {
        const mean = (a: number, b: number) => values.slice(a, b + 1).reduce((s, v) => s + v, 0) / (b - a + 1)
        const pooled = isotonic(
          values,
          values.map(() => 1),
        )
        pooled.forEach((value, i) => {
          const byDefinition = Math.max(
            ...values.slice(0, i + 1).map((_, a) => Math.min(...values.slice(i).map((__, j) => mean(a, i + j)))),
          )
          expect(value).toBeCloseTo(byDefinition, 10)
        })
      }),
      seeded(300),
    )
  })

  it('least squares: what is left over is square to every column', () => {
    fc.assert(
      fc.property(
        fc.array(fc.array(between(-5, 5), { minLength: 4, maxLength: 4 }), { minLength: 4, maxLength: 9 }),
        (rows) => {
          const matrix = rows.map(([a, b, c]) => [a as number, b as number, c as number])
          const aim = rows.map((row) => row[3] as number)
          const x = qrFactors(matrix).solve(aim)
          if (x === null || Math.max(...x.map(Math.abs)) > 1e4) return
          const left = matrix.map((row, i) => row.reduce((s, v, j) => s + v * (x[j] as number), 0) - (aim[i] as number))
          for (const column of [0, 1, 2])
            expect(Math.abs(left.reduce((s, v, i) => s + v * (matrix[i]?.[column] as number), 0))).toBeLessThan(1e-8)
        },
      ),
      seeded(300),
    )
  })

  it('moving averages: every value by its own weight, none carried on', () => {
    fc.assert(
      fc.property(
        fc.array(between(-3, 3), { minLength: 1, maxLength: 30 }),
        between(-1, 1),
        between(0.01, 1),
        between(0.05, 1),
        (values, start, deviation, weight) => {
          const { averages, upper, lower } = expectOk(ewmaChart(values, { start, deviation, weight }))
          averages.forEach((average, n) => {
            const weighed = values.slice(0, n + 1).map((value, i) => value * weight * (1 - weight) ** (n - i))
            const whole = weighed.reduce((sum, one) => sum + one, start * (1 - weight) ** (n + 1))
            expect(average).toBeCloseTo(whole, 10)
          })
          // The limits from the weights themselves: squares of a chart that has run for long enough.
          const squares = Array.from({ length: 2000 }, (_, i) => (weight * (1 - weight) ** i) ** 2)
          const half = 3 * deviation * Math.sqrt(squares.reduce((sum, one) => sum + one, 0))
          expect(upper - start).toBeCloseTo(half, 9)
          expect(start - (lower as number)).toBeCloseTo(half, 9)
        },
      ),
      seeded(60),
    )
  })

  it('individuals: what lies outside is farther from the mean than 2.66 mean steps', () => {
    fc.assert(
      fc.property(fc.array(between(-1, 1), { minLength: 2, maxLength: 40 }), fc.nat(39), (calm, at) => {
        const values = calm.map((value, i) => (i === at ? value + 8 : value))
        const chart = expectOk(individualsChart(values))
        let [sum, steps] = [0, 0]
        for (const [i, value] of values.entries()) {
          sum += value
          if (i > 0) steps += Math.abs(value - (values[i - 1] as number))
        }
        const [mean, step] = [sum / values.length, steps / (values.length - 1)]
        // 3 / 1.128 is 2.6596 and more digits.
        const far = values.flatMap((value, i) => (Math.abs(value - mean) > 2.659574 * step + 1e-6 ? [i] : []))
        const near = values.flatMap((value, i) => (Math.abs(value - mean) > 2.659574 * step - 1e-6 ? [i] : []))
        for (const i of far) expect(chart.outside).toContain(i)
        for (const i of chart.outside) expect(near).toContain(i)
      }),
      seeded(200),
    )
  })
})
