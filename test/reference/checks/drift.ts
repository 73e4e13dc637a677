import { celsius, expectOk, seconds } from '../../../src/kernel/index.js'
import { dose, type RateLaw, rateAt } from '../../../src/science/index.js'
import data from '../data/drift.json' with { type: 'json' }
import type { Check } from './check.js'
import { onePoint } from './sheets.js'

/** Mean rate of a straight drift under the exponential law, relative to 20 °C. */
function closedForm(coefficient: number, from: number, to: number): number {
  const rate = (temperature: number) => coefficient ** ((temperature - 20) / 10)
  return (rate(to) - rate(from)) / ((Math.log(coefficient) * (to - from)) / 10)
}

function meanRate(law: RateLaw, coefficient: number, from: number, to: number): number {
  const readings = [
    { at: seconds(0), temperature: celsius(from) },
    { at: seconds(600), temperature: celsius(to) },
  ]
  return expectOk(dose(onePoint(coefficient, 600, law), readings)).meanRate
}

export const drifts: readonly Check[] = [
  {
    rows: data.drifts.map(({ row }) => row),
    says: 'I: mean rate of a straight drift, both laws',
    tolerance: data.tolerance.meanRate,
    errors: () =>
      data.drifts.map((drift) =>
        Math.abs(meanRate(drift.law as RateLaw, drift.coefficient, drift.from_C, drift.to_C) - drift.meanRate),
      ),
  },
  {
    rows: ['I.effective-temperature'],
    says: 'I: the rate at the mean temperature is not the mean rate',
    tolerance: data.tolerance.meanRate,
    errors: () =>
      data.drifts.flatMap(({ coefficient, rateOfMeanTemperature, from_C, to_C }) =>
        rateOfMeanTemperature === undefined
          ? []
          : [
              Math.abs(
                expectOk(rateAt(onePoint(coefficient), celsius((from_C + to_C) / 2))).rate - rateOfMeanTemperature,
              ),
            ],
      ),
  },
  {
    rows: ['I.effective-temperature'],
    says: 'I: dose of a drift against the closed form, K 1.25 to 6, up and down',
    tolerance: data.tolerance.closedForm,
    errors: () =>
      [1.25, 2.5, 3.79, 6].flatMap((coefficient) =>
        [
          [20, 24],
          [24, 20],
          [10, 32],
          [12, 13],
        ].map(([from, to]) => {
          const exact = closedForm(coefficient, from as number, to as number)
          return Math.abs(meanRate('exponential', coefficient, from as number, to as number) / exact - 1)
        }),
      ),
  },
]
