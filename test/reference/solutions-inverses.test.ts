import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { celsius, expectOk, grams, millilitres, seconds } from '../../src/kernel/index.js'
import {
  acidToReach,
  blended,
  blendOf,
  chained,
  dilutedAcetic,
  fromTheTaps,
  hydrateFactor,
  intoOrUpTo,
  meanOver,
  mix,
  mostFrom,
  pHOf,
  plateau,
  pourAt,
  pouredTogether,
  reachesAt,
  readFormula,
  replenisherFor,
  SALTS,
  solutionHolding,
  standsAt,
  startForMean,
  writeFormula,
} from '../../src/science/index.js'
import { between } from './negatives-support.js'
import { seeded } from './support.js'

const close = (found: number, expected: number, part = 1e-9) =>
  expect(Math.abs(found - expected)).toBeLessThanOrEqual(part * Math.max(1, Math.abs(expected)))

describe('the inverse of the inverse', () => {
  it('standing: when it comes there, and what to start from', () => {
    fc.assert(
      fc.property(between(20, 50), between(5, 18), between(1, 20_000), (from, around, time) => {
        const standing = { from: celsius(from), around: celsius(around), constant: seconds(7200) }
        const there = expectOk(standsAt(standing, seconds(time)))
        close(expectOk(reachesAt(standing, there)), time, 1e-6)
        const mean = expectOk(meanOver(standing, seconds(time)))
        const start = startForMean(mean, standing.around, standing.constant, seconds(time))
        close(expectOk(start), from, 1e-9)
      }),
      seeded(200),
    )
  })

  it('taps and pours: mixing what was answered gives what was asked', () => {
    fc.assert(
      fc.property(between(5, 17), between(30, 60), between(18, 28), between(10, 200), (cold, hot, wanted, worth) => {
        const taps = { volume: millilitres(1000), wanted: celsius(wanted), hot: celsius(hot), cold: celsius(cold) }
        const vessel = { water: grams(worth / 4), temperature: celsius(20) }
        const mixed = expectOk(fromTheTaps({ ...taps, vessel }))
        const waters = [
          { water: grams(mixed.hot), temperature: taps.hot },
          { water: grams(mixed.cold), temperature: taps.cold },
        ]
        close(expectOk(blended([...waters, vessel])), wanted)
        const tank = { water: grams(worth), temperature: celsius(hot / 2) }
        const { pour } = expectOk(pourAt(celsius(wanted), grams(500), [tank]))
        close(expectOk(blended([{ water: grams(500), temperature: pour }, tank])), wanted)
      }),
      seeded(200),
    )
  })

  it('dilutions: there and back', () => {
    fc.assert(
      fc.property(between(1, 60), between(100, 2000), between(0.5, 4), between(5, 99), (n, total, wanted, strong) => {
        const [concentrate] = expectOk(mix([1, n], millilitres(total))).parts
        close(expectOk(mostFrom([1, n], concentrate as never)).total, total)
        const [, more] = expectOk(
          chained([
            [1, n],
            [1, 4],
          ]),
        )
        close((1 + more) / 5 - 1, n)
        const blend = expectOk(blendOf(strong, 0, wanted, millilitres(total)))
        close((blend.strong * strong) / total, wanted)
        close(expectOk(solutionHolding(grams(wanted), strong)) * (strong / 100), wanted)
        const { madeUpTo, pouredInto } = expectOk(intoOrUpTo(millilitres(total / 50), millilitres(total)))
        close(pouredInto.parts[1] - madeUpTo.parts[1], 1)
        const acid = expectOk(dilutedAcetic(strong, Math.min(wanted, strong), millilitres(total)))
        close((acid.acid * strong) / (acid.acid + acid.water), Math.min(wanted, strong))
      }),
      seeded(200),
    )
  })

  it('formulas: factors there and back, and what is written is read', () => {
    for (const { formula } of SALTS) {
      const read = expectOk(readFormula(formula))
      expect(expectOk(readFormula(writeFormula(read)))).toEqual(read)
      for (const other of SALTS)
        close(expectOk(hydrateFactor(formula, other.formula)) * expectOk(hydrateFactor(other.formula, formula)), 1)
    }
  })

  it('baths: a replenisher that holds the aim, and an acid that brings the pH', () => {
    fc.assert(
      fc.property(between(0.5, 5), between(0.001, 0.1), between(20, 200), between(4.5, 9), (aim, used, rate, pH) => {
        const strength = expectOk(replenisherFor(aim, used, millilitres(rate)))
        const bath = {
          volume: millilitres(1000),
          rate: millilitres(rate),
          perRoll: -used,
          replenisher: strength,
          start: aim,
        }
        close(expectOk(plateau(bath)).beforeTopping, aim)
        const carbonate = { acids: [{ acid: 'carbonic' as const, molarity: 0.2 }], spectators: 0.4 }
        const vinegar = { acids: [{ acid: 'acetic' as const, molarity: 0.8 }], spectators: 0 }
        const poured = expectOk(acidToReach(carbonate, vinegar, pH))
        close(expectOk(pHOf(expectOk(pouredTogether(carbonate, 1000, vinegar, poured)))), pH, 1e-7)
      }),
      seeded(200),
    )
  })
})
