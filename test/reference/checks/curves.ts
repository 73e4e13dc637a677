import { pchip, studentT95 } from '../../../src/science/fitting/index.js'
import data from '../data/scipy.json' with { type: 'json' }
import { type Check, differences } from './check.js'

export const curves: readonly Check[] = [
  {
    rows: ['S.curves'],
    says: 'S: monotone curves, value and slope, against scipy',
    tolerance: data.tolerance.curve,
    errors: () =>
      data.curves.flatMap(({ x, y, at, value, slope }) => {
        const curve = pchip(x, y)
        return [...differences(at.map(curve.at), value), ...differences(at.map(curve.slopeAt), slope)]
      }),
  },
  {
    rows: ['S.student'],
    says: "S: 95 % points of Student's t against scipy",
    tolerance: data.tolerance.student,
    errors: () => data.student.map(([degrees, t]) => Math.abs(studentT95(degrees as number) - (t as number))),
  },
]
