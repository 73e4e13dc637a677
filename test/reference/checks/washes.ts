import { celsius, expectOk, fahrenheit, millilitres, seconds } from '../../../src/kernel/index.js'
import {
  afterChanges,
  afterDiffusion,
  afterFlow,
  coldWashing,
  estimateWash,
  firstFill,
  HALF_LIFE,
  HALF_LIVES,
  RESIDUE_LIMIT,
  ROLL_AREA_CM2,
  WASH_FLOORS,
  type WashStep,
} from '../../../src/science/index.js'
import data from '../data/wash.json' with { type: 'json' }
import { type Check, differences } from './check.js'

const { tolerance, changes, flow, retained, ideal, halfLives, floors, cold, halvings, limit } = data
const { others, temperature, xRay } = data
const part = (found: number, expected: number) => Math.abs(found / expected - 1)
const after = (times: number, volume: number, carried: number) => expectOk(afterChanges(times, volume, carried))

const byWater: readonly Check[] = [
  ...changes.flatMap(({ row, carried_mL, volume_mL, left, coarse }): Check[] => [
    {
      rows: [row],
      says: `${carried_mL} mL carried into ${volume_mL} mL, few changes, as a part`,
      tolerance: tolerance.part,
      errors: () => left.map(([n, expected]) => part(after(n as number, volume_mL, carried_mL), expected as number)),
    },
    {
      rows: [row],
      says: `${carried_mL} mL carried into ${volume_mL} mL, many changes, as a part`,
      tolerance: tolerance.coarse,
      errors: () => coarse.map(([n, expected]) => part(after(n as number, volume_mL, carried_mL), expected as number)),
    },
  ]),
  {
    rows: [flow.row],
    says: 'water running through until a thousandth is left',
    tolerance: tolerance.part,
    errors: () => [part(expectOk(afterFlow(1000, 60 * flow.vessels, 1000)), flow.to)],
  },
  {
    rows: [retained.row],
    says: 'the first fill, and after a rinse of film and walls, g/L',
    tolerance: tolerance.exact,
    errors: () => {
      const fill = expectOk(firstFill(retained.milligrams, retained.fill_mL, retained.left_by_rinse))
      return differences([fill.gramsPerLitre, fill.rinsed], [retained.grams_a_litre, retained.rinsed_grams_a_litre])
    },
  },
  {
    rows: [ideal.row],
    says: 'thiosulfate in the film change by change, in the last digits printed',
    tolerance: tolerance.digits,
    errors: () =>
      ideal.milligrams.map((printed, n) => {
        const found = ideal.fixer_g_a_litre * ideal.in_film_mL * after(n, ideal.volume_mL, ideal.carried_mL)
        return Math.abs(found - printed) * 10 ** (ideal.decimals[n] as number)
      }),
  },
  {
    rows: [ideal.row],
    says: 'the limit is passed on the second change',
    tolerance: tolerance.exact,
    errors: () => {
      const held = (n: number) => ideal.fixer_g_a_litre * ideal.in_film_mL * after(n, ideal.volume_mL, ideal.carried_mL)
      const passed = [1, 2, 3].find((n) => held(n) <= ideal.limit_mg) ?? 0
      return [Math.abs(passed - ideal.passed_on_change)]
    },
  },
]

const byTime: readonly Check[] = [
  {
    rows: [halfLives.row_navy, halfLives.row_army, halfLives.row_slower],
    says: 'two published half-lives, the slower by default',
    tolerance: tolerance.exact,
    errors: () => [
      ...differences(
        HALF_LIVES.map((one) => one.seconds),
        [halfLives.navy_s, halfLives.army_s],
      ),
      Math.abs(HALF_LIFE.seconds - Math.max(halfLives.navy_s, halfLives.army_s)),
    ],
  },
  {
    rows: [halfLives.row_navy, halfLives.row_army],
    says: 'what is left by half-lives, as a part',
    tolerance: tolerance.part,
    errors: () =>
      halfLives.left.map(([time, halfLife, left]) =>
        part(expectOk(afterDiffusion(time as number, halfLife as number)), left as number),
      ),
  },
  {
    rows: [halvings.row],
    says: 'powers of a half',
    tolerance: tolerance.exact,
    errors: () =>
      differences(
        halvings.left.map((_, n) => expectOk(afterDiffusion(60 * n, 60))),
        halvings.left,
      ),
  },
  {
    rows: [halvings.row],
    says: 'halvings to the limit',
    tolerance: tolerance.halvings,
    errors: () =>
      halvings.to_limit.map(([start, count]) => {
        const halfLife = 100
        const left = expectOk(afterDiffusion(halfLife * (count as number), halfLife)) * (start as number)
        return Math.abs(Math.log2(left / halvings.limit_mg))
      }),
  },
  {
    rows: [cold.row],
    says: 'washing in the cold',
    tolerance: tolerance.exact,
    errors: () =>
      differences(
        cold.fahrenheit.map((at) => expectOk(coldWashing(fahrenheit(at))).factor),
        cold.factors,
      ),
  },
  {
    rows: [floors.row_changes, floors.row_running, floors.row_aid],
    says: 'the least that is published for each scheme',
    tolerance: tolerance.exact,
    errors: () =>
      differences(
        [WASH_FLOORS.changes.seconds, WASH_FLOORS.running.seconds, WASH_FLOORS['after-aid'].seconds],
        [floors.changes_s, floors.running_s, floors.after_aid_s],
      ),
  },
  {
    rows: [floors.row_changes],
    says: 'a full change each 3 min for 20 min is six changes and a begun one',
    tolerance: tolerance.exact,
    errors: () => [WASH_FLOORS.changes.changes - Math.ceil(floors.changes_s / floors.every_s)].map(Math.abs),
  },
]

/** A wash as others wash, in ordinary water after a usable fixer: as few changes or as much running water as they say. */
function stepsOf(wash: (typeof others)[number]): WashStep[] {
  const volume = millilitres(500)
  if (wash.running_s !== undefined)
    return [{ kind: 'running', volume, time: seconds(wash.running_s), perMinute: millilitres(2000) }]
  const time = seconds(wash.each_s ?? 0)
  return Array.from({ length: wash.changes ?? 0 }, () => ({ kind: 'change' as const, volume, time }))
}

const byOthers: readonly Check[] = [
  ...others.map(
    (wash): Check => ({
      rows: [wash.row],
      says: `${wash.row.split('.').at(-1)}, ${wash.running_s ?? `${wash.changes} × ${wash.each_s}`} s: ${wash.verdict}`,
      tolerance: tolerance.exact,
      errors: () => {
        const after = { state: 'usable', by: 'count' } as const
        const at = wash.fahrenheit === undefined ? celsius(20) : fahrenheit(wash.fahrenheit)
        const asked = { after, steps: stepsOf(wash), fixer: 110, rolls: 1, temperature: at }
        return [expectOk(estimateWash(asked)).verdict.says === wash.verdict ? 0 : 1]
      },
    }),
  ),
  {
    rows: [temperature.row],
    says: 'nothing is added to a wash of 65 to 75 °F',
    tolerance: tolerance.exact,
    errors: () =>
      temperature.fahrenheit.map((at) => Math.abs(expectOk(coldWashing(fahrenheit(at))).factor - temperature.factor)),
  },
  {
    rows: xRay.map(({ row }) => row),
    says: 'limits of X-ray film in g/m²; ours is stricter than each',
    tolerance: tolerance.exact,
    errors: () =>
      xRay.flatMap(({ micrograms_a_cm2, grams_a_m2 }) => [
        Math.abs(micrograms_a_cm2 / 100 - grams_a_m2),
        RESIDUE_LIMIT.gramsPerM2 < grams_a_m2 ? 0 : 1,
      ]),
  },
]

export const washing: readonly Check[] = [
  ...byWater,
  ...byTime,
  ...byOthers,
  {
    rows: [limit.row],
    says: 'the limit in three units',
    tolerance: tolerance.limit,
    errors: () =>
      differences(
        [RESIDUE_LIMIT.gramsPerM2, RESIDUE_LIMIT.gramsPerM2 * 100, (RESIDUE_LIMIT.gramsPerM2 * ROLL_AREA_CM2) / 10],
        [limit.grams_a_m2, limit.micrograms_a_cm2, limit.milligrams_a_roll],
      ),
  },
]
