import { expectOk } from '../../../src/kernel/index.js'
import {
  averageGradient,
  densityOf,
  GRADIENTS,
  NOMINAL_TABLETS,
  nominalDensities,
  printGamma,
  rangeAtFilm,
  SENSITOMETRY_LIMITS,
  STOP,
  stepsBehindTablet,
  stopsIn,
  transmittanceOf,
  ZONE_MODELS,
} from '../../../src/science/index.js'
import data from '../data/curves-b.json' with { type: 'json' }
import { type Check, differences } from './check.js'

const { tolerance, transmittance, density, wrongDensity, tablets, flare } = data

/** A straight curve of a slope from no density at 0 up to a log exposure. */
const straight = (slope: number, to: number) => ({
  at: (x: number) => Math.max(0, slope * x),
  slopeAt: () => slope,
  baseFog: 0,
  from: 0,
  to,
})

const measures: readonly Check[] = [
  {
    rows: ['C2.radiographic', 'C2.index-short'],
    says: 'C2: the radiographic gradient and the short contrast index of a straight curve are its slope',
    tolerance: tolerance.gradient,
    errors: () =>
      (['radiographic', 'contrast-index-short'] as const).flatMap((name) =>
        [0.7, 1.8].map((slope) => Math.abs(expectOk(averageGradient(straight(slope, 4), GRADIENTS[name])) - slope)),
      ),
  },
  {
    rows: ['C2.two-points'],
    says: 'C2: a gradient between densities that the curve does not reach is refused, not zero',
    tolerance: tolerance.exact,
    errors: () => {
      const points = { fromNet: 2, to: { net: 4 } } as const
      const refused = averageGradient(straight(1.7, 2), points)
      const reached = averageGradient(straight(1.7, 3), points)
      return [!refused.ok && refused.problem.code === 'curve.not-reached' ? 0 : 1, reached.ok ? 0 : 1]
    },
  },
  {
    rows: ['C2.product'],
    says: 'C2: contrast of the print is the product',
    tolerance: tolerance.gradient,
    errors: () =>
      data.printGamma.map(([film, paper, print]) =>
        Math.abs(expectOk(printGamma(film as number, paper as number)) - (print as number)),
      ),
  },
]

export const densities: readonly Check[] = [
  {
    rows: ['C1.percent-to-density'],
    says: 'C1: density of a transmittance',
    tolerance: tolerance.density,
    errors: () =>
      differences(
        transmittance.percent.map((percent) => expectOk(densityOf(percent / 100))),
        transmittance.density,
      ),
  },
  {
    rows: ['C1.density-to-percent'],
    says: 'C1: percent let through by a density',
    tolerance: tolerance.percent,
    errors: () =>
      differences(
        density.density.map((value) => 100 * expectOk(transmittanceOf(value))),
        density.percent,
      ),
  },
  {
    rows: ['C1.wrong-figure'],
    says: 'C1: a density of 3 lets 0.1 % through; the printed 0.01 % belongs to a density of 4',
    tolerance: tolerance.gradient,
    errors: () => [
      Math.abs(100 * expectOk(transmittanceOf(wrongDensity.density)) - wrongDensity.right_percent),
      Math.abs(expectOk(densityOf(wrongDensity.claimed_percent / 100)) - (wrongDensity.density + 1)),
    ],
  },
  {
    rows: ['C1.stop'],
    says: 'C1: a stop, a third and a half of it',
    tolerance: tolerance.stop,
    errors: () => [Math.abs(STOP - data.stop), Math.abs(expectOk(stopsIn(data.stop / 2)) - 0.5)],
  },
  ...measures,
  {
    rows: ['C3.tablets'],
    says: 'C3: nominal tablets: first and last density, number of steps',
    tolerance: tolerance.gradient,
    errors: () =>
      Object.entries(tablets).flatMap(([name, expected]) => {
        const found = nominalDensities(NOMINAL_TABLETS[name as keyof typeof NOMINAL_TABLETS])
        return differences([found[0] as number, found.at(-1) as number, found.length], expected)
      }),
  },
  {
    rows: ['C3.log-exposure'],
    says: 'C3: log H of a step is the lamp’s less the tablet’s density, least light first',
    tolerance: tolerance.gradient,
    errors: () => {
      const tablet = nominalDensities(NOMINAL_TABLETS['21-step'])
      const steps = expectOk(
        stepsBehindTablet(
          0.5,
          tablet,
          tablet.map((value) => 3.2 - value),
        ),
      )
      return differences(
        steps.map(({ logExposure }) => logExposure),
        [...tablet].reverse().map((value) => 0.5 - value),
      )
    },
  },
  {
    rows: ['C3.errors'],
    says: 'C3: the errors assumed of readings and strips',
    tolerance: tolerance.exact,
    errors: () =>
      differences(
        [SENSITOMETRY_LIMITS.readingError, SENSITOMETRY_LIMITS.stripScatter],
        [data.errors.reading, data.errors.strips],
      ),
  },
  {
    rows: ['C4.range-at-film'],
    says: 'C4: ratio at the film through flare',
    tolerance: tolerance.flare,
    errors: () => flare.map((row) => Math.abs(expectOk(rangeAtFilm(row.ratio, row.flare)).ratio - row.atFilm)),
  },
  {
    rows: ['C4.range-at-film', 'C4.flare-factor'],
    says: 'C4: log range at the film and what flare takes; the flare model takes the average 0.40',
    tolerance: tolerance.flareLog,
    errors: () => [
      ...flare.flatMap((row) => {
        const { logRange, lost } = expectOk(rangeAtFilm(row.ratio, row.flare))
        return [Math.abs(logRange - row.log), ...(row.lost === undefined ? [] : [Math.abs(lost - row.lost)])]
      }),
      Math.abs(ZONE_MODELS.flare.flare - 0.4),
    ],
  },
]
