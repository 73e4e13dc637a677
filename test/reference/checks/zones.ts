import { expectOk } from '../../../src/kernel/index.js'
import {
  AVERAGE_SUBJECT_RANGE,
  averageGradient,
  CONDENSER_DENSITY_RANGE,
  contrastForN,
  GRADIENTS,
  gradeFor,
  NORMAL_CONTRASTS,
  nOfContrast,
  PAPER_GRADES,
  PAPER_RANGE_ENDS,
  paperRangeNumber,
  rangeAtFilm,
  STOP,
  stopsFromMeter,
  ZONE_MODELS,
} from '../../../src/science/index.js'
import data from '../data/zones.json' with { type: 'json' }
import { type Check, differences } from './check.js'

const { tolerance, rows, papers, placement, normal } = data

export const zoneModels: readonly Check[] = [
  {
    rows: rows.map(({ row }) => row),
    says: 'D: contrast for N by each model, and the second for a condenser',
    tolerance: tolerance.gradient,
    errors: () =>
      rows.flatMap(({ n, noFlare, flare, condenser }) =>
        differences(
          [
            expectOk(contrastForN(n, 'no-flare')).gradient,
            expectOk(contrastForN(n, 'flare')).gradient,
            expectOk(contrastForN(n, 'flare', CONDENSER_DENSITY_RANGE)).gradient,
          ],
          [noFlare, flare, condenser],
        ),
      ),
  },
  {
    rows: rows.map(({ row }) => row),
    says: 'D: N of a contrast is the inverse of its own model, and not of the other',
    tolerance: { value: 1e-9, reason: 'one formula solved for the other quantity' },
    errors: () =>
      rows.flatMap(({ n }) =>
        (['no-flare', 'flare'] as const).map((model) =>
          Math.abs(expectOk(nOfContrast(expectOk(contrastForN(n, model)).gradient, model)).n - n),
        ),
      ),
  },
  {
    rows: ['D.N-1'],
    says: 'D: the models meet at N−1 and nowhere else',
    tolerance: tolerance.exact,
    errors: () =>
      rows.map(({ n }) => {
        const apart = expectOk(contrastForN(n, 'flare')).gradient - expectOk(contrastForN(n, 'no-flare')).gradient
        return Math.abs(apart) < 1e-9 === (n === -1) ? 0 : 1
      }),
  },
  {
    rows: ['D.papers', 'A9.paper-grade-2'],
    says: 'D, A9: paper grades by log exposure range',
    tolerance: tolerance.exact,
    errors: () => {
      const grade = (number: number) => PAPER_GRADES.find((paper) => paper.grade === number)
      return [
        ...differences(
          [grade(5)?.from, grade(0)?.to, grade(6)?.from, grade(6)?.to].map((bound) => bound ?? Number.NaN),
          [...papers.span, ...papers.six],
        ),
        ...differences([PAPER_RANGE_ENDS.overFog, PAPER_RANGE_ENDS.ofMost], papers.ends),
        Math.abs(expectOk(gradeFor(papers.gradeTwo)).grade - 2),
        Math.abs(ZONE_MODELS.flare.densityRange - papers.gradeTwo),
        Math.abs(expectOk(paperRangeNumber(papers.rangeNumber[0] as number)) - (papers.rangeNumber[1] as number)),
      ]
    },
  },
  {
    rows: ['D.placement'],
    says: 'D: zone I is four stops under the meter, zone IX four over',
    tolerance: tolerance.exact,
    errors: () =>
      placement.map(([zone, stops]) => Math.abs(expectOk(stopsFromMeter(zone as number)) - (stops as number))),
  },
]

export const normalContrasts: readonly Check[] = [
  {
    rows: ['A9.gamma', 'A9.contrast-index'],
    says: 'A9: normal contrasts kept with their marks',
    tolerance: tolerance.exact,
    errors: () =>
      differences(
        [
          NORMAL_CONTRASTS.gammaOutdoors.low,
          NORMAL_CONTRASTS.gammaOutdoors.high,
          NORMAL_CONTRASTS.contrastIndex.low,
          NORMAL_CONTRASTS.contrastIndex.high,
        ],
        [...normal.gamma, ...normal.index],
      ),
  },
  {
    rows: ['A9.iso-gradient'],
    says: 'A9: the average gradient of the ISO triangle',
    tolerance: tolerance.iso,
    errors: () => {
      const curve = {
        at: (x: number) => Math.max(0, (0.8 / 1.3) * x),
        slopeAt: () => 0.8 / 1.3,
        baseFog: 0,
        from: 0,
        to: 3,
      }
      return [Math.abs(expectOk(averageGradient(curve, GRADIENTS['iso-triangle'])) - normal.iso)]
    },
  },
  {
    rows: ['A9.subject-range', 'A9.flat-and-contrasty', 'A9.wedge-span'],
    says: 'A9: subject ranges as ratios and logarithms',
    tolerance: tolerance.range,
    errors: () => [
      Math.abs(AVERAGE_SUBJECT_RANGE - normal.subject.log),
      ...[[normal.subject.ratio, normal.subject.log], normal.flat, normal.contrasty, [normal.wedge, 10 * STOP]].map(
        ([ratio, log]) => Math.abs(expectOk(rangeAtFilm(ratio as number, 0)).logRange - (log as number)),
      ),
    ],
  },
  {
    rows: ['A9.subject-range'],
    says: 'A9: the flare model’s normal subject is the average one, in stops of 0.30',
    tolerance: tolerance.stops,
    errors: () => [
      Math.abs(ZONE_MODELS.flare.normalStops - normal.subject.stops),
      Math.abs(ZONE_MODELS.flare.normalStops - AVERAGE_SUBJECT_RANGE / STOP),
    ],
  },
  {
    rows: ['A9.seven-stops'],
    says: 'A9: a density range of 1.20 over seven stops',
    tolerance: tolerance.seven,
    errors: () => [Math.abs(expectOk(contrastForN(0, 'no-flare')).gradient - normal.seven)],
  },
]
