import { type Millilitres, ok, type Result } from '../../kernel/index.js'
import { refusedOutside } from '../range.js'
import { FIXING_FAMILIES, type FixingFamily } from './families.js'
import { type FixerKind, rollsToSilver, SILVER_LIMITS, SILVER_OF_FILM } from './silver.js'

/** Rolls a litre that an unknown fixer carries: textbook, 3rd ed. 2008, p. 108. */
export const UNKNOWN_CAPACITY = { acid: 20, alkaline: 25 } as const

/** Film that a bath has met, counted in rolls, by family. */
export interface FilmFixed {
  readonly rolls: number
  readonly family: FixingFamily
}

/** Rolls' worth that film takes of a bath's count: those of a fast-using family take more. */
export function used(fixed: readonly FilmFixed[]): Result<number> {
  let sum = 0
  for (const { rolls, family } of fixed) {
    const refused = refusedOutside('fixing.bad-value', 'Rolls', rolls, { low: 0, high: 10_000 }, 'rolls')
    if (refused) return refused
    sum += rolls / FIXING_FAMILIES[family].capacity
  }
  return ok(sum)
}

/** What may still be fixed, by each thing that ends a bath. */
export interface FixerLeft {
  /** Ordinary rolls and rolls of the fast-using family that it still carries: whole ones, either or. */
  readonly ordinary: number
  readonly fastUsing: number
  /** Ordinary rolls by each, in full; null for what is not known. */
  readonly by: { readonly count: number; readonly silver: number; readonly tests: number | null }
  readonly decides: 'count' | 'silver' | 'tests'
}

/**
 * Rolls left in a fixer: by its count (rolls a litre), by silver, and by the trend of clearing tests when there is one.
 * The least decides and is named. Volumes 50 mL to 100 L, capacity 1 to 500 rolls a litre.
 */
export function fixerLeft(asked: {
  readonly volume: Millilitres
  readonly rollsPerLitre: number
  readonly kind: FixerKind
  readonly fixed: readonly FilmFixed[]
  /** g/L; the kind's own when not given. */
  readonly silverLimit?: number
  readonly gramsPerM2?: number
  readonly share?: number
  /** Rolls in all at which tests say that it ends. */
  readonly endsAt?: number
}): Result<FixerLeft> {
  const { volume, rollsPerLitre, kind, fixed, endsAt } = asked
  const refused =
    refusedOutside('fixing.bad-value', 'A volume in millilitres', volume, { low: 50, high: 100_000 }, 'volume') ??
    refusedOutside('fixing.bad-value', 'Rolls a litre', rollsPerLitre, { low: 1, high: 500 }, 'capacity') ??
    (endsAt === undefined
      ? null
      : refusedOutside('fixing.bad-value', 'Rolls by tests', endsAt, { low: 0, high: 100_000 }))
  if (refused) return refused
  const taken = used(fixed)
  if (!taken.ok) return taken
  const toSilver = rollsToSilver(
    asked.silverLimit ?? SILVER_LIMITS[kind].gramsPerLitre,
    asked.gramsPerM2 ?? SILVER_OF_FILM.gramsPerM2.usual,
    asked.share ?? SILVER_OF_FILM.share.usual,
  )
  if (!toSilver.ok) return toSilver
  const litres = volume / 1000
  const film = fixed.reduce((sum, { rolls }) => sum + rolls, 0)
  const left = (rolls: number) => Math.max(0, rolls)
  const by = {
    count: left(rollsPerLitre * litres - taken.value),
    // Silver comes from film by its area, whatever the family.
    silver: left(toSilver.value * litres - film),
    tests: endsAt === undefined ? null : left(endsAt - film),
  }
  const least = Math.min(by.count, by.silver, by.tests ?? Number.POSITIVE_INFINITY)
  const whole = (rolls: number) => Math.floor(rolls + 1e-9)
  const share = FIXING_FAMILIES['fast-using'].capacity
  return ok({
    ordinary: whole(least),
    fastUsing: whole(Math.min(by.count * share, by.silver, by.tests ?? Number.POSITIVE_INFINITY)),
    by,
    decides: least === by.count ? 'count' : least === by.silver ? 'silver' : 'tests',
  })
}

/** One kind of film through the first of two fixing baths, and what the sheet lets a litre of it carry. */
export interface ThroughFirstBath {
  readonly done: number
  readonly capacity: number
}

/** What to do with the pair of baths. */
export interface TwoBaths {
  /** Parts of the first bath's count that are used, summed over kinds of film: 1 and more is the end. */
  readonly used: number
  /** `rotate`: the first bath goes to waste, the second becomes the first, a fresh one the second. */
  readonly verdict: 'carry-on' | 'rotate'
}

/** Two-bath fixing by counts: 12 of 25 rolls and 40 of 67 sheets are 1.08 of the first bath. */
export function twoBaths(film: readonly ThroughFirstBath[]): Result<TwoBaths> {
  let sum = 0
  for (const { done, capacity } of film) {
    const refused =
      refusedOutside('fixing.bad-value', 'Film fixed', done, { low: 0, high: 10_000 }, 'done') ??
      refusedOutside('fixing.bad-value', 'What a bath carries', capacity, { low: 1, high: 10_000 }, 'capacity')
    if (refused) return refused
    sum += done / capacity
  }
  return ok({ used: sum, verdict: sum >= 1 - 1e-12 ? 'rotate' : 'carry-on' })
}
