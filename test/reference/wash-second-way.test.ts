import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { celsius, expectOk, millilitres, seconds } from '../../src/kernel/index.js'
import { estimateWash, RESIDUE_LIMIT } from '../../src/science/index.js'
import { between } from './negatives-support.js'
import { layerWashed, type Pour } from './simulate/layer.js'
import { seeded } from './support.js'

/** A roll and a drained tank, as the page on washing has them. */
const roll = { gelatin: 2, surface: 2, walls: 6 }
const LIMIT_MG = RESIDUE_LIMIT.gramsPerM2 * 0.0516128 * 1000

function estimated(pours: readonly Pour[], fixer: number, halfLife: number) {
  return expectOk(
    estimateWash({
      after: { state: 'usable', by: 'count' },
      steps: pours.map(({ volume, time, perMinute }) =>
        perMinute > 0
          ? { kind: 'running', volume: millilitres(volume), time: seconds(time), perMinute: millilitres(perMinute) }
          : { kind: 'change', volume: millilitres(volume), time: seconds(time) },
      ),
      fixer,
      rolls: 1,
      temperature: celsius(20),
      halfLife: seconds(halfLife),
    }),
  )
}

const anyFixer = between(30, 150)
const changes = (from: number, to: number, count: number) =>
  fc.array(fc.record({ volume: between(250, 1000), time: between(from, to), perMinute: fc.constant(0) }), {
    minLength: 1,
    maxLength: count,
  })
const anything = fc.array(
  fc.record({
    volume: between(250, 1000),
    time: between(20, 900),
    perMinute: fc.oneof(fc.constant(0), between(50, 3000)),
  }),
  { minLength: 1, maxLength: 8 },
)

describe('a wash, by Fick’s law in a layer of sixteen cells', () => {
  it('the simulation itself meets the series of a layer in endless fresh water', () => {
    const halfLife = 60
    for (const halvings of [0.3, 1, 3, 8]) {
      let left = 0
      for (let n = 0; n < 50; n++) {
        const mode = (2 * n + 1) ** 2
        left += (8 / Math.PI ** 2 / mode) * 0.5 ** (mode * halvings)
      }
      const layer = { gelatin: 2, surface: 0, walls: 1e-9, fixer: 100, halfLife }
      const found = layerWashed(layer, [{ volume: 1e7, time: halvings * halfLife, perMinute: 0 }])
      expect(Math.abs(found / 200 / left - 1)).toBeLessThan(0.01)
    }
  })

  it('changes that are waited for leave what the water alone is said to leave', () => {
    fc.assert(
      fc.property(changes(1200, 1500, 3), anyFixer, (pours, fixer) => {
        const { left, slower } = estimated(pours, fixer, 60)
        expect(slower).toBe('water')
        const found = layerWashed({ ...roll, fixer, halfLife: 60 }, pours)
        expect(Math.abs(found / left.water.milligramsPerRoll - 1)).toBeLessThan(0.002)
      }),
      seeded(20),
    )
  })

  it('in plenty of fresh water it halves each half-life, and the estimate is up to 2.5 times on the safe side', () => {
    fc.assert(
      fc.property(between(15, 150), between(3, 8), anyFixer, (halfLife, halvings, fixer) => {
        // Ten tankfuls a half-life: the water is never what is waited for.
        const river = (times: number) => [{ volume: 1000, time: times * halfLife, perMinute: 600_000 / halfLife }]
        const washed = (times: number) => layerWashed({ ...roll, fixer, halfLife }, river(times))
        expect(washed(halvings + 1) / washed(halvings)).toBeCloseTo(0.5, 2)
        // Half of the roll's fixer is on the film and gone at once, and the layer's first mode holds 8/π² of the rest.
        const safe = estimated(river(halvings), fixer, halfLife).left.diffusion.milligramsPerRoll / washed(halvings)
        expect(safe).toBeGreaterThan(2)
        expect(safe).toBeLessThan(2.5)
      }),
      seeded(20),
    )
  })

  it('both together are never below the truth, and at most four times above it for each filling, whatever is done', () => {
    fc.assert(
      fc.property(anything, anyFixer, between(40, 600), (pours, fixer, halfLife) => {
        const found = layerWashed({ ...roll, fixer, halfLife }, pours)
        const part = found / estimated(pours, fixer, halfLife).perRoll
        // The small steps of the simulation are good to half of one per cent.
        expect(part).toBeLessThan(1.005)
        // Each filling costs up to twice for the surface, which is gone at once, and more for the layer's quick modes
        // where water and film are waited for alike.
        expect(part).toBeGreaterThan((1 / 4) ** pours.length)
      }),
      seeded(60),
    )
  })

  it('enough is enough: after changes, after a trickle at the very limit, after both', () => {
    let judged = 0
    const judge = (pours: readonly Pour[], fixer: number, halfLife: number) => {
      if (estimated(pours, fixer, halfLife).verdict.says !== 'enough') return
      judged++
      expect(layerWashed({ ...roll, fixer, halfLife }, pours)).toBeLessThan(LIMIT_MG)
    }
    fc.assert(fc.property(changes(150, 300, 9), anyFixer, between(60, 150), judge), seeded(150))
    const long = fc.array(
      fc.record({ volume: between(250, 1000), time: between(600, 1800), perMinute: between(5, 500) }),
      {
        minLength: 1,
        maxLength: 3,
      },
    )
    fc.assert(fc.property(long, anyFixer, between(60, 300), judge), seeded(30))
    expect(judged).toBeGreaterThan(20)
    for (const halfLife of [30, 60, 120, 240])
      for (const volume of [250, 600, 1000]) {
        const trickle = (perMinute: number) => [{ volume, time: 3600, perMinute }]
        let least = 5
        while (estimated(trickle(least), 110, halfLife).verdict.says !== 'enough') least *= 1.02
        const found = layerWashed({ ...roll, fixer: 110, halfLife }, trickle(least))
        expect(found / LIMIT_MG).toBeLessThan(1)
        expect(found / LIMIT_MG).toBeGreaterThan(0.4)
      }
  })
})
