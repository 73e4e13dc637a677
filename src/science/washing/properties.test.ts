import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { celsius, expectOk, fahrenheit, millilitres, seconds } from '../../kernel/index.js'
import { estimateWash, RINSES, type WashAsked, type WashStep } from './index.js'

const seeded = { seed: 20_261, numRuns: 300 }
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const change: fc.Arbitrary<WashStep> = fc.record({
  kind: fc.constant('change' as const),
  volume: between(50, 2000).map(millilitres),
  time: between(0, 900).map(seconds),
  moved: fc.boolean(),
})
const running: fc.Arbitrary<WashStep> = fc.record({
  kind: fc.constant('running' as const),
  volume: between(50, 2000).map(millilitres),
  time: between(0, 900).map(seconds),
  perMinute: between(0, 5000).map(millilitres),
})
const anyWash: fc.Arbitrary<WashAsked> = fc.record({
  after: fc.constant({ state: 'usable' as const, by: 'count' as const }),
  steps: fc.array(fc.oneof(change, running), { minLength: 1, maxLength: 8 }),
  fixer: between(1, 400),
  rolls: between(0.1, 10),
  // Not to the very ends, over which the last digit of another unit may fall.
  temperature: between(1.1, 39.9).map(celsius),
  rinse: fc.constantFrom(...RINSES),
  hardened: fc.boolean(),
  washAid: fc.boolean(),
})
/** Millilitres that a step lets through. */
const through = (step: WashStep) => step.volume + (step.kind === 'running' ? (step.perMinute * step.time) / 60 : 0)
/** Three times the water, as one property asks for, stays within what one roll may be washed with. */
const wash = anyWash.filter(
  ({ steps, rolls }) => 3 * steps.reduce((water, step) => water + through(step), 0) < 900_000 * rolls,
)
const residue = (asked: WashAsked) => expectOk(estimateWash(asked)).residue
/** At most 25 tankfuls a step, so that gulps can follow it. */
const gently = (step: WashStep): WashStep => {
  const volume = millilitres(Math.max(300, step.volume))
  return step.kind === 'running'
    ? { ...step, volume, perMinute: millilitres(step.perMinute / 10) }
    : { ...step, volume }
}
/** The last digits of a product taken in another order. */
const ALIKE = 1 + 1e-9

describe('a wash', () => {
  it('more water, more time, one more step never leaves more', () => {
    fc.assert(
      fc.property(wash, between(1, 3), change, (asked, times, more) => {
        const before = residue(asked) * ALIKE
        const bigger = asked.steps.map((step) => ({ ...step, volume: millilitres(step.volume * times) }))
        const onlyChanges = asked.steps.every(({ kind }) => kind === 'change')
        if (onlyChanges) expect(residue({ ...asked, steps: bigger })).toBeLessThanOrEqual(before)
        const longer = asked.steps.map((step) => ({ ...step, time: seconds(step.time * times) }))
        expect(residue({ ...asked, steps: longer })).toBeLessThanOrEqual(before)
        const faster = asked.steps.map((step) =>
          step.kind === 'running' ? { ...step, perMinute: millilitres(step.perMinute * times) } : step,
        )
        expect(residue({ ...asked, steps: faster })).toBeLessThanOrEqual(before)
        expect(residue({ ...asked, steps: [...asked.steps, more] })).toBeLessThanOrEqual(before)
      }),
      seeded,
    )
  })

  it('a volume split into two changes never leaves more, and running water split in time leaves the same', () => {
    fc.assert(
      fc.property(wash, between(200, 2000), between(60, 900), between(0.25, 0.75), (asked, volume, time, part) => {
        const of = (steps: WashStep[]) => residue({ ...asked, steps })
        const byWater = (steps: WashStep[]) => expectOk(estimateWash({ ...asked, steps })).left.water.part
        const one = (share: number): WashStep => ({
          kind: 'change',
          volume: millilitres(volume * share),
          time: seconds(time * share),
        })
        // Of film that still gives off, the smaller first fill takes a little less: only the water is better split.
        expect(byWater([one(part), one(1 - part)])).toBeLessThanOrEqual(byWater([one(1)]) * ALIKE)
        const run = (share: number): WashStep => ({
          ...{ kind: 'running', volume: millilitres(volume), perMinute: millilitres(800) },
          time: seconds(time * share),
        })
        expect(of([run(part), run(1 - part)]) / of([run(1)])).toBeCloseTo(1, 9)
        expect(byWater([run(part), run(1 - part)]) / byWater([run(1)])).toBeCloseTo(1, 9)
      }),
      seeded,
    )
  })

  it('is the same in either unit of temperature, and never worse when it is warmer', () => {
    fc.assert(
      fc.property(wash, between(0, 10), (asked, warmer) => {
        const again = fahrenheit((asked.temperature * 9) / 5 + 32)
        expect(residue({ ...asked, temperature: again }) / residue(asked)).toBeCloseTo(1, 6)
        const warm = celsius(Math.min(39.9, asked.temperature + warmer))
        expect(residue({ ...asked, temperature: warm })).toBeLessThanOrEqual(residue(asked) * ALIKE)
      }),
      seeded,
    )
  })

  it('leaves no less than the water alone and diffusion alone, and no more than the film brought', () => {
    fc.assert(
      fc.property(wash, (asked) => {
        const { left, perRoll } = expectOk(estimateWash(asked))
        expect(perRoll * ALIKE).toBeGreaterThanOrEqual(left.water.milligramsPerRoll)
        expect(perRoll * ALIKE).toBeGreaterThanOrEqual(left.diffusion.milligramsPerRoll)
        expect(perRoll).toBeLessThanOrEqual(asked.fixer * 4 * ALIKE)
      }),
      seeded,
    )
  })

  it('comes to what pouring step by step comes to', () => {
    fc.assert(
      fc.property(wash, (thrifty) => {
        const asked = { ...thrifty, steps: thrifty.steps.map(gently) }
        // Milligrams followed through each water in small gulps, by neither power nor exponential.
        const carried = 4 * asked.rolls + 6
        const kept = { nothing: carried, walls: 4 * asked.rolls, 'film-and-walls': 2 * asked.rolls }
        let held = asked.fixer * kept[asked.rinse ?? 'nothing']
        let before: WashStep | undefined
        for (const step of asked.steps) {
          const goesOn = step.kind === 'running' && before?.kind === 'running' && before.volume === step.volume
          if (!goesOn) held *= carried / (step.volume + carried)
          if (step.kind === 'running') {
            const gulps = 20_000
            const each = (step.perMinute * step.time) / 60 / step.volume / gulps
            for (let i = 0; i < gulps; i++) held *= (1 - each / 2) / (1 + each / 2)
          }
          before = step
        }
        const found = expectOk(estimateWash(asked)).left.water.milligramsPerRoll
        // 25 tankfuls in 20 000 gulps are off by 25³/12/20 000², some 3 in a million, a step.
        expect(Math.abs((found * carried) / (held * 4) - 1)).toBeLessThan(1e-4)
      }),
      { ...seeded, numRuns: 60 },
    )
  })
})
