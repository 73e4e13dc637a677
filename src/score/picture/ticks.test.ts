import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { logScale } from './scales.js'
import { finestDegrees, multiples, roundSpan, timeTicks } from './ticks.js'

describe('ticks', () => {
  it('are whole minutes from 5 to 15 min, as far apart as asked', () => {
    const ticks = timeTicks(logScale(300, 900, 366, 0), 24).map((time) => time / 60)
    expect(ticks).toEqual([5, 6, 7, 8, 9, 10, 11, 12, 15])
  })

  it('are quarter and half minutes where the times are short', () => {
    const ticks = timeTicks(logScale(90, 210, 300, 0), 20)
    expect(ticks).toContain(120)
    expect(ticks.every((time) => time % 15 === 0)).toBe(true)
    expect(ticks.length).toBeGreaterThanOrEqual(4)
  })

  it('keep their distance for any span', () => {
    const span = fc.tuple(fc.integer({ min: 5, max: 20_000 }), fc.double({ min: 1.4, max: 20, noNaN: true }))
    fc.assert(
      fc.property(span, fc.integer({ min: 120, max: 400 }), ([from, ratio], length) => {
        const round = roundSpan(from, from * ratio)
        expect(round.from).toBeLessThanOrEqual(from)
        expect(round.to).toBeGreaterThanOrEqual(from * ratio)
        const scale = logScale(round.from, round.to, length, 0)
        const places = timeTicks(scale, 20).map((time) => scale.at(time))
        expect(places.length).toBeGreaterThanOrEqual(2)
        places.slice(1).forEach((place, i) => {
          expect((places[i] as number) - place).toBeGreaterThanOrEqual(20 - 1e-9)
        })
      }),
      { seed: 20261, numRuns: 300 },
    )
  })

  it('step by what a thermometer counts in', () => {
    const wide = (perDegree: number) => (step: number) => step * perDegree >= 36
    const steps = [60, 30, 16, 8, 1].map((perDegree) => finestDegrees((step) => step, wide(perDegree)))
    expect(steps).toEqual([1, 2, 5, 5, 20])
    expect(multiples(2, 15.5, 22)).toEqual([16, 18, 20, 22])
    expect(multiples(5, -7, 6)).toEqual([-5, 0, 5])
  })
})
