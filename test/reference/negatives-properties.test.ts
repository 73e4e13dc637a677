import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { expectOk, type Seconds } from '../../src/kernel/index.js'
import { isotonic, qrFactors } from '../../src/science/fitting/index.js'
import {
  atRate,
  type ContrastLaw,
  characteristicCurve,
  contrastAfter,
  contrastForN,
  contrastIndexOf,
  densityOf,
  ewmaChart,
  filmSpeed,
  fitContrast,
  individualsChart,
  lawFromTwoStrips,
  logSpeedPoint,
  namedGradient,
  nOfContrast,
  ownTime,
  riseFromSpeedPoint,
  timeForContrast,
  transmittanceOf,
  watkinsTime,
} from '../../src/science/index.js'
import { bruteContrastIndex } from './simulate/coverage.js'
import { chance, simulateStrip, type Truth, trueExposure, trueNet } from './simulate/strips.js'
import { seeded } from './support.js'

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const truths: fc.Arbitrary<Truth> = fc.record({ gamma: between(0.4, 1.2), base: between(0.05, 0.4) })
const exact = (truth: Truth) => ({
  at: (x: number) => truth.base + trueNet(truth, x),
  slopeAt: () => Number.NaN,
  baseFog: truth.base,
  from: -4,
  to: 1,
})
const laws: fc.Arbitrary<ContrastLaw> = fc.record({
  most: between(0.7, 2.5),
  rate: between(0.001, 0.01),
  start: between(0, 60),
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
})

describe('what must stay the same', () => {
  const strips = fc
    .tuple(truths, fc.integer({ min: 1, max: 1e6 }))
    .map(([truth, seed]) => ({ ...simulateStrip(truth, chance(seed)), exposure: 'lux-seconds' as const }))

  it('a curve never falls, whatever the noise, and keeps to the readings within a few of their errors', () => {
    fc.assert(
      fc.property(strips, (input) => {
        const { curve } = expectOk(characteristicCurve(input))
        for (let x = curve.from; x < curve.to; x += 0.01)
          expect(curve.at(x + 0.01)).toBeGreaterThanOrEqual(curve.at(x) - 1e-12)
        for (const { logExposure, density } of input.steps)
          expect(Math.abs(curve.at(logExposure) - density)).toBeLessThan(0.05)
      }),
      seeded(60),
    )
  })

  it('ten times the light is ten times the speed less, the same contrast and the same intervals', () => {
    fc.assert(
      fc.property(strips, (input) => {
        const brighter = {
          ...input,
          steps: input.steps.map((step) => ({ ...step, logExposure: step.logExposure + 1 })),
        }
        const [one, other] = [input, brighter].map((strip) => expectOk(characteristicCurve(strip)))
        if (!one || !other) throw new Error('two curves')
        const [speed, tenth] = [filmSpeed(one), filmSpeed(other)]
        if (speed.ok && tenth.ok) expect(tenth.value.speed.value * 10).toBeCloseTo(speed.value.speed.value, 5)
        const [contrast, same] = [namedGradient(one, 'g-bar'), namedGradient(other, 'g-bar')]
        if (contrast.ok && same.ok) {
          expect(same.value.value).toBeCloseTo(contrast.value.value, 8)
          expect(same.value.low ?? 0).toBeCloseTo(contrast.value.low ?? 0, 6)
        }
      }),
      seeded(30),
    )
  })

  it('a wider reading error widens the interval', () => {
    fc.assert(
      fc.property(strips, (input) => {
        const width = (readingError: number) => {
          const found = namedGradient(expectOk(characteristicCurve({ ...input, readingError })), 'g-bar')
          return found.ok ? (found.value.byReadings ?? 0) : 0
        }
        expect(width(0.02)).toBeGreaterThan(width(0.01))
      }),
      seeded(30),
    )
  })

  it('density and transmittance, N and contrast, time and contrast undo each other', () => {
    fc.assert(
      fc.property(between(0, 6), between(-3, 3), laws, between(0.05, 0.95), (density, n, law, part) => {
        expect(expectOk(densityOf(expectOk(transmittanceOf(density))))).toBeCloseTo(density, 10)
        for (const model of ['no-flare', 'flare'] as const) {
          const back = nOfContrast(expectOk(contrastForN(n, model)).gradient, model)
          expect(expectOk(back).n).toBeCloseTo(n, 9)
        }
        const time = expectOk(timeForContrast(law, part * law.most))
        expect(expectOk(contrastAfter(law, time))).toBeCloseTo(part * law.most, 9)
      }),
      seeded(300),
    )
  })

  it('two strips give back the law they follow, and only if the image begins at once', () => {
    fc.assert(
      fc.property(laws, between(100, 600), (law, time) => {
        const at = (start: number, t: number) => expectOk(contrastAfter({ ...law, start }, t as Seconds))
        const found = lawFromTwoStrips(time, at(0, time), at(0, 2 * time))
        if (found.ok) {
          expect(found.value.most / law.most).toBeCloseTo(1, 6)
          expect(found.value.rate / law.rate).toBeCloseTo(1, 6)
        }
        const late = lawFromTwoStrips(time, at(50, time), at(50, 2 * time))
        if (late.ok) expect(late.value.rate / law.rate).toBeLessThan(0.99)
      }),
      seeded(200),
    )
  })

  it('warmer by a rate, every contrast comes that much sooner; so the appearance factor stays', () => {
    fc.assert(
      fc.property(laws, between(0.5, 2), between(0.1, 0.9), (law, rate, part) => {
        const warm = expectOk(atRate(law, rate))
        const [time, sooner] = [law, warm].map((l) => expectOk(timeForContrast(l, part * law.most)))
        expect((sooner as number) * rate).toBeCloseTo(time as number, 6)
        const [appears, appearsSooner] = [law, warm].map((l) => expectOk(timeForContrast(l, 0.05)))
        if ((appearsSooner as number) < 0.5) return
        const factor = (time as number) / (appears as number)
        if (factor >= 1 && factor <= 100)
          expect(expectOk(watkinsTime(appearsSooner as Seconds, factor))).toBeCloseTo(sooner as number, 6)
      }),
      seeded(200),
    )
  })

  it('more contrast takes longer, and its own time lies in its interval', () => {
    const fitted = expectOk(
      fitContrast(
        [240, 480, 960].map((time) => ({ time: time as Seconds, contrast: 0.9 * -Math.expm1(-0.003 * time) })),
      ),
    )
    fc.assert(
      fc.property(between(0.46, 0.85), between(0.001, 0.02), (contrast, more) => {
        const [one, other] = [contrast, contrast + more].map((wanted) => ownTime(fitted, wanted))
        if (!one?.ok || !other?.ok) return
        expect(other.value.time).toBeGreaterThan(one.value.time)
        if (one.value.low !== null) expect(one.value.low).toBeLessThan(one.value.time)
        if (one.value.high !== null) expect(one.value.high).toBeGreaterThan(one.value.time)
      }),
      seeded(40),
    )
  })

  it('charts move with their values and grow with their scatter', () => {
    fc.assert(
      fc.property(fc.array(between(0, 2), { minLength: 2, maxLength: 20 }), between(-1, 1), (values, by) => {
        const moved = values.map((value) => 2 * value + by)
        const [chart, other] = [values, moved].map((list) => expectOk(individualsChart(list)))
        expect(other?.upper).toBeCloseTo(2 * (chart?.upper ?? 0) + by, 9)
        const [ewma, all] = [0.3, 1].map((weight) => expectOk(ewmaChart(values, { start: 1, deviation: 0.2, weight })))
        expect(all?.averages).toEqual(values)
        expect(ewma?.averages).toHaveLength(values.length)
      }),
      seeded(200),
    )
  })
})
