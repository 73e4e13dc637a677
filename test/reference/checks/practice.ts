import { celsius, expectOk, fahrenheit, seconds } from '../../../src/kernel/index.js'
import {
  defineBasis,
  developingTime,
  effectOfUncorrectedError,
  fitLaw,
  LIMITS,
  type RateLaw,
  timeAt,
} from '../../../src/science/index.js'
import limits from '../data/limits.json' with { type: 'json' }
import data from '../data/practice-cases.json' with { type: 'json' }
import { type Check, differences } from './check.js'
import { onePoint, sheetInCelsius } from './sheets.js'

const { tolerance, twoPoints, uncorrected, dials, warmer } = data

const twoPointSheet = (law: RateLaw) =>
  expectOk(
    defineBasis({
      kind: 'ordinary',
      law,
      points: twoPoints.points.map((point) => ({
        temperature: fahrenheit(point.fahrenheit),
        time: seconds(point.seconds),
      })),
    }),
  )

const twoPointTimes = (law: RateLaw): number[] =>
  twoPoints.fahrenheit.map((at) => expectOk(timeAt(twoPointSheet(law), fahrenheit(at))).time)

export const practiceCases: readonly Check[] = [
  {
    rows: [twoPoints.row],
    says: 'P1: times between two points, both laws, s',
    tolerance: tolerance.seconds,
    errors: () => [
      ...differences(twoPointTimes('exponential'), twoPoints.exponential_s),
      ...differences(twoPointTimes('arrhenius'), twoPoints.arrhenius_s),
    ],
  },
  {
    rows: [twoPoints.row],
    says: 'P1: K of the two points',
    tolerance: tolerance.coefficient,
    errors: () => [Math.abs(fitLaw(twoPointSheet('exponential'), 'exponential').coefficient - twoPoints.coefficient)],
  },
  {
    rows: uncorrected.map(({ row }) => row),
    says: 'P2: time needed when the thermometer reads two degrees high, s',
    tolerance: tolerance.seconds,
    errors: () =>
      uncorrected.flatMap(({ read_C, true_C, seconds: time, coefficients, needed_s }) => {
        const effects = coefficients.map((coefficient) =>
          expectOk(effectOfUncorrectedError(onePoint(coefficient, time), celsius(read_C), celsius(true_C))),
        )
        return [
          ...differences(
            effects.map(({ byReading }) => byReading),
            effects.map(() => time),
          ),
          ...differences(
            effects.map(({ byTruth }) => byTruth),
            needed_s,
          ),
        ]
      }),
  },
  {
    rows: [dials.row],
    says: 'P3: how much longer the times should have been, %',
    tolerance: tolerance.percent,
    errors: () =>
      dials.high_F.flatMap((high, index) => {
        const longer = dials.coefficients.map((coefficient) => {
          const truth = fahrenheit(dials.aim_F - high)
          return (
            100 * expectOk(effectOfUncorrectedError(onePoint(coefficient), fahrenheit(dials.aim_F), truth)).missingPart
          )
        })
        return differences(longer, dials.longer_percent[index] as number[])
      }),
  },
  {
    rows: [warmer.row],
    says: 'P4: factor for four degrees more',
    tolerance: tolerance.factor,
    errors: () =>
      differences(
        warmer.coefficients.map(
          (coefficient) => expectOk(timeAt(onePoint(coefficient), celsius(20 + warmer.by_C))).time / 600,
        ),
        warmer.factors,
      ),
  },
]

export const practiceLimits: readonly Check[] = [
  {
    rows: [limits.shortest.row],
    says: 'E3: the shortest time that develops evenly',
    tolerance: limits.tolerance.exact,
    errors: () => [Math.abs(LIMITS.shortestTime.time - limits.shortest.minutes * 60)],
  },
  {
    rows: [limits.colourNegative.row],
    says: 'H: a colour developer keeps its time, and past its window a cast is likely',
    tolerance: limits.tolerance.exact,
    errors: () => {
      const { celsius: at, seconds: time, window_C: within } = limits.colourNegative
      const basis = sheetInCelsius('fixed', [{ celsius: at, seconds: time }])
      return [
        [0, 0],
        [within, 0],
        [-within, 0],
        [within + 0.01, 1],
        [-within - 0.01, 1],
        [-18, 1],
      ].flatMap(([by, warned]) => {
        const answer = expectOk(developingTime(basis, celsius(at + (by as number))))
        const casts = answer.warnings.filter(({ code }) => code === 'colour-cast-likely').length
        return [Math.abs(answer.time - time), Math.abs(casts - (warned as number))]
      })
    },
  },
  {
    rows: [limits.singleBath.row],
    says: 'H: a single bath answers on its sheet alone, also one that is slower when warmer',
    tolerance: limits.tolerance.exact,
    errors: () =>
      [limits.singleBath.points, limits.singleBath.inverted].flatMap((points) => {
        const basis = sheetInCelsius('single-bath', points)
        const onSheet = points.map((point) =>
          Math.abs(expectOk(timeAt(basis, celsius(point.celsius))).time - point.seconds),
        )
        const [first, last] = [points[0]?.celsius as number, points[points.length - 1]?.celsius as number]
        const beyond = [first - 0.1, last + 0.1].map((at) => {
          const refused = timeAt(basis, celsius(at))
          return !refused.ok && refused.problem.code === 'times.single-bath-outside-sheet' ? 0 : 1
        })
        return [...onSheet, ...beyond]
      }),
  },
]
