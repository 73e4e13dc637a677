import { expectOk, grams, millilitres, readRatio, readVolume } from '../../../src/kernel/index.js'
import {
  blendOf,
  chained,
  colonReadings,
  crissCross,
  dryFor,
  floorFor,
  mix,
  solutionHolding,
  strengthOf,
} from '../../../src/science/index.js'
import cross from '../data/criss-cross.json' with { type: 'json' }
import data from '../data/dilution.json' with { type: 'json' }
import percent from '../data/percent.json' with { type: 'json' }
import { type Check, differences } from './check.js'

const { tolerance, totals_mL: totals, readings, floor } = data

const mixed = (n: number, total: number) => expectOk(mix([1, n], millilitres(total))).parts

const ratios: readonly Check[] = data.ratios.flatMap(({ row, n, percent: share, concentrate_mL, water_mL }) => [
  {
    rows: [row],
    says: `1 + ${n} in 300, 500 and 1000 mL`,
    tolerance: tolerance.volume,
    errors: () => [
      ...differences(
        totals.map((total) => mixed(n, total)[0] as number),
        concentrate_mL,
      ),
      ...differences(
        totals.map((total) => mixed(n, total)[1] as number),
        water_mL,
      ),
    ],
  },
  {
    rows: [row],
    says: `1 + ${n} as percent`,
    tolerance: tolerance.percent,
    errors: () => [Math.abs(100 * expectOk(strengthOf([1, n])) - share)],
  },
])

/** What a typed ratio may mean, and whether it is asked about. */
function readingsOf(text: string): { asked: boolean; fractions: number[] } {
  const reading = readRatio(text)
  if (reading.kind === 'refused') throw new Error(reading.problem.sentence)
  const values = reading.kind === 'read' ? [reading.value] : reading.choices.map(({ value }) => value)
  return { asked: reading.kind === 'asked', fractions: values.map(({ parts }) => expectOk(strengthOf(parts))) }
}

export const dilutions: readonly Check[] = [
  ...ratios,
  {
    rows: readings.map(({ row }) => row),
    says: 'a plus is read, a colon is asked about with both readings',
    tolerance: tolerance.exact,
    errors: () =>
      readings.flatMap(({ text, asked, fractions }) => {
        const found = readingsOf(text)
        return [...differences(found.fractions, fractions), found.asked === asked ? 0 : 1]
      }),
  },
  {
    rows: readings.map(({ row }) => row),
    says: 'one in four is a quarter stronger than one and four',
    tolerance: tolerance.exact,
    errors: () => {
      const [plus, within] = readings.find(({ asked }) => asked)?.fractions ?? []
      return [Math.abs(expectOk(colonReadings(4, millilitres(300))).stronger - (within ?? 0) / (plus ?? 1))]
    },
  },
  {
    rows: [data.chained.row],
    says: '1 + 1 and then 1 + 4 is 1 + 9',
    tolerance: tolerance.exact,
    errors: () => differences(expectOk(chained(data.chained.ratios)), [1, data.chained.water_parts]),
  },
  {
    rows: [floor.row],
    says: '1 + 25 in 250 mL carries one roll at 6 mL a roll, and not two',
    tolerance: tolerance.volume,
    errors: () => {
      const asked = {
        parts: floor.parts,
        volume: millilitres(floor.volume_mL),
        floor: millilitres(floor.least_mL_a_roll),
      }
      const [one, two] = [floor.rolls, floor.not_rolls].map((rolls) => expectOk(floorFor({ ...asked, rolls })))
      return [
        Math.abs((one?.held ?? 0) - floor.held_mL),
        Math.abs((one?.rolls ?? 0) - floor.rolls),
        one?.enough === true && two?.enough === false ? 0 : 1,
      ]
    },
  },
]

const { liquid, units } = percent

const inMillilitres = (text: string): number => {
  const read = readVolume(text, { system: 'us' })
  if (read.kind !== 'read') throw new Error(`“${text}” is not read at once`)
  return read.value
}

export const percents: readonly Check[] = [
  {
    rows: [percent.dry.row],
    says: '10 % dry: one in ten',
    tolerance: percent.tolerance.exact,
    errors: () => [Math.abs(expectOk(dryFor(percent.dry.percent, millilitres(percent.dry.total))) - percent.dry.dry)],
  },
  {
    rows: [liquid.row],
    says: '32 fl oz of 28 % from 99.5 %: volumes in any unit',
    tolerance: percent.tolerance.ounces,
    errors: () => {
      const { strong, weak } = expectOk(
        blendOf(liquid.at_hand_percent, 0, liquid.wanted_percent, millilitres(liquid.total_floz)),
      )
      return [
        ...differences([strong, weak], [liquid.strong_floz, liquid.water_floz]),
        ...differences([strong, weak], liquid.printed_floz),
      ]
    },
  },
  {
    rows: [percent.salt.row],
    says: 'half a gram from a 10 % stock',
    tolerance: percent.tolerance.exact,
    errors: () => {
      const { grams: amount, percent: strength, volume_mL } = percent.salt
      return [Math.abs(expectOk(solutionHolding(grams(amount), strength)) - volume_mL)]
    },
  },
  {
    rows: [units.row],
    says: 'a fluid ounce in mL',
    tolerance: percent.tolerance.floz,
    errors: () => [Math.abs(inMillilitres('10 fl oz') / 10 - units.floz_mL)],
  },
  {
    rows: [units.row],
    says: 'a gallon in litres',
    tolerance: percent.tolerance.gallon,
    errors: () => [Math.abs(inMillilitres('1 gal') / 1000 - units.gallon_L)],
  },
]

const { unreduced, litre, impossible } = cross

export const crossed: readonly Check[] = [
  ...cross.blends.map(
    ({ row, strong, weak, wanted, weak_parts }): Check => ({
      rows: [row],
      says: `${strong} % and ${weak} % to ${wanted.join(', ')} %`,
      tolerance: cross.tolerance.parts,
      errors: () =>
        differences(
          wanted.map((one) => {
            const parts = expectOk(crissCross(strong, weak, one))
            return parts.weak / parts.strong
          }),
          weak_parts,
        ),
    }),
  ),
  {
    rows: [unreduced.row, litre.row],
    says: 'parts as the square gives them, and as a litre',
    tolerance: cross.tolerance.volume,
    errors: () => {
      const parts = [unreduced, litre].map(({ strong, weak, wanted }) => expectOk(crissCross(strong, weak, wanted)))
      const volumes = expectOk(blendOf(litre.strong, litre.weak, litre.wanted, millilitres(1000)))
      return [
        ...differences(
          parts.flatMap(({ strong, weak }) => [strong, weak]),
          [...unreduced.parts, ...litre.parts],
        ),
        ...differences([volumes.strong, volumes.weak], litre.volumes_mL),
      ]
    },
  },
  {
    rows: [impossible.row],
    says: 'a strength above both is refused',
    tolerance: cross.tolerance.refused,
    errors: () => {
      const answer = crissCross(impossible.strong, impossible.weak, impossible.wanted)
      return [!answer.ok && answer.problem.code === 'dilution.out-of-reach' ? 0 : 1]
    },
  },
]
