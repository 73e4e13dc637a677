import { celsius, expectOk, fahrenheit, grams, millilitres, seconds } from '../../../src/kernel/index.js'
import { sharedTime } from '../../../src/planning/index.js'
import {
  afterChanges,
  blendOf,
  clearingVerdict,
  colonReadings,
  constantFrom,
  crissCross,
  type FilmFormat,
  firstFill,
  fitting,
  fixerLeft,
  intoOrUpTo,
  pourAt,
  rollsOf,
  substitute,
  twoBaths,
  weightPercent,
} from '../../../src/science/index.js'
import data from '../data/cases-solutions.json' with { type: 'json' }
import { type Check, differences } from './check.js'

const { tolerance, pour, cooling, colon, into, vinegar, hypo, count, families, clip, firstFill: fill, shared } = data

const solutions: readonly Check[] = [
  {
    rows: [pour.row],
    says: 'P5: how warm to pour into a warm tank',
    tolerance: tolerance.tenth,
    errors: () => {
      const met = [{ water: grams(pour.water_worth_g), temperature: celsius(pour.at_C) }]
      return [Math.abs(expectOk(pourAt(celsius(pour.wanted_C), grams(pour.solution_mL), met)).pour - pour.pour_C)]
    },
  },
  {
    rows: [cooling.row],
    says: 'P6: time constant of a bottle in cold air, min',
    tolerance: tolerance.minutes,
    errors: () =>
      differences(
        cooling.reads_F.map((reads) => {
          const readings = [
            { at: seconds(0), temperature: fahrenheit(cooling.from_F) },
            { at: seconds(60 * cooling.after_min), temperature: fahrenheit(reads) },
          ]
          return expectOk(constantFrom(readings, fahrenheit(cooling.around_F))).value / 60
        }),
        cooling.constant_min,
      ),
  },
  {
    rows: [colon.row],
    says: 'P7: both readings of 1:4 in 300 mL',
    tolerance: tolerance.exact,
    errors: () => {
      const both = expectOk(colonReadings(colon.n, millilitres(colon.total_mL)))
      return differences(
        [...both.plus.parts, ...both.within.parts, both.stronger],
        [...colon.plus_mL, ...colon.within_mL, colon.stronger],
      )
    },
  },
  {
    rows: [into.row],
    says: 'P8: 50 made up to a litre, and 50 into a litre',
    tolerance: tolerance.exact,
    errors: () => {
      const both = expectOk(intoOrUpTo(millilitres(into.amount_mL), millilitres(into.volume_mL)))
      return differences(
        [
          ...both.madeUpTo.mixture.parts,
          both.madeUpTo.parts[1],
          ...both.pouredInto.mixture.parts,
          both.pouredInto.parts[1],
        ],
        [...into.made_up_to, into.parts_up_to, ...into.poured_into, into.parts_into],
      )
    },
  },
  {
    rows: [vinegar.row],
    says: 'P9: vinegar and essence to a stop bath',
    tolerance: tolerance.exact,
    errors: () => {
      const blend = expectOk(blendOf(vinegar.percent, 0, vinegar.wanted_percent, millilitres(1000)))
      const half = { volumes: 1, density: 1 }
      const halves = expectOk(weightPercent({ ...half, percent: vinegar.percent }, half))
      const essence = expectOk(crissCross(vinegar.essence_percent, 0, vinegar.wanted_percent))
      return differences(
        [blend.strong, blend.weak, halves.byVolume, 1, essence.weak / essence.strong],
        [...vinegar.volumes_mL, vinegar.half_and_half_percent, ...vinegar.essence_parts],
      )
    },
  },
  {
    rows: [hypo.row],
    says: 'P10: anhydrous for crystalline hypo, and the rule of thumb',
    tolerance: tolerance.tenth,
    errors: () => {
      const { amount } = expectOk(substitute('hypo', 'hypo-anhydrous', grams(hypo.crystal_g)))
      return differences([amount, hypo.crystal_g * hypo.rule_of_thumb], [hypo.anhydrous_g, hypo.by_rule_g])
    },
  },
]

const counts: readonly Check[] = [
  {
    rows: [count.row],
    says: 'P12: a litre for twenty rolls, exactly and by the tally',
    tolerance: tolerance.exact,
    errors: () => {
      const film = count.film.map(({ format, frames, count: pieces }) => ({
        format: format as FilmFormat,
        count: pieces,
        ...(frames === undefined ? {} : { frames }),
      }))
      const { exact, tally, pieces } = expectOk(rollsOf(film))
      const left = count.carries - exact
      return differences(
        [
          exact,
          tally,
          expectOk(fitting(left, '135')),
          expectOk(fitting(left, '4x5')),
          ...pieces.map((one) => one.rolls),
        ],
        [count.exact, count.tally, count.still_rolls, count.still_4x5, ...count.film.map(({ rolls }) => rolls)],
      )
    },
  },
  {
    rows: [families.row],
    says: 'P13: a family that uses a bath faster',
    tolerance: tolerance.exact,
    errors: () => {
      const left = expectOk(
        fixerLeft({
          kind: 'ammonium-thiosulfate',
          volume: millilitres(families.volume_mL),
          rollsPerLitre: families.rolls_a_litre,
          fixed: [
            { rolls: families.ordinary, family: 'ordinary' },
            { rolls: families.other, family: 'tabular', capacity: families.other_capacity },
          ],
        }),
      )
      return differences(
        [left.taken, left.carries, left.whole.ordinary, left.whole.tabular],
        [families.taken, families.carries, families.still_ordinary, families.still_other],
      )
    },
  },
  {
    rows: [clip.row],
    says: 'P14: a clip that clears more slowly',
    tolerance: tolerance.exact,
    errors: () => {
      const ordinary = expectOk(clearingVerdict(seconds(clip.fresh_s), seconds(clip.now_s)))
      const tabular = expectOk(clearingVerdict(seconds(clip.fresh_s), seconds(clip.now_s), 'tabular'))
      return [
        ...differences(
          [ordinary.fixFor, tabular.fixFor, ordinary.finishedAt],
          [clip.twice_s, clip.three_times_s, clip.finished_at_s],
        ),
        ordinary.verdict === 'usable' ? 0 : 1,
      ]
    },
  },
  {
    rows: [data.twoBaths.row],
    says: 'P15: rolls and sheets through the first of two baths',
    tolerance: tolerance.hundredth,
    errors: () => {
      const film = data.twoBaths.done.map((done, i) => ({ done, capacity: data.twoBaths.capacity[i] as number }))
      const { used, verdict } = expectOk(twoBaths(film))
      return [Math.abs(used - data.twoBaths.used), verdict === 'rotate' ? 0 : 1]
    },
  },
]

export const solutionCases: readonly Check[] = [
  ...solutions,
  ...counts,
  {
    rows: [fill.row],
    says: 'P16: the first fill, after rinses of film and walls and of walls alone, g/L',
    tolerance: tolerance.exact,
    errors: () => {
      const after = (left: number) => expectOk(firstFill(fill.milligrams, fill.volume_mL, left))
      return differences(
        [after(1).gramsPerLitre, after(fill.left_by_film_and_walls).rinsed, after(fill.left_by_walls_alone).rinsed],
        [fill.grams_a_litre, fill.both_grams_a_litre, fill.walls_grams_a_litre],
      )
    },
  },
  {
    rows: [fill.row],
    says: 'P16: a fill leaves a fiftieth at equilibrium, not half',
    tolerance: tolerance.factor,
    errors: () => {
      const left = expectOk(afterChanges(1, fill.volume_mL, fill.carried_mL))
      const share = fill.carried_mL / (fill.volume_mL + fill.carried_mL)
      return [Math.abs(left - share), left < fill.folk_rule_left / 10 ? 0 : 1]
    },
  },
  {
    rows: [shared.row],
    says: 'P22: one time for two films, only if both tolerances allow it',
    tolerance: tolerance.percent,
    errors: () => {
      const films = (longer: number, shorter: number) =>
        shared.times_s.map((time) => ({ name: `${time} s`, time: seconds(time), tolerance: { longer, shorter } }))
      const [longer, shorter] = shared.served_percent as [number, number]
      const { time, departures } = expectOk(sharedTime(films(0.1, 0.1)))
      return [
        Math.abs(time - shared.served_s),
        ...differences(
          departures.map((part) => 100 * part),
          [longer, -shorter],
        ),
        sharedTime(films(0.09, 0.1)).ok ? 1 : 0,
        sharedTime(films(0.1, 0.07)).ok ? 1 : 0,
      ]
    },
  },
]
