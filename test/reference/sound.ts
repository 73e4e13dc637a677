import fc from 'fast-check'
import { expect } from 'vitest'

/** Any double at all, with values of the trade mixed in so that the calculations are reached. */
export const any = fc.oneof(
  { weight: 1, arbitrary: fc.double() },
  { weight: 2, arbitrary: fc.constantFrom(Number.NaN, Number.POSITIVE_INFINITY, -0, 0, -1, 1e308, 5e-324) },
  { weight: 6, arbitrary: fc.double({ min: 0, max: 45, noNaN: true }) },
  { weight: 6, arbitrary: fc.double({ min: 5, max: 21_600, noNaN: true }) },
)
/** Every number anywhere in an answer is finite; times, bands and rates are not negative. */
export function sound(value: unknown, path = ''): void {
  if (typeof value === 'number') {
    expect(Number.isFinite(value), `${path} is ${value}`).toBe(true)
    if (/time|equivalent|elapsed|rate|fraction|band|factor|shortest|longest|spread/i.test(path))
      expect(value, path).toBeGreaterThanOrEqual(0)
  } else if (value !== null && typeof value === 'object') {
    for (const [key, inner] of Object.entries(value)) sound(inner, `${path}.${key}`)
  }
}

/** An answer is sound, or a registered problem whose sentence has every value filled in. */
export function answers(result: { ok: boolean; value?: unknown; problem?: { sentence: string } }): void {
  if (result.ok) sound(result.value)
  else expect(result.problem?.sentence).not.toContain('missing)')
}
