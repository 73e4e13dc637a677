import {
  celsius,
  expectOk,
  fahrenheit,
  millilitres,
  minutes,
  seconds,
  toFahrenheit,
} from '../../../src/kernel/index.js'
import { constantFrom, guessConstant, judgeTemperatures, readAgainAfter, standsAt } from '../../../src/science/index.js'
import data from '../data/standing.json' with { type: 'json' }
import { type Check, differences } from './check.js'

const { tolerance, reticulation, trays, recommended, bottle, constant, stillAir, drift } = data

/** What is said of a stop bath so many °C colder than the developer. */
function verdictOver(apart: number): string {
  const bath = (temperature: number, develops: boolean) => ({
    temperature: celsius(temperature),
    develops,
    window: null,
  })
  return judgeTemperatures([bath(apart + 5, true), bath(5, false)]).pairs[0]?.verdict ?? 'nothing'
}
const wrong = (apart: number, verdict: string) => (verdictOver(apart) === verdict ? 0 : 1)

const far: readonly Check[] = [
  {
    rows: [reticulation.row],
    says: 'I: a change that has been seen to wrinkle gelatin is refused',
    tolerance: tolerance.exact,
    errors: () => [wrong(reticulation.from_C, 'refused')],
  },
  {
    rows: [trays.row],
    says: 'I: five degrees Fahrenheit are the most',
    tolerance: tolerance.exact,
    errors: () => [wrong(trays.most_F / 1.8, 'said'), wrong((trays.most_F + 0.1) / 1.8, 'refused')],
  },
  {
    rows: [recommended.row],
    says: 'I: two degrees Celsius are spoken of, the five of old practice refused',
    tolerance: tolerance.exact,
    errors: () => [wrong(recommended.most_C, 'said'), wrong(recommended.old_practice_C, 'refused')],
  },
]

const bottles: readonly Check[] = [
  {
    rows: [bottle.row],
    says: 'I: a bottle from 76 °F in a refrigerator of 39 °F after 36 minutes, °F',
    tolerance: tolerance.fahrenheit,
    errors: () => {
      const standing = { from: fahrenheit(bottle.from_F), around: fahrenheit(bottle.around_F) }
      const after = seconds(60 * bottle.after_min)
      return [constant.minutes[1] as number].map((tau) => {
        const found = expectOk(standsAt({ ...standing, constant: minutes(tau) }, after))
        return Math.abs(toFahrenheit(found) - bottle.reads_F)
      })
    },
  },
  {
    rows: [constant.row],
    says: 'I: its time constant by one reading and by the ends of what was read, min',
    tolerance: tolerance.minutes,
    errors: () =>
      differences(
        constant.reads_F.map((reads) => {
          const readings = [
            { at: seconds(0), temperature: fahrenheit(constant.from_F) },
            { at: seconds(60 * constant.after_min), temperature: fahrenheit(reads) },
          ]
          return expectOk(constantFrom(readings, fahrenheit(constant.around_F))).value / 60
        }),
        constant.minutes,
      ),
  },
  {
    rows: [stillAir.row],
    says: 'I: the first guess for a tank in still air holds this estimate within its factor of two',
    tolerance: tolerance.inside,
    errors: () =>
      stillAir.millilitres.flatMap((volume, i) =>
        (['steel', 'plastic', 'glass'] as const).map((material) => {
          const { low, high } = expectOk(guessConstant(millilitres(volume), material, 'air'))
          const estimate = 60 * (stillAir.minutes[i] as number)
          return Math.max(0, (low ?? Number.NaN) - estimate, estimate - (high ?? Number.NaN))
        }),
      ),
  },
]

const { warm, mild } = drift
const movedBy = ({ from_C, around_C }: { from_C: number; around_C: number }, after: number): number => {
  const standing = { from: celsius(from_C), around: celsius(around_C), constant: minutes(drift.minutes) }
  return Math.abs(expectOk(standsAt(standing, seconds(after))) - from_C)
}

const drifting: readonly Check[] = [
  {
    rows: [drift.row],
    says: 'I: half a litre of 38 °C in a room of 20: in the first minute, and in 3:15',
    tolerance: tolerance.hundredth,
    errors: () => differences([movedBy(warm, 60), movedBy(warm, warm.after_s)], [warm.first_minute_C, warm.by_C]),
  },
  {
    rows: [drift.row],
    says: 'I: and in ten minutes',
    tolerance: tolerance.tenth,
    errors: () => [Math.abs(movedBy(warm, 60 * warm.later_min) - warm.later_by_C)],
  },
  {
    rows: [drift.row],
    says: 'I: it leaves a colour developer’s window within about a minute, min',
    tolerance: tolerance.about,
    errors: () => {
      const standing = { from: celsius(warm.from_C), around: celsius(warm.around_C), constant: minutes(drift.minutes) }
      const after = expectOk(readAgainAfter(standing, warm.window_C))
      return [Math.abs((after ?? Number.NaN) / 60 - warm.leaves_after_min)]
    },
  },
  {
    rows: [drift.row],
    says: 'I: at 20 °C in a room of 22 it hardly moves in ten minutes',
    tolerance: tolerance.inside,
    errors: () => [Math.max(0, movedBy(mild, 60 * mild.after_min) - mild.under_C)],
  },
]

export const standingBaths: readonly Check[] = [...far, ...bottles, ...drifting]
