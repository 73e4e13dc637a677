import { describe, expect, it } from 'vitest'
import { bandFor, coverageOfOwnTime, coverageOfStrips } from '../reference/simulate/coverage.js'

describe('95 % intervals over 2 000 simulated strips', () => {
  const { low, high } = bandFor(2000)
  it.each([20_271, 20_272])('hold the true speed, gradient and contrast index (seed %d)', (seed) => {
    for (const { held, of } of Object.values(coverageOfStrips(2000, seed))) {
      expect(held / of).toBeGreaterThanOrEqual(low)
      expect(held / of).toBeLessThanOrEqual(high)
    }
  })
  it('hold the true own time, 2 000 families of five', () => {
    const { held, of } = coverageOfOwnTime(2000, 20_273)
    expect(held / of).toBeGreaterThanOrEqual(low)
    expect(held / of).toBeLessThanOrEqual(high)
  })
})
