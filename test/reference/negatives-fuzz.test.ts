import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { expectOk, type Result, type Seconds } from '../../src/kernel/index.js'
import {
  answerOf,
  atRate,
  averageGradient,
  calibrationOf,
  characteristicCurve,
  contrastAfter,
  contrastForN,
  contrastIndex,
  controlSteps,
  deltaX,
  densityByEnlarger,
  densityOf,
  ewmaChart,
  familyOf,
  filmSpeed,
  fitContrast,
  fitNamedCurve,
  gamma,
  gradeFor,
  hurterDriffieldSpeed,
  indexOfFrame,
  individualsChart,
  judge,
  LIMIT_SETS,
  lastMoves,
  lawFromTwoStrips,
  namedGradient,
  nameSpeed,
  nOfContrast,
  opacityOf,
  operatingLevel,
  ownIndex,
  ownTime,
  paperRangeNumber,
  printGamma,
  pushFactor,
  rangeAtFilm,
  readControlStrip,
  readZones,
  repeatUseFactor,
  roomBetween,
  runRules,
  type StripInput,
  stepsBehindTablet,
  stopsFromMeter,
  stopsIn,
  stopsOfAperture,
  stripScatterOf,
  timeForContrast,
  transmittanceOf,
  watkinsFactorOfMixture,
  watkinsTime,
} from '../../src/science/index.js'
import { answers, any, sound } from './sound.js'
import { seeded } from './support.js'

/** Numbers of the trade most of the time: densities, ratios, contrasts; and any double now and then. */
const small = fc.oneof(
  { weight: 6, arbitrary: fc.double({ min: 0, max: 3, noNaN: true }) },
  { weight: 2, arbitrary: fc.integer({ min: -3, max: 500 }) },
  { weight: 2, arbitrary: any },
)
/** The first thirty times of one. */
const mostly = <T>(usual: fc.Arbitrary<T>, odd: fc.Arbitrary<T>): fc.Arbitrary<T> =>
  fc.oneof({ weight: 30, arbitrary: usual }, { weight: 1, arbitrary: odd })
const CHEAP = 10_000
const FITS = 300

/** Every function of numbers alone, by its name. */
const functions: Readonly<Record<string, (a: number, b: number, c: number) => Result<unknown>>> = {
  densityOf,
  transmittanceOf,
  opacityOf,
  stopsIn,
  nameSpeed,
  deltaX,
  hurterDriffieldSpeed,
  gradeFor,
  paperRangeNumber,
  stopsFromMeter,
  printGamma,
  rangeAtFilm,
  roomBetween,
  densityByEnlarger,
  stopsOfAperture: (a) => stopsOfAperture(a),
  contrastForN: (a, b) => contrastForN(a, b > 1 ? 'flare' : 'no-flare', b),
  nOfContrast: (a, b) => nOfContrast(a, b > 1 ? 'flare' : 'no-flare'),
  indexOfFrame: (a, b, c) =>
    indexOfFrame(100 * a, { aperture: b, time: 0.1 }, { aperture: c, time: a }, { stopsUnder: b }),
  contrastAfter: (a, b, c) => contrastAfter({ most: a, rate: b / 100, start: c }, (100 * c) as Seconds),
  timeForContrast: (a, b, c) => timeForContrast({ most: a, rate: b / 100, start: 10 * c }, c),
  atRate: (a, b, c) => atRate({ most: a, rate: b / 100, start: c }, b),
  lawFromTwoStrips: (a, b, c) => lawFromTwoStrips((100 * a) as Seconds, b, c),
  pushFactor: (a, b) => pushFactor({ ofTime: 100 * a, exposedAt: 100 * b }),
  repeatUseFactor,
  watkinsTime: (a, b) => watkinsTime((10 * a) as Seconds, 5 * b),
  watkinsFactorOfMixture: (a, b, c) =>
    watkinsFactorOfMixture([
      { parts: a, factor: 5 * b },
      { parts: c, factor: 10 },
    ]),
}

describe('any numbers at all', () => {
  it.each(Object.entries(functions))('%s answers or refuses', (_, calculate) => {
    fc.assert(
      fc.property(small, small, small, (a, b, c) => answers(calculate(a, b, c))),
      seeded(CHEAP),
    )
  })

  const list = fc.array(small, { maxLength: 12 })
  it('lists of numbers answer or refuse', () => {
    fc.assert(
      fc.property(list, list, small, fc.boolean(), (values, others, one, oneSided) => {
        answers(stripScatterOf([values, others]))
        answers(stepsBehindTablet(one, values, others))
        answers(readZones(values, 1, Math.round(one)))
        answers(individualsChart(values, { oneSided }))
        answers(ewmaChart(values, { start: one, deviation: Math.abs(one), oneSided }))
        answers(runRules(values, one, Math.abs(one) / 3, oneSided))
        answers(judge(values, one, LIMIT_SETS['small-lab'].limits[oneSided ? 'base-fog' : 'contrast'], others[0]))
        answers(operatingLevel(values))
        sound(lastMoves(values))
        const steps = controlSteps(values, one, oneSided ? 'film' : 'radiograph')
        answers(steps)
        if (steps.ok) answers(readControlStrip(others, one, steps.value))
        answers(ownIndex(values.map((value, i) => ({ index: 100 * value, netDensity: others[i] ?? one }))))
        const calibration = calibrationOf(values.map((read, i) => ({ read, true: others[i] ?? one })))
        answers(calibration.ok ? calibration.value.correct(one) : calibration)
      }),
      seeded(CHEAP),
    )
  })
})

/** Steps that rise as a film's do, nearly always; else anything. */
const steps: fc.Arbitrary<StripInput['steps']> = mostly(
  fc
    .record({
      from: fc.double({ min: -4, max: 0, noNaN: true }),
      pieces: fc.array(
        fc.record({
          on: fc.double({ min: 0.01, max: 0.5, noNaN: true }),
          up: fc.double({ min: -0.03, max: 0.4, noNaN: true }),
        }),
        { minLength: 3, maxLength: 24 },
      ),
    })
    .map(({ from, pieces }) => {
      let [logExposure, density] = [from, 0.1]
      return pieces.map(({ on, up }) => {
        logExposure += on
        density = Math.max(0, density + up)
        return { logExposure, density }
      })
    }),
  fc.array(fc.record({ logExposure: small, density: small }), { maxLength: 8 }),
)

const strip = fc.record(
  {
    steps,
    baseFog: fc.record({ density: mostly(fc.double({ min: 0, max: 0.4, noNaN: true }), any) }),
    exposure: fc.constantFrom('lux-seconds' as const, 'relative' as const),
    readingError: mostly(fc.constantFrom(0.005, 0.01, 0.03), small),
    stripScatter: mostly(fc.constantFrom(0, 0.02), small),
  },
  { requiredKeys: ['steps'] },
)

describe('any strip and any family', () => {
  it('curves and everything read off them answer or refuse', () => {
    let drawn = 0
    fc.assert(
      fc.property(strip, small, (input, net) => {
        const curve = characteristicCurve(input)
        if (!curve.ok) return answers(curve)
        drawn++
        const { value } = curve
        for (const answer of [filmSpeed(value), gamma(value), contrastIndex(value), namedGradient(value, 'g-bar')])
          answers(answer)
        answers(namedGradient(value, 'radiographic'))
        answers(averageGradient(value.curve, { fromNet: net, to: { chord: 2 * net } }))
      }),
      seeded(FITS),
    )
    expect(drawn).toBeGreaterThan(FITS / 5)
  })

  const points = fc.array(
    fc.record(
      {
        time: mostly(fc.integer({ min: 60, max: 1500 }), any) as unknown as fc.Arbitrary<Seconds>,
        contrast: mostly(fc.double({ min: 0.1, max: 1.5, noNaN: true }), any),
        standardError: fc.double({ min: 0, max: 0.1, noNaN: true }),
      },
      { requiredKeys: ['time', 'contrast'] },
    ),
    { maxLength: 6 },
  )
  it('contrast in time answers or refuses', () => {
    let fitted = 0
    fc.assert(
      fc.property(points, fc.boolean(), fc.double({ min: 0.1, max: 1.5, noNaN: true }), (given, ordered, wanted) => {
        // Half of the families grow with time, so that enough of them are accepted.
        const times = ordered ? given.map(({ time }) => time).sort((a, b) => a - b) : given.map(({ time }) => time)
        const contrasts = given.map(({ contrast }) => contrast)
        if (ordered) contrasts.sort((a, b) => a - b)
        const found = fitContrast(
          given.map((point, i) => ({ ...point, time: times[i] as Seconds, contrast: contrasts[i] as number })),
        )
        answers(found)
        if (!found.ok) return
        fitted++
        sound(found.value.law)
        answers(ownTime(found.value, wanted))
      }),
      seeded(FITS),
    )
    expect(fitted).toBeGreaterThan(FITS / 10)
  })

  it('named curves answer or refuse', () => {
    const pairs = fc.array(fc.tuple(small, small), { maxLength: 12 })
    const names = fc.constantFrom('line', 'rise', 'peak', 'quotient', 'cubics')
    const start = fc.option(fc.array(small, { maxLength: 7 }), { nil: undefined })
    fc.assert(
      fc.property(names, pairs, start, (name, given, from) => answers(fitNamedCurve(name, given, from))),
      seeded(FITS),
    )
  })

  it('families of strips answer or refuse', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(strip, fc.integer({ min: 60, max: 1500 })), { maxLength: 4 }),
        small,
        (given, wanted) => {
          const curves = given.flatMap(([input, time]) => {
            const curve = characteristicCurve(input)
            return curve.ok ? [{ time: time as Seconds, curve: curve.value }] : []
          })
          const family = familyOf(curves, 'g-bar')
          if (family.ok) answers(answerOf(expectOk(family), wanted))
          else answers(family)
        },
      ),
      seeded(FITS),
    )
  })
})
