import { expectOk } from '../../../src/kernel/index.js'
import {
  controlSteps,
  ewmaChart,
  individualsChart,
  judge,
  LIMIT_SETS,
  lastMoves,
  operatingLevel,
  readControlStrip,
  runRules,
  TREND_MOVES,
} from '../../../src/science/index.js'
import data from '../data/control.json' with { type: 'json' }
import { type Check, differences } from './check.js'

const { tolerance, limits, radiograph, navy, aims, trend, individuals, ewma } = data
const { limits: regulation } = LIMIT_SETS.regulation
const around = (tolerated: number) => ({ lower: -tolerated, upper: tolerated, warning: null, mark: 'source' }) as const
const hits = (values: readonly number[], rule: string) =>
  expectOk(runRules(values, 0, 1)).filter((hit) => hit.rule === rule).length
const asNumber = (is: boolean): number => (is ? 0 : 1)

/** A strip of 17 steps that has the worked strip's densities where it states them, and ordinary ones in between. */
const navyStrip = (): number[] => {
  const known = Object.entries(navy.steps).map(([step, density]) => [Number(step), density] as const)
  return Array.from({ length: navy.hd }, (_, i) => {
    const step = i + 1
    const after = known.find(([at]) => at >= step) ?? [navy.hd, 1.2]
    const before = known.filter(([at]) => at <= step).at(-1) ?? [1, 0.13]
    const share = after[0] === before[0] ? 0 : (step - before[0]) / (after[0] - before[0])
    return before[1] + share * (after[1] - before[1])
  })
}

const published: readonly Check[] = [
  {
    rows: ['A5.base-fog', 'A5.speed-step', 'A5.contrast', 'A5.warning'],
    says: 'A5: limits of the regulation, fog from above only',
    tolerance: tolerance.exact,
    errors: () => [
      asNumber(regulation['base-fog'].lower === null),
      Math.abs(regulation['base-fog'].upper - (limits['base-fog'][1] as number)),
      ...differences([regulation['speed-step'].lower, regulation['speed-step'].upper], limits['speed-step']),
      ...differences([regulation.contrast.lower, regulation.contrast.upper], limits.contrast),
      Math.abs(regulation.contrast.warning - limits.warning),
    ],
  },
  {
    rows: ['A5.operating-level', 'F.setting-up'],
    says: 'A5, F: the operating level is the mean of five strips',
    tolerance: tolerance.density,
    errors: () => [Math.abs(expectOk(operatingLevel(data.operating.days)) - data.operating.level)],
  },
  {
    rows: ['A5.steps'],
    says: 'A5: which steps of a radiographic strip are watched',
    tolerance: tolerance.exact,
    errors: () => {
      const { speed, upper, lower } = expectOk(controlSteps(radiograph.densities, 0.2, 'radiograph'))
      return differences([speed, upper, lower], [radiograph.speed, radiograph.upper, radiograph.lower])
    },
  },
  {
    rows: ['A8.strip'],
    says: 'A8: steps, contrast and net speed density of the worked strip',
    tolerance: tolerance.density,
    errors: () => {
      const steps = expectOk(controlSteps(navyStrip(), navy.baseFog, 'film'))
      const { contrast, speedStep } = expectOk(readControlStrip(navyStrip(), navy.baseFog, steps))
      return differences(
        [steps.speed, steps.upper, steps.lower, contrast, speedStep - navy.baseFog],
        [navy.speed, navy.hd, navy.ld, navy.difference, navy.net],
      )
    },
  },
  {
    rows: ['A8.aims'],
    says: 'A8: on the limits of an aim is inside, a hundredth past them is not',
    tolerance: tolerance.exact,
    errors: () =>
      aims.flatMap(({ aim, tolerance: tolerated, limits: [low, high] }) => {
        const code = (value: number) => expectOk(judge([value], aim, around(tolerated))).code
        return [
          asNumber(code(low as number) === 'leave-alone' && code(high as number) === 'leave-alone'),
          asNumber(code((low as number) - 0.01) === 'second-strip' && code((high as number) + 0.01) === 'second-strip'),
        ]
      }),
  },
]

const rules: readonly Check[] = [
  {
    rows: trend.series.map(({ row }) => row),
    says: 'F: chance, trend, jump and out of control are told apart',
    tolerance: tolerance.exact,
    errors: () =>
      trend.series.map(({ values, verdict }) =>
        asNumber(expectOk(judge(values, trend.aim, around(trend.limit))).code === verdict),
      ),
  },
  {
    rows: ['F.trend-fixtures'],
    says: 'F: five moves are a trend, four are not; the falling series has five',
    tolerance: tolerance.exact,
    errors: () => {
      const falling = trend.series.find(({ row }) => row === 'F.trend')?.values ?? []
      return [
        Math.abs(lastMoves(falling).moves - TREND_MOVES),
        asNumber(!lastMoves(falling).rising),
        asNumber(expectOk(judge(falling.slice(1), trend.aim, around(trend.limit))).code === 'leave-alone'),
      ]
    },
  },
  {
    rows: ['F.first-response'],
    says: 'F: a second strip that agrees makes it real, one that does not clears the process',
    tolerance: tolerance.exact,
    errors: () => {
      const code = (second: number) => expectOk(judge([0.6, 0.71], 0.6, around(0.1), second)).code
      return [
        asNumber(code(0.72) === 'stop'),
        asNumber(code(0.62) === 'first-strip-wrong'),
        asNumber(code(0.45) === 'first-strip-wrong'),
      ]
    },
  },
  {
    rows: ['F.run'],
    says: 'F: eight on one side are a run, seven are not',
    tolerance: tolerance.exact,
    errors: () => {
      const values = [0.2, 0.4, 0.1, 0.5, 0.3, 0.6, 0.2, 0.4]
      return [hits(values, 'eight-on-one-side') - 1, hits(values.slice(1), 'eight-on-one-side')].map(Math.abs)
    },
  },
  {
    rows: ['F.three-sigma'],
    says: 'F: past three deviations, and two of three past two',
    tolerance: tolerance.exact,
    errors: () =>
      [
        hits([0, 3.1], 'beyond-3') - 1,
        hits([0, 2.9], 'beyond-3'),
        hits([2.1, 0, 2.2], 'two-of-three-beyond-2') - 1,
        hits([2.1, 0, 0, 2.2], 'two-of-three-beyond-2'),
        hits([2.1, -2.2, 0], 'two-of-three-beyond-2'),
      ].map(Math.abs),
  },
]

const charts: readonly Check[] = [
  {
    rows: ['nist-control-charts.individuals'],
    says: 'NIST 6.3.2.2: individuals and moving range, in control',
    tolerance: tolerance.limit,
    errors: () => {
      const { centre, meanMovingRange, upper, lower, outside } = expectOk(individualsChart(individuals.values))
      return [
        ...differences(
          [centre, meanMovingRange, upper, lower ?? Number.NaN],
          [individuals.mean, individuals.meanMovingRange, individuals.upper, individuals.lower],
        ),
        outside.length,
      ]
    },
  },
  {
    rows: ['nist-control-charts.ewma'],
    says: 'NIST 6.3.2.4: EWMA limits',
    tolerance: tolerance.ewmaLimit,
    errors: () => {
      const { upper, lower } = expectOk(ewmaChart(ewma.values, ewma))
      return differences([upper, lower ?? Number.NaN], [ewma.upper, ewma.lower])
    },
  },
  {
    rows: ['nist-control-charts.ewma'],
    says: 'NIST 6.3.2.4: EWMA values, none outside',
    tolerance: tolerance.average,
    errors: () => {
      const { averages, outside } = expectOk(ewmaChart(ewma.values, ewma))
      return [...differences(averages, ewma.averages), outside.length]
    },
  },
]

export const controlStrips: readonly Check[] = [...published, ...rules, ...charts]
