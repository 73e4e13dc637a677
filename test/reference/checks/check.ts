import { expect, it } from 'vitest'

/** A tolerance of a data file, with why it is that wide. */
export interface Tolerance {
  readonly value: number
  readonly reason: string
}

/** One comparison with reference values: which rows it tests and how far the program is off at worst. */
export interface Check {
  readonly rows: readonly string[]
  readonly says: string
  readonly tolerance: Tolerance
  /** Every absolute difference from the reference values, in their unit. */
  readonly errors: () => readonly number[]
}

/** Runs checks and prints the worst error of each, passing or not. */
export function runChecks(checks: readonly Check[]): void {
  for (const { says, tolerance, errors } of checks)
    it(says, () => {
      const found = errors()
      expect(found.length).toBeGreaterThan(0)
      expect(found.every(Number.isFinite)).toBe(true)
      const worst = Math.max(...found)
      console.info(`${says}: worst ${worst.toPrecision(3)} of ${tolerance.value} allowed (${tolerance.reason})`)
      expect(worst).toBeLessThanOrEqual(tolerance.value)
    })
}

/** Absolute differences of two equally long lists. */
export function differences(found: readonly number[], expected: readonly number[]): number[] {
  expect(found).toHaveLength(expected.length)
  return found.map((value, index) => Math.abs(value - (expected[index] as number)))
}
