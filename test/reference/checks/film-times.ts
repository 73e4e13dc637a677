import { celsius, expectOk, fahrenheit, minutes } from '../../../src/kernel/index.js'
import { fitLaw, LIMITS, timeAt } from '../../../src/science/index.js'
import a1 from '../data/film-times-a1.json' with { type: 'json' }
import a2 from '../data/film-times-a2.json' with { type: 'json' }
import limits from '../data/limits.json' with { type: 'json' }
import type { Check } from './check.js'
import { sheetInFahrenheit } from './sheets.js'

type Table = typeof a1 | typeof a2
const rowsOf = (table: Table): string[] => table.points.map(({ row }) => row)

/** The answer at every point of the sheet is the sheet's own time. */
const sheetIsKept = (
  name: string,
  points: readonly { fahrenheit: number; minutes: number }[],
  table: Table,
): Check => ({
  rows: rowsOf(table),
  says: `${name} answers each sheet point with its own time, by both laws`,
  tolerance: table.tolerance.sheet,
  errors: () =>
    (['exponential', 'arrhenius'] as const).flatMap((law) => {
      const basis = sheetInFahrenheit(points, law)
      return points.map((point) => {
        const answer = expectOk(timeAt(basis, fahrenheit(point.fahrenheit)))
        return answer.position === 'sheet-point' ? Math.abs(answer.time - minutes(point.minutes)) : Number.NaN
      })
    }),
})

function fits(name: string, table: Table): Check[] {
  const basis = sheetInFahrenheit(table.points)
  const exponential = fitLaw(basis, 'exponential')
  const arrhenius = fitLaw(basis, 'arrhenius')
  const check = (says: string, tolerance: Check['tolerance'], found: number, expected: number): Check => ({
    rows: rowsOf(table),
    says: `${name}: ${says}`,
    tolerance,
    errors: () => [Math.abs(found - expected)],
  })
  const { tolerance } = table
  return [
    check(
      'K of the exponential fit',
      tolerance.coefficient,
      exponential.coefficient,
      table.fits.exponential.coefficient,
    ),
    check(
      'minutes at 20 °C by the exponential fit',
      tolerance.minutesAt20,
      exponential.timeAt(celsius(20)) / 60,
      table.fits.exponential.minutesAt20,
    ),
    check(
      'worst misfit of the exponential fit, %',
      tolerance.worst_percent,
      100 * Math.abs(exponential.worst.misfit),
      table.fits.exponential.worst_percent,
    ),
    check(
      'kJ/mol of the Arrhenius fit',
      tolerance.energy_kJ,
      arrhenius.activationEnergy,
      table.fits.arrhenius.energy_kJ,
    ),
    check(
      'worst misfit of the Arrhenius fit, %',
      tolerance.worst_percent,
      100 * Math.abs(arrhenius.worst.misfit),
      table.fits.arrhenius.worst_percent,
    ),
  ]
}

export const filmTimes: readonly Check[] = [
  sheetIsKept('A1', a1.points, a1),
  sheetIsKept('A2, normal times', a2.points, a2),
  sheetIsKept(
    'A2, longest times',
    a2.points.map(({ fahrenheit, most }) => ({ fahrenheit, minutes: most })),
    a2,
  ),
  ...fits('A1', a1),
  ...fits('A2', a2),
  {
    rows: [limits.workingRange.row],
    says: 'A1: its working range is the practice window',
    tolerance: limits.tolerance.exact,
    errors: () => [
      Math.abs(LIMITS.practice.from - limits.workingRange.from_C),
      Math.abs(LIMITS.practice.to - limits.workingRange.to_C),
    ],
  },
]
