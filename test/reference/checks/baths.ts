import { expectOk, millilitres } from '../../../src/kernel/index.js'
import {
  afterRolls,
  FILL_STATES,
  INDICATOR,
  KEEPING,
  type KeepingKind,
  neutralisedAt,
  plateau,
  rollsToPlateau,
  stopCapacity,
  stopMolarity,
} from '../../../src/science/index.js'
import keeping from '../data/keeping.json' with { type: 'json' }
import data from '../data/replenishment.json' with { type: 'json' }
import stop from '../data/stop-baths.json' with { type: 'json' }
import { type Check, differences } from './check.js'

const { tolerance, volume_mL, left_of_the_way, plateaus, sequence } = data

const bath = (rate: number, milligrams: number) => ({
  volume: millilitres(volume_mL),
  rate: millilitres(rate),
  perRoll: milligrams / 1000,
  replenisher: 0,
  start: 0,
})

export const replenished: readonly Check[] = [
  ...plateaus.flatMap(({ row, rate_mL, milligrams_a_roll, grams_a_litre, rolls }): Check[] => [
    {
      rows: [row],
      says: `plateau with ${rate_mL} mL a roll`,
      tolerance: tolerance.plateau,
      errors: () =>
        differences(
          milligrams_a_roll.map((each) => expectOk(plateau(bath(rate_mL, each))).beforeTopping),
          grams_a_litre,
        ),
    },
    {
      rows: [row],
      says: `rolls to 95 % of the way with ${rate_mL} mL a roll`,
      tolerance: tolerance.rolls,
      errors: () => [Math.abs(expectOk(rollsToPlateau(bath(rate_mL, 50), left_of_the_way)) - rolls)],
    },
  ]),
  {
    rows: [sequence.row],
    says: 'the way there, roll by roll, mg/L',
    tolerance: tolerance.sequence,
    errors: () =>
      differences(
        sequence.rolls.map(
          (rolls) => 1000 * expectOk(afterRolls(bath(sequence.rate_mL, sequence.milligrams_a_roll), rolls)),
        ),
        sequence.milligrams_a_litre,
      ),
  },
]

const { indicator, neutralised, absorbs, rolls, published } = stop
const litre = millilitres(1000)
const onePercent = () => expectOk(stopMolarity(absorbs.percent))
const takes = (pH: number) => onePercent() * expectOk(neutralisedAt(pH))
const carried = {
  volume: millilitres(rolls.carried_mL),
  alkali: rolls.alkali_mol_a_litre,
  origin: 'assumption',
} as const
const capacity = (count?: number) =>
  expectOk(
    stopCapacity({
      volume: litre,
      molarity: onePercent(),
      carried,
      ...(count === undefined ? {} : { published: count }),
    }),
  )

export const stopBaths: readonly Check[] = [
  {
    rows: [indicator.row],
    says: 'where the indicator turns',
    tolerance: stop.tolerance.exact,
    errors: () =>
      differences([INDICATOR.yellowBelow, INDICATOR.purpleAbove], [indicator.yellow_below, indicator.purple_above]),
  },
  {
    rows: [neutralised.row],
    says: 'part of acetic acid neutralised',
    tolerance: stop.tolerance.part,
    errors: () =>
      differences(
        neutralised.pH.map((pH) => expectOk(neutralisedAt(pH))),
        neutralised.parts,
      ),
  },
  {
    rows: [absorbs.row],
    says: 'alkali that a litre of 1 % takes, mol',
    tolerance: stop.tolerance.moles,
    errors: () => [
      Math.abs(onePercent() - absorbs.mol_a_litre),
      ...differences(neutralised.pH.map(takes), absorbs.moles),
      Math.abs(capacity().takes - (absorbs.moles[0] as number)),
    ],
  },
  {
    rows: [rolls.row],
    says: 'rolls until the indicator begins to turn, at pH 6, and until it is purple',
    tolerance: stop.tolerance.rolls,
    errors: () => {
      const perRoll = (carried.volume / 1000) * carried.alkali
      return differences(
        [capacity().byAcid, takes(6) / perRoll, capacity().toPurple],
        [rolls.to_turning, rolls.to_pH_6, rolls.to_purple],
      )
    },
  },
  {
    rows: [published.row],
    says: 'a published count that is lower decides',
    tolerance: stop.tolerance.exact,
    errors: () => {
      const { carries, decides } = capacity(published.rolls_a_litre)
      return [Math.abs(carries - published.rolls_a_litre), decides === 'published' ? 0 : 1]
    },
  },
]

type Days = Partial<Record<(typeof FILL_STATES)[number], number>>

export const keepingTimes: readonly Check[] = keeping.days.map(
  (days): Check => ({
    rows: [days.row],
    says: `how many days keeps: ${days.kind}`,
    tolerance: keeping.tolerance.days,
    errors: () =>
      FILL_STATES.flatMap((state) => {
        const printed = (days as Days)[state]
        const ours = KEEPING[days.kind as KeepingKind].days[state]
        // Where the table says nothing of a state, or a session, nothing is compared.
        return printed === undefined ? [] : [Math.abs((ours ?? Number.POSITIVE_INFINITY) - printed)]
      }),
  }),
)
