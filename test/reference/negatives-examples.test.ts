import { describe, expect, it } from 'vitest'
import { expectOk, minutes, type Seconds, writeDuration } from '../../src/kernel/index.js'
import { levenbergMarquardt } from '../../src/science/fitting/index.js'
import {
  atRate,
  characteristicCurve,
  contrastIndex,
  filmSpeed,
  fitContrast,
  gamma,
  individualsChart,
  judge,
  LIMIT_SETS,
  namedGradient,
  ownTime,
  timeForContrast,
  watkinsFactorOfMixture,
} from '../../src/science/index.js'
import { say } from '../../src/words/index.js'
import nist from './data/nist.json' with { type: 'json' }
import { exampleOf, numbersOf } from './page-example.js'

const minus = (text: string): string => text.replace('-', '−')

describe('worked example of the page on densities', () => {
  const says = exampleOf('sensitometry')
  const strip = expectOk(
    characteristicCurve({
      steps: numbersOf(says('densities')).map((density, i) => ({ logExposure: -3 + 0.15 * i, density })),
      baseFog: { density: 0.22 },
      exposure: 'lux-seconds',
    }),
  )
  it('speed and its name', () => {
    const { speed, speedPoint, rise, label } = expectOk(filmSpeed(strip))
    expect(minus(speedPoint.value.toFixed(3))).toBe(says('log exposure of the speed point'))
    expect(rise.value.toFixed(3)).toBe(says('gained over 1.30'))
    expect(speed.value.toFixed(1)).toBe(says('speed'))
    expect(`${speed.low?.toFixed(1)} and ${speed.high?.toFixed(1)}`).toBe(says('between'))
    expect(label).toBe(says('named'))
  })
  it('contrasts', () => {
    expect(expectOk(namedGradient(strip, 'g-bar')).value.toFixed(3)).toBe(says('average gradient over 1.50'))
    expect(expectOk(contrastIndex(strip)).value.toFixed(3)).toBe(says('contrast index'))
    expect(expectOk(gamma(strip)).value.toFixed(3)).toBe(says('gamma'))
  })
})

describe('worked example of the page on contrast in time', () => {
  const says = exampleOf('contrast')
  const [m1, s1, g1, m2, s2, g2] = numbersOf(says('strips')) as [number, number, number, number, number, number]
  const fitted = expectOk(
    fitContrast([
      { time: (60 * m1 + s1) as Seconds, contrast: g1 },
      { time: (60 * m2 + s2) as Seconds, contrast: g2 },
    ]),
  )
  it('law, time and interval', () => {
    const wanted = Number(says('wanted'))
    const { time, low, high } = expectOk(ownTime(fitted, wanted))
    expect(fitted.law.most.toFixed(3)).toBe(says('most'))
    expect((fitted.law.rate * 60).toFixed(5)).toBe(says('rate per minute'))
    expect(writeDuration(time)).toBe(says('time'))
    expect(`${writeDuration(low ?? minutes(0))} and ${writeDuration(high ?? minutes(0))}`).toBe(says('between'))
    const warm = expectOk(timeForContrast(expectOk(atRate(fitted.law, 2)), wanted))
    expect(writeDuration(warm)).toBe(says('time at twice the rate'))
  })
  it('factor of a mixture', () => {
    const factor = watkinsFactorOfMixture([
      { parts: 4, factor: 6 },
      { parts: 2, factor: 30 },
    ])
    expect(String(expectOk(factor))).toBe(says('factor of 4 parts at 6 and 2 parts at 30'))
  })
})

describe('worked example of the page on control strips', () => {
  const says = exampleOf('control')
  it('chart', () => {
    const { centre, meanMovingRange, lower, upper } = expectOk(individualsChart(numbersOf(says('values'))))
    expect(centre.toFixed(2)).toBe(says('mean'))
    expect(meanMovingRange.toFixed(4)).toBe(says('mean moving range'))
    expect(`${lower?.toFixed(4)} and ${upper.toFixed(4)}`).toBe(says('limits'))
  })
  it('verdict as a sentence', () => {
    const values = numbersOf(says('speed step, aim 0.60, limit 0.10'))
    const verdict = expectOk(judge(values, 0.6, LIMIT_SETS['small-lab'].limits['speed-step']))
    if (verdict.code !== 'trend') throw new Error(`expected a trend, got ${verdict.code}`)
    const quantity = say('control.speed-step', {}, 'metric')
    expect(say('control.trend', { quantity, ...verdict }, 'metric')).toBe(says('verdict'))
  })
})

describe('worked example of the page on fits', () => {
  const says = exampleOf('fitting')
  it('Misra1a', () => {
    const points = nist.problems.find(({ name }) => name === 'Misra1a')?.points ?? []
    const fit = levenbergMarquardt(
      ([b1, b2]) =>
        points.map(([x, y]) => (b1 as number) * (1 - Math.exp(-(b2 as number) * (x as number))) - (y as number)),
      numbersOf(says('start')),
    )
    expect(fit.value.map((value) => value.toPrecision(6))).toEqual([says('b1'), says('b2')])
    expect(fit.standardErrors?.[0]?.toPrecision(6)).toBe(says('standard deviation of b1'))
    expect(fit.stopped).toBe(says('stopped'))
  })
})
