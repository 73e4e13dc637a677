import { expectOk } from '../../../src/kernel/index.js'
import {
  averageGradient,
  type CharacteristicCurve,
  characteristicCurve,
  contrastIndexOf,
  deltaX,
  filmSpeed,
  GRADIENTS,
  gammaOf,
  logSpeedPoint,
  namedGradient,
  riseFromSpeedPoint,
  type StripStep,
} from '../../../src/science/index.js'
import data from '../data/curves-b.json' with { type: 'json' }
import { type Check, differences } from './check.js'

export type Fixture = (typeof data.fixtures)[number]
const { fixtures, tolerance, x0, width, baseFog, first, apart } = data

/** The curve of a fixture as its formula, with no readings in between. */
export function exactCurve({ gamma }: Pick<Fixture, 'gamma'>): CharacteristicCurve {
  const at = (x: number) => baseFog + gamma * width * Math.log1p(Math.exp((x - x0) / width))
  return { at, slopeAt: (x) => gamma / (1 + Math.exp((x0 - x) / width)), baseFog, from: first, to: 0 }
}

/** Steps of a fixture: as printed to two decimals, or to as many as the formula gives. */
export const stepsOf = (fixture: Fixture, printed: boolean): StripStep[] =>
  fixture.readings.map((reading, i) => {
    const logExposure = first + apart * i
    return { logExposure, density: printed ? reading : exactCurve(fixture).at(logExposure) }
  })

/** The strip as a person has it: readings to 0.01, clear film read, exposures in lux-seconds. */
export const stripOf = (fixture: Fixture, printed = true, readingError?: number) =>
  expectOk(
    characteristicCurve({
      steps: stepsOf(fixture, printed),
      baseFog: { density: baseFog },
      exposure: 'lux-seconds',
      ...(readingError === undefined ? {} : { readingError }),
    }),
  )

const exact = (
  rows: string[],
  says: string,
  allowed: Check['tolerance'],
  errors: (fixture: Fixture) => number[],
): Check => ({
  rows,
  says: `B: ${says}`,
  tolerance: allowed,
  errors: () => fixtures.flatMap(errors),
})

export const computedStrips: readonly Check[] = [
  exact(['B.log-Hm'], 'log Hm of the exact curves', tolerance.log, (f) => [
    Math.abs(expectOk(logSpeedPoint(exactCurve(f))) - f.logHm),
  ]),
  exact(['B.Hm'], 'Hm of the exact curves', tolerance.exposure, (f) => [
    Math.abs(10 ** expectOk(logSpeedPoint(exactCurve(f))) - f.Hm),
  ]),
  exact(['B.rise'], 'density gained over 1.30', tolerance.rise, (f) => [
    Math.abs(expectOk(riseFromSpeedPoint(exactCurve(f))) - f.rise),
  ]),
  exact(['B.speed'], '0.8 / Hm', tolerance.speed, (f) => [
    Math.abs(0.8 / 10 ** expectOk(logSpeedPoint(exactCurve(f))) - f.speed),
  ]),
  exact(['B.delta-x'], 'Δ-X of the exact curves', tolerance.rise, (f) => [
    Math.abs(expectOk(deltaX(expectOk(riseFromSpeedPoint(exactCurve(f))))) - f.deltaX),
  ]),
  exact(['B.g-bar', 'C2.g-bar'], 'average gradient over 1.50', tolerance.rise, (f) => [
    Math.abs(expectOk(averageGradient(exactCurve(f), GRADIENTS['g-bar'])) - f.gBar),
  ]),
  exact(['B.g-bar-chord', 'C2.g-bar-chord'], 'the same, 1.50 laid off as a chord', tolerance.rise, (f) => [
    Math.abs(expectOk(averageGradient(exactCurve(f), GRADIENTS['g-bar-chord'])) - f.gBarChord),
  ]),
  exact(
    ['B.index', 'B.index-centre', 'B.index-low', 'B.index-high', 'C2.index', 'C2.index-arcs'],
    'contrast index by arcs: slope, centre and both points',
    tolerance.point,
    (f) => {
      const { index, centre, low, high } = expectOk(contrastIndexOf(exactCurve(f)))
      return differences(
        [index, centre, low.logExposure, low.density, high.logExposure, high.density],
        [f.index, f.centre, ...f.low, ...f.high],
      )
    },
  ),
  exact(
    ['B.gamma', 'C2.gamma'],
    'gamma of the straight part, over 0.90 of it',
    { value: 0.001, reason: 'the end of the curve is straight to a thousandth' },
    (f) => [Math.abs(expectOk(gammaOf(exactCurve(f))) - f.gamma)],
  ),
  exact(
    ['B.readings-T1', 'B.readings-T2', 'B.readings-T3'],
    'the printed readings are the curves',
    { value: 0.0051, reason: 'printed to two decimals' },
    (f) => f.readings.map((reading, i) => Math.abs(reading - exactCurve(f).at(first + apart * i))),
  ),
  exact(['B.log-Hm'], 'log Hm of rounded readings', tolerance.roundedLog, (f) => [
    Math.abs(expectOk(filmSpeed(stripOf(f))).speedPoint.value - f.logHm),
  ]),
  exact(['B.rise', 'B.g-bar'], 'rise and average gradient of rounded readings', tolerance.roundedRise, (f) => [
    Math.abs(expectOk(filmSpeed(stripOf(f))).rise.value - f.rise),
    Math.abs(expectOk(namedGradient(stripOf(f), 'g-bar')).value - f.gBar),
  ]),
  exact(['B.speed'], 'speed of rounded readings, as a part of it', tolerance.roundedSpeed, (f) => [
    Math.abs(expectOk(filmSpeed(stripOf(f))).speed.value / f.answer - 1),
  ]),
  exact(
    ['B.speed'],
    'T1 is an ISO speed of 100/21°; T2 and T3 are refused as one, with Δ-X labelled',
    tolerance.exact,
    (f) => {
      const speed = expectOk(filmSpeed(stripOf(f)))
      const isIso = f.kind === 'iso'
      return [
        speed.kind === f.kind ? 0 : 1,
        speed.label === f.label ? 0 : 1,
        speed.named.name === '100/21°' ? 0 : 1,
        (speed.refusal === null) === isIso ? 0 : 1,
        isIso || speed.refusal?.code === 'speed.off-triangle' ? 0 : 1,
      ]
    },
  ),
  exact(['B.speed'], 'speed or Δ-X speed of the curves read to six decimals', tolerance.deltaXSpeed, (f) => [
    Math.abs(expectOk(filmSpeed(stripOf(f, false, 0.0005))).speed.value - f.answer),
  ]),
]
