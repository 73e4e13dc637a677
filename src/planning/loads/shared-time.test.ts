import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { expectOk, minutes, seconds } from '../../kernel/index.js'
import { servedAt, sharedTime, type Wanted } from './shared-time.js'

const wanting = (time: number, longer = 0.1, shorter = 0.1): Wanted => ({
  name: `the film of ${time} s`,
  time: seconds(time),
  tolerance: { longer, shorter },
})

describe('one time for a mixed tank', () => {
  it('serves 8:00 and 9:30 at 8:45 (practice case P22, public thread, restated)', () => {
    const shared = expectOk(sharedTime([wanting(minutes(8)), wanting(minutes(9.5))]))
    expect(shared.time).toBe(525)
    expect(shared.departures[0]).toBeCloseTo(0.094, 3)
    expect(shared.departures[1]).toBeCloseTo(-0.079, 3)
  })

  it('is refused as soon as one film departs beyond its own tolerance', () => {
    expect(sharedTime([wanting(480, 0.09), wanting(570)])).toMatchObject({
      ok: false,
      problem: { code: 'loads.times-too-far-apart' },
    })
    expect(sharedTime([wanting(480), wanting(570, 0.1, 0.07)])).toMatchObject({
      ok: false,
      problem: { code: 'loads.times-too-far-apart' },
    })
    expect(sharedTime([wanting(480, 0.095), wanting(570, 0, 0.08)]).ok).toBe(true)
  })

  it('names the film that does not bear it, with what it wants, what it gets and what it bears', () => {
    expect(servedAt(minutes(8), [wanting(480), wanting(570)])).toMatchObject({
      ok: false,
      problem: {
        details: { film: 'the film of 570 s', wants: '9:30', gets: '8:00', departs: '15.8 % less', bears: '10.0 %' },
      },
    })
    expect(expectOk(servedAt(minutes(9), [wanting(600)])).departures[0]).toBeCloseTo(-0.1, 12)
  })

  it('gives one film its own time to the quarter minute', () => {
    expect(expectOk(sharedTime([wanting(495)])).time).toBe(495)
  })

  it('refuses nothing at all', () => {
    expect(sharedTime([])).toMatchObject({ ok: false, problem: { code: 'loads.no-films' } })
  })

  it('serves 8:00 and 10:30 at 9:00, which a mean of their logarithms would not', () => {
    expect(expectOk(sharedTime([wanting(480, 0.2, 0.2), wanting(630, 0.2, 0.2)])).time).toBe(540)
  })

  it('has no rival on the quarter-minute grid with a smaller largest departure, but for the rounding', () => {
    const time = fc.integer({ min: 180, max: 1800 })
    fc.assert(
      fc.property(fc.array(time, { minLength: 1, maxLength: 6 }), (times) => {
        const shared = expectOk(sharedTime(times.map((one) => wanting(one, 20, 1))))
        const worst = (served: number) => Math.max(...times.map((one) => Math.abs(served / one - 1)))
        // Half a step away from the best time costs at most this much on the shortest.
        const rounding = 7.5 / Math.min(...times)
        for (let rival = 15; rival <= 1800; rival += 15)
          expect(worst(shared.time)).toBeLessThanOrEqual(worst(rival) + rounding + 1e-12)
      }),
      { seed: 20261, numRuns: 100 },
    )
  })
})
