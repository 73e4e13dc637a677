import {
  type Celsius,
  celsius,
  expectOk,
  fahrenheit,
  grams,
  millilitres,
  toFahrenheit,
} from '../../../src/kernel/index.js'
import {
  blended,
  coldFixing,
  fromTheTaps,
  heatBalance,
  iceFor,
  judgeTemperatures,
  mixingWaterFor,
  SHIPPED_FORMULAS,
  SIMPLE_RULE,
  SPREAD,
  waterAt,
} from '../../../src/science/index.js'
import data from '../data/water-mixing.json' with { type: 'json' }
import properties from '../data/water-properties.json' with { type: 'json' }
import working from '../data/working-temperatures.json' with { type: 'json' }
import { type Check, differences } from './check.js'

const { tolerance } = data
type Part = readonly number[]

const blend = (parts: readonly Part[]) =>
  expectOk(blended(parts.map(([water, at]) => ({ water: grams(water as number), temperature: celsius(at as number) }))))

const balance = (parts: readonly Part[]) =>
  expectOk(
    heatBalance(
      parts.map(([volume, at]) => ({ volume: millilitres(volume as number), temperature: celsius(at as number) })),
    ),
  )

export const waterMixing: readonly Check[] = [
  ...data.blends.map(
    ({ row, parts, celsius: expected }): Check => ({
      rows: [row],
      says: `${parts.map(([amount, at]) => `${amount} at ${at} °C`).join(' with ')}`,
      tolerance: tolerance.celsius,
      errors: () => [Math.abs(blend(parts) - expected)],
    }),
  ),
  ...data.taps.map(
    ({ row, total_mL, wanted_C, cold_C, hot_C, hot_mL, cold_mL }): Check => ({
      rows: [row],
      says: `${total_mL} mL at ${wanted_C} °C from ${cold_C} and ${hot_C} °C`,
      tolerance: tolerance.volume,
      errors: () => {
        const found = expectOk(
          fromTheTaps({
            volume: millilitres(total_mL),
            wanted: celsius(wanted_C),
            hot: celsius(hot_C),
            cold: celsius(cold_C),
          }),
        )
        return differences([found.hot, found.cold], [hot_mL, cold_mL])
      },
    }),
  ),
  ...data.enthalpy.flatMap(({ row, parts, simple_C, celsius: expected, volume_mL }): Check[] => [
    {
      rows: [row],
      says: `${row}: by enthalpy and by the simple rule`,
      tolerance: tolerance.enthalpy,
      errors: () => {
        const { temperature, simple, off } = balance(parts)
        return differences([temperature, simple, off], [expected, simple_C, simple_C - expected])
      },
    },
    {
      rows: [row],
      says: `${row}: what it shrinks to`,
      tolerance: tolerance.shrinkage,
      errors: () => [Math.abs(balance(parts).volume - volume_mL)],
    },
  ]),
  {
    rows: data.enthalpy.map(({ row }) => row),
    says: 'the simple rule below 60 °C',
    tolerance: tolerance.simple,
    errors: () => [
      ...data.enthalpy
        .filter(({ parts }) => parts.every(([, at]) => (at as number) <= SIMPLE_RULE.upTo))
        .map(({ parts, simple_C }) => Math.abs(balance(parts).temperature - simple_C)),
      SIMPLE_RULE.error,
    ],
  },
]

const ofWater = (at: number) => expectOk(waterAt(celsius(at)))
const parted = (found: number, expected: number) => Math.abs(found / expected - 1)

export const waterProperties: readonly Check[] = [
  ...properties.water.flatMap(({ row, celsius: at, density, heat_capacity }): Check[] => [
    {
      rows: [row],
      says: `water at ${at} °C: density, as a part`,
      tolerance: properties.tolerance.finer,
      errors: () => [parted(1000 * ofWater(at).density, density)],
    },
    {
      rows: [row],
      says: `water at ${at} °C: heat capacity, as a part`,
      tolerance: properties.tolerance.heatCapacity,
      errors: () => [parted(ofWater(at).heatCapacity, heat_capacity)],
    },
  ]),
  {
    rows: [properties.handbook.row],
    says: 'other tables agree within a thousandth',
    tolerance: properties.tolerance.density,
    errors: () => [
      ...properties.handbook.densities.map(([at, density]) =>
        parted(1000 * ofWater(at as number).density, density as number),
      ),
      ...properties.handbook.heat_capacities.map(([at, cp]) =>
        parted(ofWater(at as number).heatCapacity, cp as number),
      ),
    ],
  },
]

const { spread, mixingWater, hypoWater, ice, iceOutside, coldFixing: slower, pairs } = working

/** What is said of a stop bath that lies so far from the developer. */
function verdictOver(apart: number): string {
  const bath = (temperature: Celsius, develops: boolean) => ({ temperature, develops, window: null })
  return judgeTemperatures([bath(celsius(20), true), bath(celsius(20 - apart), false)]).pairs[0]?.verdict ?? 'nothing'
}

const mixedFrom = (id: string) => SHIPPED_FORMULAS.find((formula) => formula.id === id)

export const workingTemperatures: readonly Check[] = [
  {
    rows: [spread.row_neighbours, spread.row_reticulation],
    says: 'baths are said to lie apart from 2 °F, refused from 5 °F',
    tolerance: working.tolerance.exact,
    errors: () => [
      ...differences([SPREAD.said, SPREAD.refused], [spread.said_C, spread.refused_C]),
      ...[
        [spread.said_C - 0.05, 'nothing'],
        [spread.said_C, 'said'],
        [spread.refused_C - 0.05, 'said'],
        [spread.refused_C, 'refused'],
      ].map(([apart, verdict]) => (verdictOver(apart as number) === verdict ? 0 : 1)),
    ],
  },
  {
    rows: [mixingWater.row, hypoWater.row],
    says: 'developers and crystalline hypo are mixed warm',
    tolerance: working.tolerance.exact,
    errors: () => {
      const { developer_from_C, developer_to_C, water_first } = mixingWater
      const [least, most] = water_first as [number, number]
      const developers = SHIPPED_FORMULAS.filter(({ role }) => role === 'developer')
      return [
        ...developers.flatMap(({ temperature, waterFirst }) => [
          ...differences([temperature.low, temperature.high], [developer_from_C, developer_to_C]),
          waterFirst >= least && waterFirst <= most ? 0 : 1,
        ]),
        Math.max(0, hypoWater.at_least_C - (mixedFrom('plain-hypo')?.temperature.low ?? 0)),
        Math.abs(mixingWaterFor('fixer', [{ salt: 'hypo-anhydrous' }]).high - mixingWater.fixer_to_C),
      ]
    },
  },
  {
    rows: [ice.row],
    says: 'ice for a litre from 24 to 20 °C',
    tolerance: working.tolerance.grams,
    errors: () => [
      Math.abs(expectOk(iceFor(grams(ice.water_g), celsius(ice.from_C), celsius(ice.to_C))).ice - ice.ice_g),
    ],
  },
  {
    rows: [iceOutside.row],
    says: 'ice goes outside the bath',
    tolerance: working.tolerance.exact,
    errors: () => [
      expectOk(iceFor(grams(ice.water_g), celsius(ice.from_C), celsius(ice.to_C))).place === iceOutside.place ? 0 : 1,
    ],
  },
  {
    rows: [slower.row],
    says: 'fixing in the cold',
    tolerance: working.tolerance.factor,
    errors: () =>
      differences(
        slower.fahrenheit.map((at) => expectOk(coldFixing(fahrenheit(at))).factor),
        slower.factors,
      ),
  },
  ...pairs.map(
    ({ row, celsius: metric, fahrenheit: us }): Check => ({
      rows: [row],
      says: `${metric} °C is ${us} °F`,
      tolerance: working.tolerance.exact,
      errors: () => differences([toFahrenheit(celsius(metric)), fahrenheit(us)], [us, metric]),
    }),
  ),
]
