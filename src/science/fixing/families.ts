import { ok, type Result } from '../../kernel/index.js'
import type { Origin } from '../development/index.js'
import { refusedOutside } from '../range.js'

/** How an emulsion takes to a fixer: those with flat (tabular) grains or much iodide are slow, and use it up faster. */
export const FIXING_FAMILY_NAMES = ['ordinary', 'tabular', 'high-iodide'] as const
/** A family of emulsions by its name. */
export type FixingFamily = (typeof FIXING_FAMILY_NAMES)[number]

interface FamilyFacts {
  /** Rolls of it that a bath carries, as a part of the ordinary count. */
  readonly capacity: number
  readonly capacityOrigin: Origin
  /** Times the clearing time that fixes it. */
  readonly multiple: number
  readonly multipleOrigin: Origin
  readonly source: string
}

const slow: FamilyFacts = {
  capacity: 0.6,
  capacityOrigin: 'assumption',
  multiple: 3,
  multipleOrigin: 'practice',
  source: 'three times is common practice; 0.6 is assumed until a label says otherwise',
}

/** What each family needs. A label's own capacity replaces the assumed one. */
export const FIXING_FAMILIES: Readonly<Record<FixingFamily, FamilyFacts>> = {
  ordinary: {
    capacity: 1,
    capacityOrigin: 'law',
    multiple: 2,
    multipleOrigin: 'practice',
    source: 'NAVEDTRA 14209 (1993), p. 249; capacity 1 by definition',
  },
  tabular: slow,
  'high-iodide': slow,
}

/** Film that a bath has met, in rolls. */
export interface FilmFixed {
  readonly rolls: number
  readonly family: FixingFamily
  /** Where a label states it: rolls of this film that a bath carries, as a part of its ordinary count, 0.1 to 2. */
  readonly capacity?: number
}

/** The part of the ordinary count that a bath carries of some film. */
export const capacityOf = ({ family, capacity }: Omit<FilmFixed, 'rolls'>): number =>
  capacity ?? FIXING_FAMILIES[family].capacity

/**
 * What film takes of a bath's count, in ordinary rolls: 5 ordinary and 3 of a family at 0.6 take 5 + 3/0.6 = 10.
 * 0 to 10 000 rolls of each; else refused.
 */
export function takenOfCount(fixed: readonly FilmFixed[]): Result<number> {
  let sum = 0
  for (const film of fixed) {
    const refused =
      refusedOutside('fixing.bad-value', 'Rolls', film.rolls, { low: 0, high: 10_000 }, 'rolls') ??
      refusedOutside('fixing.bad-value', 'A family’s part of the count', capacityOf(film), { low: 0.1, high: 2 })
    if (refused) return refused
    sum += film.rolls / capacityOf(film)
  }
  return ok(sum)
}
