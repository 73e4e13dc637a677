import type { Origin } from '../development/index.js'

/** How an emulsion takes to a fixer. */
export type FixingFamily = 'ordinary' | 'fast-using'

interface FamilyFacts {
  /** Rolls of it that a bath carries, as a part of the ordinary count. */
  readonly capacity: number
  /** Times the clearing time that fixes it. */
  readonly multiple: number
  readonly origin: Origin
  readonly source: string
}

/** Ordinary emulsions, and the slow-fixing ones with tabular or much iodide that use a bath faster. */
export const FIXING_FAMILIES: Readonly<Record<FixingFamily, FamilyFacts>> = {
  ordinary: { capacity: 1, multiple: 2, origin: 'practice', source: 'NAVEDTRA 14209, p. 249' },
  'fast-using': { capacity: 0.6, multiple: 3, origin: 'assumption', source: 'common practice' },
}
