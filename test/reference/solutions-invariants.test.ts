import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  celsius,
  expectOk,
  fahrenheit,
  grams,
  millilitres,
  readVolume,
  seconds,
  toFahrenheit,
} from '../../src/kernel/index.js'
import {
  aceticAcid,
  afterChanges,
  afterDiffusion,
  afterFlow,
  afterRolls,
  ageOf,
  balanceOf,
  blended,
  coldFixing,
  coldWashing,
  estimateWash,
  mix,
  rollsOf,
  silverAfter,
  standsAt,
  sulfurDioxideShare,
  takenOfCount,
  waterAt,
} from '../../src/science/index.js'
import { between } from './negatives-support.js'
import { seeded } from './support.js'

const close = (found: number, expected: number, part = 1e-9) =>
  expect(Math.abs(found - expected)).toBeLessThanOrEqual(part * Math.max(1, Math.abs(expected)))

describe('additive over splits', () => {
  it('washing: two stretches one after the other are one', () => {
    fc.assert(
      fc.property(
        between(0, 3000),
        between(0, 600),
        between(0, 600),
        between(100, 2000),
        (flow, one, other, volume) => {
          const flowed = (time: number) => expectOk(afterFlow(flow, time, volume))
          close(flowed(one) * flowed(other), flowed(one + other))
          const soaked = (time: number) => expectOk(afterDiffusion(time, 60))
          close(soaked(one) * soaked(other), soaked(one + other))
          const changed = (n: number) => expectOk(afterChanges(n, volume, 10))
          close(changed(2) * changed(3), changed(5))
        },
      ),
      seeded(200),
    )
  })

  it('replenishing: after some rolls, more rolls', () => {
    const bath = fc.record({
      volume: fc.constant(millilitres(1000)),
      rate: between(5, 400).map(millilitres),
      perRoll: between(0, 0.2),
      replenisher: between(0, 5),
      start: between(0, 5),
    })
    const some = fc.integer({ min: 0, max: 100 })
    fc.assert(
      fc.property(bath, some, some, (at, one, other) => {
        const half = expectOk(afterRolls(at, one))
        close(expectOk(afterRolls({ ...at, start: half }, other)), expectOk(afterRolls(at, one + other)))
      }),
      seeded(200),
    )
  })

  it('standing: a pause in the middle changes nothing', () => {
    fc.assert(
      fc.property(between(5, 60), between(5, 40), between(0, 5000), between(0, 5000), (from, around, one, other) => {
        const standing = { from: celsius(from), around: celsius(around), constant: seconds(3600) }
        const half = expectOk(standsAt(standing, seconds(one)))
        close(
          expectOk(standsAt({ ...standing, from: half }, seconds(other))),
          expectOk(standsAt(standing, seconds(one + other))),
        )
      }),
      seeded(200),
    )
  })

  it('blends: two first, then the third, or all at once', () => {
    const part = fc.record({ water: between(10, 1000).map(grams), temperature: between(5, 60).map(celsius) })
    fc.assert(
      fc.property(part, part, part, (a, b, c) => {
        const both = { water: grams(a.water + b.water), temperature: expectOk(blended([a, b])) }
        close(expectOk(blended([both, c])), expectOk(blended([a, b, c])))
      }),
      seeded(200),
    )
  })

  it('counts: film, silver, age and the book of volumes', () => {
    const days = fc.integer({ min: 0, max: 40 })
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 20 }), fc.integer({ min: 0, max: 20 }), days, days, (a, b, one, other) => {
        const rolls = (count: number) => expectOk(rollsOf([{ format: '135', frames: 24, count }])).exact
        close(rolls(a) + rolls(b), rolls(a + b))
        const taken = (count: number) => expectOk(takenOfCount([{ rolls: count, family: 'tabular' }]))
        close(taken(a) + taken(b), taken(a + b))
        const silver = (count: number) => expectOk(silverAfter(count, millilitres(700))).usual
        close(silver(a) + silver(b), silver(a + b))
        const lives = { full: 100, 'half-full': null, tray: null, tank: null }
        const used = (...parts: number[]) =>
          expectOk(
            ageOf(
              parts.map((stretch) => ({ state: 'full' as const, days: stretch })),
              lives,
            ),
          ).used
        close(used(one, other), used(one + other))
        const added = (...parts: number[]) =>
          expectOk(
            balanceOf(
              millilitres(100),
              parts.map((volume) => ({ added: millilitres(volume) })),
            ),
          ).volume
        close(added(one, other), added(one + other))
      }),
      seeded(200),
    )
  })
})

describe('equal under a change of unit', () => {
  it('mixtures in fluid ounces and in millilitres', () => {
    const ounces = (value: number): number => {
      const read = readVolume(`${value.toFixed(2)} fl oz`, { system: 'us' })
      return read.kind === 'read' ? read.value : Number.NaN
    }
    fc.assert(
      fc.property(fc.integer({ min: 5, max: 60 }), fc.integer({ min: 1, max: 60 }), (total, n) => {
        const metric = expectOk(mix([1, n], millilitres(ounces(total)))).parts
        const us = expectOk(mix([1, n], millilitres(total))).parts
        for (const [i, part] of us.entries()) close((metric[i] as number) / ounces(1), part)
      }),
      seeded(100),
    )
  })

  it('blends in °F and in °C, seconds and minutes', () => {
    fc.assert(
      fc.property(between(41, 140), between(41, 140), between(0.1, 0.9), (one, other, share) => {
        const parts = [
          { water: grams(1000 * share), temperature: fahrenheit(one) },
          { water: grams(1000 * (1 - share)), temperature: fahrenheit(other) },
        ]
        close(toFahrenheit(expectOk(blended(parts))), one * share + other * (1 - share))
      }),
      seeded(200),
    )
  })

  it('a tank twice as large with twice the rolls washes alike', () => {
    fc.assert(
      fc.property(between(200, 900), fc.integer({ min: 1, max: 4 }), between(1, 40), (volume, rolls, temperature) => {
        const ask = (times: number) =>
          expectOk(
            estimateWash({
              after: { state: 'usable', by: 'count' },
              steps: [1, 2, 3, 4].map(() => ({
                kind: 'change' as const,
                volume: millilitres(volume * times),
                time: seconds(180),
              })),
              fixer: 100,
              rolls: rolls * times,
              temperature: celsius(temperature),
              wet: { emulsion: 2, surface: 2, walls: 6 * times },
            }),
          )
        close(ask(2).residue, ask(1).residue)
        close(ask(2).water, 2 * ask(1).water)
      }),
      seeded(100),
    )
  })
})

describe('monotone', () => {
  it('in temperature: colder takes longer, warmer water is lighter', () => {
    fc.assert(
      fc.property(between(1, 39), between(0.01, 1), (at, more) => {
        const [low, high] = [celsius(at), celsius(Math.min(40, at + more))]
        expect(expectOk(coldFixing(high)).factor).toBeLessThanOrEqual(expectOk(coldFixing(low)).factor)
        expect(expectOk(coldWashing(high)).factor).toBeLessThanOrEqual(expectOk(coldWashing(low)).factor)
        if (at >= 4) expect(expectOk(waterAt(high)).density).toBeLessThan(expectOk(waterAt(low)).density)
        expect(expectOk(waterAt(high)).enthalpy).toBeGreaterThan(expectOk(waterAt(low)).enthalpy)
      }),
      seeded(300),
    )
  })

  it('in what is done: more water, more time and more acid leave less', () => {
    fc.assert(
      fc.property(between(100, 900), between(1, 100), between(5, 30), between(0.1, 13), (volume, more, at, pH) => {
        expect(expectOk(afterChanges(3, volume + more, 10))).toBeLessThan(expectOk(afterChanges(3, volume, 10)))
        const wash = (time: number, temperature: number) =>
          expectOk(
            estimateWash({
              after: { state: 'usable', by: 'count' },
              steps: [
                { kind: 'running', volume: millilitres(volume), time: seconds(time), perMinute: millilitres(500) },
              ],
              fixer: 100,
              rolls: 1,
              temperature: celsius(temperature),
            }),
          ).residue
        expect(wash(300 + more, at)).toBeLessThan(wash(300, at))
        expect(wash(300, at + 1)).toBeLessThanOrEqual(wash(300, at))
        expect(expectOk(sulfurDioxideShare(pH + 0.5))).toBeLessThan(expectOk(sulfurDioxideShare(pH)))
        expect(expectOk(aceticAcid(at + 1)).molarity).toBeGreaterThan(expectOk(aceticAcid(at)).molarity)
      }),
      seeded(300),
    )
  })
})
