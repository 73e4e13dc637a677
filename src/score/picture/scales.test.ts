import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { linearScale, logScale } from './scales.js'

describe('scales', () => {
  it('put their ends where they are told', () => {
    const scale = logScale(300, 900, 400, 20)
    expect([scale.at(300), scale.at(900)]).toEqual([400, 20])
  })

  it('give equal ratios equal lengths', () => {
    const scale = logScale(100, 1600, 0, 4)
    expect(scale.at(200)).toBeCloseTo(1, 12)
    expect(scale.at(800)).toBeCloseTo(3, 12)
  })

  it('never turn back', () => {
    const value = fc.double({ min: 1, max: 80_000, noNaN: true })
    const later = (a: number, b: number) => {
      const [low, high] = [Math.min(a, b), Math.max(a, b)]
      fc.pre(high > low * (1 + 1e-9))
      expect(logScale(1, 80_000, 0, 500).at(high)).toBeGreaterThan(logScale(1, 80_000, 0, 500).at(low))
      expect(linearScale(1, 80_000, 500, 0).at(high)).toBeLessThan(linearScale(1, 80_000, 500, 0).at(low))
    }
    fc.assert(fc.property(value, value, later), { seed: 20261, numRuns: 300 })
  })
})
