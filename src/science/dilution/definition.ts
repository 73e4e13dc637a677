import type { Millilitres } from '../../kernel/index.js'

/** What one volume is made of. */
export interface Mixture {
  readonly total: Millilitres
  /** One volume a part, in the order of the ratio: concentrates first, water last. */
  readonly parts: readonly Millilitres[]
}

/** Ranges as data. */
export const DILUTION_LIMITS = {
  total: { low: 1, high: 100_000 },
  part: { low: 0.001, high: 10_000 },
  parts: { fewest: 1, most: 6 },
  percent: { low: 0, high: 100 },
  rolls: { low: 1, high: 200 },
  density: { low: 0.5, high: 2 },
  marks: { low: 0.01, high: 1000 },
} as const
