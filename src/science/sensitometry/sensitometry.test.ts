import { describe, expect, it } from 'vitest'
import { expectOk, type Problem, type Result, type Seconds } from '../../kernel/index.js'
import {
  answerOf,
  averageGradient,
  calibrationOf,
  characteristicCurve,
  compareContrasts,
  contrastIndex,
  contrastOf,
  densityByEnlarger,
  familyOf,
  filmSpeed,
  firstReaching,
  gammaOf,
  gradeFor,
  indexOfFrame,
  namedGradient,
  nameSpeed,
  ownIndex,
  readZones,
  type StripInput,
  stepsBehindTablet,
  stopsOfAperture,
} from './index.js'

const rising = (slope: number, count = 21, from = -3): StripInput['steps'] =>
  Array.from({ length: count }, (_, i) => {
    const logExposure = from + 0.15 * i
    return { logExposure, density: 0.2 + slope * 0.15 * Math.log1p(Math.exp((logExposure + 2.2) / 0.15)) }
  })
const strip = (slope: number, more: Partial<StripInput> = {}) =>
  expectOk(characteristicCurve({ steps: rising(slope), baseFog: { density: 0.2 }, exposure: 'lux-seconds', ...more }))
const refusal = (result: Result<unknown>): Problem => {
  if (result.ok) throw new Error('expected a refusal')
  return result.problem
}

describe('strips that are refused, with the step that is wrong', () => {
  const good = rising(0.65)
  it.each([
    ['three steps', good.slice(0, 3), 'curve.too-few-steps'],
    [
      'sixty-five steps',
      Array.from({ length: 65 }, (_, i) => ({ logExposure: i, density: 0.1 })),
      'curve.too-many-steps',
    ],
    ['an order the wrong way round', [...good].reverse(), 'curve.steps-out-of-order'],
    ['a density of 7', good.with(3, { logExposure: -2.55, density: 7 }), 'curve.bad-value'],
    ['a fall of 0.20', good.with(15, { logExposure: -0.75, density: 0.7 }), 'curve.falls'],
  ])('%s', (_, steps, code) => {
    expect(refusal(characteristicCurve({ steps })).code).toBe(code)
  })
  it('names the step and the two densities', () => {
    const { sentence } = refusal(characteristicCurve({ steps: good.with(15, { logExposure: -0.75, density: 0.7 }) }))
    expect(sentence).toContain('Step 16 reads 0.7')
  })
})

describe('curve', () => {
  it('evens a small dip out, says so, and never falls', () => {
    const steps = rising(0.65).with(12, { logExposure: -1.2, density: 0.85 })
    const dipped = steps.with(13, { logExposure: -1.05, density: 0.84 })
    const { curve, warnings } = expectOk(characteristicCurve({ steps: dipped }))
    expect(warnings).toContainEqual({ code: 'dip-evened-out', steps: [14] })
    expect(curve.at(-1.05)).toBeGreaterThanOrEqual(curve.at(-1.2))
  })
  it('says when the lightest step stands for clear film', () => {
    const { warnings } = expectOk(characteristicCurve({ steps: rising(0.65) }))
    expect(warnings[0]?.code).toBe('base-from-lightest-step')
    expect(strip(0.65).warnings).toEqual([])
  })
  it('says when steps are too far apart to show a toe', () => {
    const everySecond = rising(0.65).filter((_, i) => i % 2 === 0)
    const warning = strip(0.65, { steps: everySecond }).warnings[0]
    expect(warning?.code === 'steps-far-apart' && warning.apart).toBeCloseTo(0.3, 9)
  })
  it('follows precise readings more closely than noisy ones', () => {
    const bumped = rising(0.65).map((step, i) => (i === 10 ? { ...step, density: step.density + 0.015 } : step))
    const miss = (readingError: number) => {
      const { curve } = strip(0.65, { steps: bumped, readingError })
      return Math.abs(curve.at(-1.5) - (bumped[10]?.density ?? 0))
    }
    expect(miss(0.001)).toBeLessThan(0.002)
    expect(miss(0.03)).toBeGreaterThan(0.008)
  })
  it('finds the least exposure of a density, and none where there is none', () => {
    const { curve } = strip(0.65)
    expect(curve.at(firstReaching(curve, 0.9) ?? Number.NaN)).toBeCloseTo(0.9, 9)
    expect(firstReaching(curve, 3)).toBeNull()
  })
})

describe('speed', () => {
  it('has none when the exposures are only right among each other', () => {
    expect(refusal(filmSpeed(strip(0.65, { exposure: 'relative' }))).code).toBe('speed.relative-only')
  })
  it('off the triangle says which way to develop', () => {
    expect(expectOk(filmSpeed(strip(0.8))).refusal?.sentence).toContain('for less time')
    expect(expectOk(filmSpeed(strip(0.5))).refusal?.sentence).toContain('for longer')
  })
  it('is sure only when the whole interval of the rise lies on one side', () => {
    expect(expectOk(filmSpeed(strip(0.6485))).sure).toBe(false)
    expect(expectOk(filmSpeed(strip(0.6485, { readingError: 0.002, stripScatter: 0.001 }))).sure).toBe(true)
    expect(expectOk(filmSpeed(strip(0.9))).sure).toBe(true)
  })
  it('needs both points of the triangle', () => {
    expect(refusal(filmSpeed(strip(0.65, { steps: rising(0.65, 10) }))).code).toBe('curve.beyond-exposure')
    expect(refusal(filmSpeed(strip(0.65, { steps: rising(0.65, 10, -5) }))).code).toBe('curve.not-reached')
    expect(refusal(filmSpeed(strip(0.65, { steps: rising(0.65, 14, -1.8) }))).code).toBe('curve.starts-too-dense')
  })
  it('is refused a name outside the list', () => {
    expect(refusal(nameSpeed(2)).code).toBe('speed.outside-list')
    expect(refusal(nameSpeed(20_000)).code).toBe('speed.outside-list')
  })
})

describe('contrast', () => {
  it('reads the straight part for gamma', () => {
    expect(expectOk(gammaOf(strip(0.65, { readingError: 0.001 }).curve))).toBeCloseTo(0.65, 3)
    const level = strip(0.65, { steps: rising(0.0001) })
    expect(refusal(gammaOf(level.curve)).code).toBe('curve.no-straight-part')
  })
  it('an index is not defined when the far arc leaves the strip', () => {
    expect(refusal(contrastIndex(strip(0.65, { steps: rising(0.65, 15) }))).code).toBe('curve.beyond-exposure')
  })
  it('refuses points that are none', () => {
    const { curve } = strip(0.65)
    expect(refusal(averageGradient(curve, { fromNet: 0.5, to: { net: 0.4 } })).code).toBe('curve.bad-value')
    expect(refusal(averageGradient(curve, { fromNet: 0.1, to: { chord: 9 } })).code).toBe('curve.bad-value')
  })
  it('is compared by one measure only', () => {
    const [soft, hard] = [strip(0.5), strip(0.8)]
    const by = (curve: typeof soft, measure: 'g-bar' | 'contrast-index') => ({
      measure,
      contrast: expectOk(contrastOf(curve, measure)),
    })
    expect(compareContrasts(by(soft, 'g-bar'), by(hard, 'contrast-index'))).toEqual({
      comparable: false,
      why: 'different-measures',
    })
    const same = compareContrasts(by(soft, 'g-bar'), by(hard, 'g-bar'))
    expect(same.comparable && same.low > 0.1 && same.high < 0.4).toBe(true)
  })
  it('scatter between strips widens what is said of the film, not of the strip', () => {
    const narrow = expectOk(namedGradient(strip(0.65, { stripScatter: 0 }), 'g-bar'))
    const wide = expectOk(namedGradient(strip(0.65, { stripScatter: 0.04 }), 'g-bar'))
    expect(wide.byReadings).toBe(narrow.byReadings)
    expect((wide.high ?? 0) - (wide.low ?? 0)).toBeGreaterThan(2 * ((narrow.high ?? 0) - (narrow.low ?? 0)))
  })
})

describe('family of strips', () => {
  const timed = [300, 480, 720].map((time) => ({ time: time as Seconds, slope: 0.95 * -Math.expm1(-0.003 * time) }))
  const family = (exposure: 'lux-seconds' | 'relative') =>
    expectOk(
      familyOf(
        timed.map(({ time, slope }) => ({ time, curve: strip(slope, { exposure }) })),
        'g-bar',
      ),
    )
  it('gives a time, the speed that goes with it, and the fog', () => {
    const answer = expectOk(answerOf(family('lux-seconds'), 0.65))
    expect(answer.time.time).toBeGreaterThan(300)
    expect(answer.time.time).toBeLessThan(480)
    expect(answer.speed?.named.degrees).toBeGreaterThanOrEqual(20)
    expect(answer.baseFog).toBeCloseTo(0.2, 2)
  })
  it('has no speed without lux-seconds or outside the strips, and still a time', () => {
    expect(expectOk(answerOf(family('relative'), 0.65)).speed).toBeNull()
    const beyond = expectOk(answerOf(family('lux-seconds'), 0.83))
    expect(beyond.speed).toBeNull()
    expect(beyond.time.beyondStrips).toBe(true)
  })
  it('tells which strip has no such contrast', () => {
    const thin = characteristicCurve({ steps: rising(0.02) })
    expect(refusal(familyOf([{ time: 300 as Seconds, curve: expectOk(thin) }], 'g-bar')).code).toBe('curve.not-reached')
  })
})

describe('film without a lab', () => {
  it('reads marked apertures as the stops they stand for', () => {
    expect(expectOk(stopsOfAperture(11))).toBe(7)
    expect(expectOk(stopsOfAperture(1))).toBe(0)
    expect(expectOk(stopsOfAperture(13, 3))).toBeCloseTo(22 / 3, 9)
  })
  it('twice the time is half the index', () => {
    const normal = { aperture: 8, time: 0.01 }
    expect(expectOk(indexOfFrame(100, normal, { aperture: 8, time: 0.02 }))).toBeCloseTo(50, 9)
  })
  it('asks for more or less light when no frame meets the speed point', () => {
    const frames = [100, 200, 400].map((index, i) => ({ index, netDensity: 0.08 - 0.02 * i }))
    expect(refusal(ownIndex(frames)).sentence).toContain('more exposure')
    expect(
      refusal(ownIndex(frames.map((frame) => ({ ...frame, netDensity: frame.netDensity + 0.2 })))).sentence,
    ).toContain('less exposure')
  })
  it('states what a match under the enlarger leaves open', () => {
    expect(expectOk(densityByEnlarger(10, 13)).standardError).toBeCloseTo(0.0307, 4)
    expect(refusal(densityByEnlarger(13, 10)).code).toBe('curve.bad-value')
  })
  it('calibrates between two known steps, and takes no contradiction', () => {
    const { correct } = expectOk(
      calibrationOf([
        { read: 0.2, true: 0.3 },
        { read: 1, true: 1.2 },
      ]),
    )
    expect(expectOk(correct(0.6)).density).toBeCloseTo(0.75, 9)
    expect(refusal(correct(1.1)).code).toBe('curve.outside-calibration')
    expect(
      refusal(
        calibrationOf([
          { read: 0.2, true: 0.3 },
          { read: 1, true: 0.2 },
        ]),
      ).code,
    ).toBe('curve.bad-calibration')
    expect(expectOk(expectOk(calibrationOf([])).correct(0.5))).toMatchObject({ density: 0.5, basis: 'uncalibrated' })
  })
  it('sees that a speed is not met at zone I', () => {
    expect(expectOk(readZones([0.01, 0.07, 0.2, 0.3, 0.4, 0.6, 0.7, 0.9, 1.1])).speedMet).toBe(false)
  })
  it('puts a range on a bound to the softer grade', () => {
    expect(expectOk(gradeFor(0.95)).grade).toBe(2)
    expect(refusal(gradeFor(2)).code).toBe('curve.bad-value')
  })
  it('pairs a tablet with as many readings', () => {
    expect(refusal(stepsBehindTablet(0, [0.1, 0.2], [0.5])).code).toBe('curve.tablet-mismatch')
  })
})
