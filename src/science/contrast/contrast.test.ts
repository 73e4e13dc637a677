import { describe, expect, it } from 'vitest'
import { expectOk, type Problem, type Result, type Seconds } from '../../kernel/index.js'
import {
  atRate,
  fitContrast,
  lawFromTwoStrips,
  ownTime,
  stripScatterOf,
  timeForContrast,
  watkinsFactorOfMixture,
} from './index.js'

const at = (minutes: number, contrast: number) => ({ time: (60 * minutes) as Seconds, contrast })
const refusal = (result: Result<unknown>): Problem => {
  if (result.ok) throw new Error('expected a refusal')
  return result.problem
}
/** G∞ 0.9, k 0.18 per minute, an image after half a minute. */
const grown = (minutes: number) => at(minutes, 0.9 * -Math.expm1(-0.18 * (minutes - 0.5)))

describe('law from strips', () => {
  it('two strips by doubling assume that the image begins at once, and say so', () => {
    const fitted = expectOk(fitContrast([at(4, 0.5), at(8, 0.75)]))
    expect(fitted).toMatchObject({ method: 'two-strips', startOrigin: 'assumption' })
    expect(fitted.law.start).toBe(0)
  })
  it('two strips at other times assume it too', () => {
    const fitted = expectOk(fitContrast([at(5, 0.5), at(8, 0.65)]))
    expect(fitted).toMatchObject({ method: 'assumed-start', startOrigin: 'assumption' })
    for (const misfit of fitted.misfits) expect(misfit).toBeCloseTo(0, 6)
  })
  it('three strips give the start as well', () => {
    const { law, method } = expectOk(fitContrast([3, 6, 12].map(grown)))
    expect(method).toBe('least-squares')
    expect(law.most).toBeCloseTo(0.9, 5)
    expect(law.rate * 60).toBeCloseTo(0.18, 5)
    expect(law.start).toBeCloseTo(30, 3)
  })
  it('a start before the developer goes in is held at 0', () => {
    const early = [3, 6, 12].map((minutes) => at(minutes, 0.9 * -Math.expm1(-0.18 * (minutes + 1))))
    expect(expectOk(fitContrast(early)).law.start).toBe(0)
  })
  it('keeps the order of the points for its misfits', () => {
    const { misfits } = expectOk(fitContrast([at(16, 0.83), at(4, 0.4), at(8, 0.7), at(11, 0.72)]))
    expect(misfits).toHaveLength(4)
    expect(Math.abs(misfits[1] as number)).toBeLessThan(0.1)
  })
  it.each([
    ['no growth', [at(4, 0.6), at(8, 0.6)], 'contrast.not-a-law'],
    ['twice as much', [at(4, 0.3), at(8, 0.6)], 'contrast.not-a-law'],
    ['one time', [at(4, 0.6), at(4, 0.62)], 'contrast.too-few-strips'],
    ['a fall', [at(4, 0.7), at(8, 0.6), at(12, 0.5)], 'contrast.no-fit'],
    ['a straight line', [at(4, 0.2), at(8, 0.4), at(16, 0.8)], 'contrast.no-fit'],
    ['no strip', [], 'contrast.bad-value'],
    ['a negative contrast', [at(4, -0.2), at(8, 0.4)], 'contrast.bad-value'],
  ])('refuses %s', (_, points, code) => {
    expect(refusal(fitContrast(points)).code).toBe(code)
  })
  it('closed form refuses what the least squares would have to invent', () => {
    expect(refusal(lawFromTwoStrips(240 as Seconds, 0.5, 0.4)).code).toBe('contrast.not-a-law')
  })
})

describe('time for a contrast', () => {
  const three = expectOk(fitContrast([3, 6, 12].map(grown)))
  it('has an interval although three strips leave no misfit', () => {
    const { time, low, high } = expectOk(ownTime(three, 0.6))
    expect(time).toBeCloseTo(60 * (0.5 - Math.log(1 - 0.6 / 0.9) / 0.18), 2)
    expect(time - (low as number)).toBeGreaterThan(10)
    expect((high as number) - time).toBeGreaterThan(10)
  })
  it('a smaller scatter of one’s own narrows it', () => {
    const own = expectOk(fitContrast([3, 6, 12].map(grown), 0.005))
    expect(own.scatter).toEqual({ value: 0.005, origin: 'measured' })
    const width = ({ low, high }: { low: Seconds | null; high: Seconds | null }) => (high as number) - (low as number)
    expect(width(expectOk(ownTime(own, 0.6)))).toBeLessThan(width(expectOk(ownTime(three, 0.6))) / 3)
  })
  it('at the most there is none', () => {
    expect(refusal(timeForContrast({ most: 0.9, rate: 0.003, start: 0 }, 0.9)).code).toBe('contrast.above-most')
  })
  it('up to one N outside the strips is said, past it refused', () => {
    const lowest = grown(3).contrast
    const oneLess = 1 / (1 / lowest + 0.25)
    expect(expectOk(ownTime(three, oneLess + 0.001)).beyondStrips).toBe(true)
    expect(refusal(ownTime(three, oneLess - 0.001)).code).toBe('contrast.beyond-strips')
    expect(expectOk(ownTime(three, 0.6)).beyondStrips).toBe(false)
  })
  it('warmer scales rate and start together', () => {
    const { most, rate, start } = expectOk(atRate({ most: 0.9, rate: 0.003, start: 30 }, 1.5))
    expect([most, start]).toEqual([0.9, 20])
    expect(rate).toBeCloseTo(0.0045, 12)
  })
  it('a mixture needs an agent', () => {
    expect(refusal(watkinsFactorOfMixture([])).code).toBe('contrast.bad-value')
  })
})

describe('scatter of one’s own', () => {
  it('pools the deviations of strips developed alike', () => {
    // Deviations ±0.02 and ±0.01, 0: squares 0.0008 and, thrice over, 0.0002 each, on 1 + 2 + 2 + 2 degrees of freedom.
    const threes = [0.7, 0.8, 0.9].map((mean) => [mean - 0.01, mean, mean + 0.01])
    const { value, degreesOfFreedom } = expectOk(stripScatterOf([[0.58, 0.62], ...threes]))
    expect(degreesOfFreedom).toBe(7)
    expect(value).toBeCloseTo(Math.sqrt(0.0014 / 7), 9)
  })
  it('needs enough of them, and no scatter beyond belief', () => {
    expect(refusal(stripScatterOf([[0.6, 0.62]])).code).toBe('contrast.too-few-repeats')
    expect(refusal(stripScatterOf([[0.6, 0.6, 0.6, 0.6, 0.6, 0.6]])).code).toBe('contrast.bad-value')
  })
})
