import fc from 'fast-check'
import { describe, it } from 'vitest'
import {
  aceticAcid,
  blended,
  blendOf,
  chained,
  coldFixing,
  coldWashing,
  colonReadings,
  concentrateAndStock,
  constantFrom,
  crissCross,
  dilutedAcetic,
  dropsFor,
  dryFor,
  floorFor,
  fromTheTaps,
  guessConstant,
  heatBalance,
  iceFor,
  intoOrUpTo,
  judgeTemperatures,
  meanOver,
  measuresFor,
  mix,
  mostFrom,
  mostFromStocks,
  pourAt,
  reachesAt,
  readAgainAfter,
  solutionHolding,
  standsAt,
  startForMean,
  strengthOf,
  waterAt,
  waysOut,
  weighedFor,
  weightInVolume,
  weightPercent,
  worthInWater,
} from '../../src/science/index.js'
import { answers, any, sound } from './sound.js'
import { seeded } from './support.js'

/** Ten thousand inputs a function, of any value at all; sums of these are quick. */
const MANY = seeded(10_000)
/** As the science takes it: a number that nobody has looked at yet. */
const value = any as fc.Arbitrary<never>
const few = <T>(one: fc.Arbitrary<T>, most = 5) => fc.array(one, { maxLength: most })
const warmth = fc.record({ water: value, temperature: value })
const standing = fc.record({ from: value, around: value, constant: value })
const parts = few(any)
const two = fc.tuple(any, any) as fc.Arbitrary<[number, number]>
const material = fc.constantFrom('steel', 'plastic', 'glass')
const floor = fc.record({ parts, volume: value, floor: value, rolls: any })

describe('warm and cold, asked anything', () => {
  it('water and what is worth water', () => {
    fc.assert(
      fc.property(value, (t) => answers(waterAt(t))),
      MANY,
    )
    fc.assert(
      fc.property(value, material, (mass, of) => answers(worthInWater(mass, of))),
      MANY,
    )
    fc.assert(
      fc.property(few(fc.record({ volume: value, temperature: value })), (all) => answers(heatBalance(all))),
      MANY,
    )
    fc.assert(
      fc.property(few(warmth), (all) => answers(blended(all))),
      MANY,
    )
  })
  it('taps, pours and ice', () => {
    const taps = fc.record(
      { volume: value, wanted: value, hot: value, cold: value, vessel: warmth },
      {
        requiredKeys: ['volume', 'wanted', 'hot', 'cold'],
      },
    )
    fc.assert(
      fc.property(taps, (asked) => answers(fromTheTaps(asked))),
      MANY,
    )
    fc.assert(
      fc.property(value, value, few(warmth), (t, m, met) => answers(pourAt(t, m, met))),
      MANY,
    )
    fc.assert(
      fc.property(value, value, value, (m, from, to) => answers(iceFor(m, from, to))),
      MANY,
    )
  })
  it('what stands', () => {
    fc.assert(
      fc.property(standing, value, (bath, t) => answers(standsAt(bath, t))),
      MANY,
    )
    fc.assert(
      fc.property(standing, value, (bath, t) => answers(reachesAt(bath, t))),
      MANY,
    )
    fc.assert(
      fc.property(standing, value, (bath, t) => answers(meanOver(bath, t))),
      MANY,
    )
    fc.assert(
      fc.property(standing, any, (bath, moved) => answers(readAgainAfter(bath, moved))),
      MANY,
    )
    fc.assert(
      fc.property(value, value, value, value, (t, room, tau, time) => answers(startForMean(t, room, tau, time))),
      MANY,
    )
  })
  it('time constants', () => {
    const readings = few(fc.record({ at: value, temperature: value }))
    fc.assert(
      fc.property(readings, value, any, (all, around, error) => answers(constantFrom(all, around, error))),
      MANY,
    )
    const around = fc.constantFrom('air' as const, 'water' as const)
    fc.assert(
      fc.property(value, material, around, (volume, of, where) => answers(guessConstant(volume, of, where))),
      MANY,
    )
  })
  it('the cold, and the spread of baths', () => {
    fc.assert(
      fc.property(value, (t) => answers(coldFixing(t))),
      MANY,
    )
    fc.assert(
      fc.property(value, (t) => answers(coldWashing(t))),
      MANY,
    )
    // Temperatures of baths are checked where a list is read; here any that can be.
    const possible = fc.double({ min: -90, max: 200, noNaN: true }) as unknown as fc.Arbitrary<never>
    const window = fc.option(fc.record({ from: possible, to: possible }))
    const baths = few(fc.record({ temperature: possible, develops: fc.boolean(), window }), 8)
    fc.assert(
      fc.property(baths, (all) => sound(judgeTemperatures(all))),
      MANY,
    )
  })
})

describe('dilution, asked anything', () => {
  it('ratios', () => {
    fc.assert(
      fc.property(parts, value, (of, total) => answers(mix(of, total))),
      MANY,
    )
    fc.assert(
      fc.property(parts, value, (of, stock) => answers(mostFrom(of, stock))),
      MANY,
    )
    fc.assert(
      fc.property(parts, few(fc.option(value)), (of, stocks) => answers(mostFromStocks(of, stocks))),
      MANY,
    )
    fc.assert(
      fc.property(parts, (of) => answers(strengthOf(of))),
      MANY,
    )
    fc.assert(
      fc.property(few(few(any, 3)), (ratios) => answers(chained(ratios))),
      MANY,
    )
    fc.assert(
      fc.property(any, value, (n, total) => answers(colonReadings(n, total))),
      MANY,
    )
    fc.assert(
      fc.property(value, value, (amount, volume) => answers(intoOrUpTo(amount, volume))),
      MANY,
    )
    fc.assert(
      fc.property(two, two, (stock, working) => answers(concentrateAndStock(stock, working))),
      MANY,
    )
  })
  it('strengths', () => {
    fc.assert(
      fc.property(any, any, any, (a, b, c) => answers(crissCross(a, b, c))),
      MANY,
    )
    fc.assert(
      fc.property(any, any, any, value, (a, b, c, total) => answers(blendOf(a, b, c, total))),
      MANY,
    )
    fc.assert(
      fc.property(any, value, (percent, total) => answers(dryFor(percent, total))),
      MANY,
    )
    fc.assert(
      fc.property(value, any, (amount, percent) => answers(solutionHolding(amount, percent))),
      MANY,
    )
    fc.assert(
      fc.property(any, any, value, (percent, density, v) => answers(weighedFor(percent, density, v))),
      MANY,
    )
    fc.assert(
      fc.property(any, any, (percent, density) => answers(weightInVolume(percent, density))),
      MANY,
    )
    const acid = fc.record({ volumes: any, percent: any, density: any })
    fc.assert(
      fc.property(acid, acid, (one, water) => answers(weightPercent(one, water))),
      MANY,
    )
    fc.assert(
      fc.property(any, (percent) => answers(aceticAcid(percent))),
      MANY,
    )
    fc.assert(
      fc.property(any, any, value, (from, to, total) => answers(dilutedAcetic(from, to, total))),
      MANY,
    )
  })
  it('floors and measuring', () => {
    fc.assert(
      fc.property(floor, (asked) => answers(floorFor(asked))),
      MANY,
    )
    const tanks = few(fc.record({ name: fc.constant('a tank'), holds: value, rolls: any }))
    fc.assert(
      fc.property(floor, tanks, few(parts, 3), (asked, all, others) => answers(waysOut(asked, all, others))),
      MANY,
    )
    const kind = fc.constantFrom('graduate' as const, 'syringe' as const)
    const measures = few(fc.record({ name: fc.constant('one'), kind, holds: value, marks: value }))
    fc.assert(
      fc.property(value, measures, (volume, all) => answers(measuresFor(volume, all))),
      MANY,
    )
    fc.assert(
      fc.property(value, any, (volume, each) => answers(dropsFor(volume, each))),
      MANY,
    )
  })
})
