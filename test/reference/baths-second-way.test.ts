import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { expectOk, millilitres } from '../../src/kernel/index.js'
import {
  afterChanges,
  afterDiffusion,
  afterFlow,
  afterRolls,
  plateau,
  rollsToPlateau,
} from '../../src/science/index.js'
import { between } from './negatives-support.js'
import { integrated } from './ode.js'
import { seeded } from './support.js'

/** Differences as a part of the figure. */
const part = (found: number, expected: number) => Math.abs(found / expected - 1)

describe('washing, step by step', () => {
  it('changes: milligrams shared out between what stays and what goes, fill by fill', () => {
    fc.assert(
      fc.property(between(1, 50), between(100, 1000), fc.integer({ min: 0, max: 12 }), (carried, volume, changes) => {
        let milligrams = 1000
        for (let n = 0; n < changes; n++) milligrams *= carried / (carried + volume)
        expect(part(expectOk(afterChanges(changes, volume, carried)) * 1000, milligrams)).toBeLessThan(1e-9)
      }),
      seeded(200),
    )
  })

  it('running water: dc/dt = −Q c / V by the ODE library', () => {
    fc.assert(
      fc.property(between(50, 3000), between(1, 600), between(200, 2000), (perMinute, time, volume) => {
        const left = integrated((_, c) => (-perMinute / 60 / volume) * c, 0, 1, time)
        expect(Math.abs(expectOk(afterFlow(perMinute, time, volume)) - left)).toBeLessThan(1e-8)
      }),
      seeded(40),
    )
  })

  it('diffusion: halved each half-life, the rest by the ODE library', () => {
    fc.assert(
      fc.property(between(5, 300), between(0, 8), (halfLife, times) => {
        let left = 1
        for (let n = 1; n <= times; n++) left /= 2
        const rest = (times % 1) * halfLife
        left = rest === 0 ? left : integrated((_, c) => (-Math.LN2 / halfLife) * c, 0, left, rest)
        expect(Math.abs(expectOk(afterDiffusion(times * halfLife, halfLife)) - left)).toBeLessThan(1e-8)
      }),
      seeded(40),
    )
  })
})

describe('replenishing, addition by addition', () => {
  const baths = fc.record({
    volume: between(500, 5000).map(millilitres),
    rate: between(5, 400).map(millilitres),
    perRoll: between(0, 0.2),
    replenisher: between(0, 5),
    start: between(0, 5),
  })

  it('each roll gives its grams, then so much goes out and so much comes in', () => {
    fc.assert(
      fc.property(baths, fc.integer({ min: 0, max: 200 }), (bath, rolls) => {
        let held = (bath.start * bath.volume) / 1000
        for (let roll = 0; roll < rolls; roll++) {
          held += bath.perRoll
          held -= (held * bath.rate) / bath.volume
          held += (bath.replenisher * bath.rate) / 1000
        }
        expect(expectOk(afterRolls(bath, rolls))).toBeCloseTo((held * 1000) / bath.volume, 8)
      }),
      seeded(200),
    )
  })

  it('goes on until it moves no more: there is the plateau, and the way to it as counted', () => {
    fc.assert(
      fc.property(baths, between(0.01, 0.5), (bath, leftOver) => {
        const { afterTopping } = expectOk(plateau(bath))
        fc.pre(Math.abs(bath.start - afterTopping) > 0.01)
        let [strength, rolls, passed] = [bath.start as number, 0, -1]
        const whole = Math.abs(strength - afterTopping)
        for (; rolls < 40_000 && Math.abs(strength - afterTopping) > 1e-9; rolls++) {
          if (passed < 0 && Math.abs(strength - afterTopping) <= leftOver * whole) passed = rolls
          strength += (bath.perRoll * 1000) / bath.volume
          strength += ((bath.replenisher - strength) * bath.rate) / bath.volume
        }
        expect(strength).toBeCloseTo(afterTopping, 8)
        if (passed > 0) expect(Math.ceil(expectOk(rollsToPlateau(bath, leftOver)) - 1e-6)).toBe(passed)
      }),
      seeded(60),
    )
  })
})
