import { describe, expect, it } from 'vitest'
import { bandFor, type Coverage, coverageOfOwnTime, coverageOfStrips } from './simulate/coverage.js'

/** 2 000 of each in `test/long`; here fewer, with the band widened by the binomial error. */
const STRIPS = 300
const FAMILIES = 300
/** Some seconds by themselves; a busy machine takes several times that. */
const PATIENCE = { timeout: 90_000 }

function within({ held, of }: Coverage, what: string): void {
  const { low, high } = bandFor(of)
  console.info(`${what}: ${held} of ${of} intervals hold the truth`)
  expect(held / of).toBeGreaterThanOrEqual(low)
  expect(held / of).toBeLessThanOrEqual(high)
}

describe('95 % intervals over simulated strips', () => {
  const strips = coverageOfStrips(STRIPS, 20_261)
  it.each(['speed', 'gradient', 'index'] as const)('hold the true %s', (what) => within(strips[what], what))
  it('hold the true own time', PATIENCE, () => within(coverageOfOwnTime(FAMILIES, 20_262), 'own time'))
})
