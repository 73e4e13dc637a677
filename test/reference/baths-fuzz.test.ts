import fc from 'fast-check'
import { describe, it } from 'vitest'
import {
  afterRolls,
  ageOf,
  balanceOf,
  clearingTrend,
  clearingVerdict,
  FILL_STATES,
  FILM_FORMATS,
  FIXER_KINDS,
  FIXING_FAMILY_NAMES,
  fitting,
  fixerLeft,
  KEEPING,
  neutralisedAt,
  plateau,
  replenisherFor,
  rollsByVolume,
  rollsOf,
  rollsToPlateau,
  rollsToSilver,
  secondBathShare,
  silverAfter,
  stopCapacity,
  stopMolarity,
  twoBaths,
} from '../../src/science/index.js'
import { answers, any } from './sound.js'
import { seeded } from './support.js'

/** Ten thousand inputs a function, of any value at all; sums of these are quick. */
const MANY = seeded(10_000)
/** As the science takes it: a number that nobody has looked at yet. */
const value = any as fc.Arbitrary<never>
const few = <T>(one: fc.Arbitrary<T>, most = 5) => fc.array(one, { maxLength: most })
const format = fc.constantFrom(...FILM_FORMATS, 'nothing' as never)
const family = fc.constantFrom(...FIXING_FAMILY_NAMES)
const whole = fc.oneof(any, fc.integer({ min: -1, max: 120 }))
const tests = few(fc.record({ rolls: any, clearing: value }))
const fills = fc.record({ inBottle: value, fill: value, rollsPerFill: any, lost: value })
const bath = fc.record(
  {
    kind: fc.constantFrom(...FIXER_KINDS),
    volume: value,
    rollsPerLitre: any,
    fixed: few(fc.record({ rolls: any, family, capacity: any }, { requiredKeys: ['rolls', 'family'] })),
    silverLimit: any,
    film: fc.record({ gramsPerM2: any, share: any }),
    tests: fc.record({ fresh: value, made: tests }),
    fills,
  },
  { requiredKeys: ['kind', 'volume', 'rollsPerLitre', 'fixed'] },
)
const replenished = fc.record({ volume: value, rate: value, perRoll: any, replenisher: any, start: any })
const stop = fc.record(
  {
    volume: value,
    molarity: any,
    acid: fc.constantFrom('acetic' as const, 'citric' as const),
    rolls: any,
    carried: fc.record({ volume: value, alkali: any, origin: fc.constant('assumption' as const) }),
    published: any,
  },
  { requiredKeys: ['volume', 'molarity'] },
)

describe('baths asked anything give a sound answer or a typed refusal:', () => {
  const cases: [name: string, property: fc.IProperty<never> | fc.IRawProperty<unknown>][] = [
    ['rollsOf', fc.property(few(fc.record({ format, frames: whole, count: whole })), (film) => answers(rollsOf(film)))],
    ['fitting', fc.property(any, format, whole, (left, of, frames) => answers(fitting(left, of, frames)))],
    [
      'clearingVerdict',
      fc.property(value, value, family, (fresh, now, of) => answers(clearingVerdict(fresh, now, of))),
    ],
    ['clearingTrend', fc.property(value, tests, (fresh, made) => answers(clearingTrend(fresh, made)))],
    ['fixerLeft', fc.property(bath, (one) => answers(fixerLeft(one)))],
    ['twoBaths', fc.property(few(fc.record({ done: any, capacity: any })), (film) => answers(twoBaths(film)))],
    ['secondBathShare', fc.property(any, value, (rolls, carried) => answers(secondBathShare(rolls, carried)))],
    ['silverAfter', fc.property(any, value, (rolls, volume) => answers(silverAfter(rolls, volume)))],
    ['rollsToSilver', fc.property(any, any, any, (limit, grams, share) => answers(rollsToSilver(limit, grams, share)))],
    ['rollsByVolume', fc.property(fills, (one) => answers(rollsByVolume(one)))],
    [
      'ageOf',
      fc.property(few(fc.record({ state: fc.constantFrom(...FILL_STATES), days: any })), (stood) =>
        answers(ageOf(stood, KEEPING.stop.days)),
      ),
    ],
    ['afterRolls', fc.property(replenished, whole, (one, rolls) => answers(afterRolls(one, rolls)))],
    ['plateau', fc.property(replenished, (one) => answers(plateau(one)))],
    ['rollsToPlateau', fc.property(replenished, any, (one, part) => answers(rollsToPlateau(one, part)))],
    ['replenisherFor', fc.property(any, any, value, (aim, used, rate) => answers(replenisherFor(aim, used, rate)))],
    [
      'balanceOf',
      fc.property(value, few(fc.record({ added: value, discarded: value, carriedOut: value })), (start, book) =>
        answers(balanceOf(start, book)),
      ),
    ],
    ['stopMolarity', fc.property(any, (percent) => answers(stopMolarity(percent)))],
    ['neutralisedAt', fc.property(any, (pH) => answers(neutralisedAt(pH, 'citric')))],
    ['stopCapacity', fc.property(stop, (one) => answers(stopCapacity(one)))],
  ]
  it.each(cases)('%s', (_, property) => {
    fc.assert(property as fc.IRawProperty<unknown>, MANY)
  })
})
