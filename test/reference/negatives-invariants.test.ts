import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { expectOk, type Seconds } from '../../src/kernel/index.js'
import {
  atRate,
  characteristicCurve,
  contrastAfter,
  contrastForN,
  densityOf,
  ewmaChart,
  filmSpeed,
  fitContrast,
  individualsChart,
  lawFromTwoStrips,
  namedGradient,
  nOfContrast,
  ownTime,
  timeForContrast,
  transmittanceOf,
  watkinsTime,
} from '../../src/science/index.js'
import { between, laws, truths } from './negatives-support.js'
import { chance, simulateStrip } from './simulate/strips.js'
import { seeded } from './support.js'

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
        const found = lawFromTwoStrips(time as Seconds, at(0, time), at(0, 2 * time))
        if (found.ok) {
          expect(found.value.most / law.most).toBeCloseTo(1, 6)
          expect(found.value.rate / law.rate).toBeCloseTo(1, 6)
        }
        const late = lawFromTwoStrips(time as Seconds, at(50, time), at(50, 2 * time))
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
