import { celsius, expectOk } from '../../../src/kernel/index.js'
import {
  coefficientFromEnergy,
  coefficientOverTen,
  DEVELOPER_CLASSES,
  type DeveloperClass,
  energyFromCoefficient,
  timeAt,
} from '../../../src/science/index.js'
import data from '../data/coefficients.json' with { type: 'json' }
import { type Check, differences } from './check.js'
import { onePoint } from './sheets.js'

const { conversions, spans, classes, tolerance } = data
const conversionRows = conversions.map(({ row }) => row)

export const coefficients: readonly Check[] = [
  {
    rows: conversionRows,
    says: 'E2: kJ/mol from K, and K back from the exact kJ/mol',
    tolerance: tolerance.energy_kJ,
    errors: () =>
      conversions.flatMap(({ coefficient, energy_kJ }) => {
        const energy = expectOk(energyFromCoefficient(coefficient))
        return [Math.abs(energy - energy_kJ), Math.abs(expectOk(coefficientFromEnergy(energy)) - coefficient)]
      }),
  },
  {
    rows: conversionRows,
    says: 'E2: time at 18, 22 and 24 °C against 20 °C',
    tolerance: tolerance.factor,
    errors: () =>
      conversions.flatMap(({ coefficient, at18, at22, at24 }) => {
        const factor = (temperature: number) => expectOk(timeAt(onePoint(coefficient), celsius(temperature))).time / 600
        return differences([18, 22, 24].map(factor), [at18, at22, at24])
      }),
  },
  {
    rows: spans.flatMap((span) =>
      'alsoRow' in span && span.alsoRow !== undefined ? [span.row, span.alsoRow] : [span.row],
    ),
    says: 'E2, A6: K over ten degrees from a coefficient over another span',
    tolerance: tolerance.coefficient,
    errors: () =>
      spans.map(({ coefficient, over_C, overTen }) =>
        Math.abs(expectOk(coefficientOverTen(coefficient, over_C)) - overTen),
      ),
  },
  {
    rows: classes.map(({ row }) => row),
    says: 'E2: the class defaults span the remembered figures',
    tolerance: tolerance.class,
    errors: () =>
      classes.flatMap((expected) => {
        const found = DEVELOPER_CLASSES[expected.class as DeveloperClass]
        if (expected.value !== undefined) return [Math.abs(found.value - expected.value)]
        return differences([found.low, found.high], [expected.low as number, expected.high as number])
      }),
  },
]
