import { type Millilitres, ok, type Result } from '../../kernel/index.js'
import { refusedOutside } from '../range.js'
import type { ClearingVerdict } from './clearing.js'

/** One kind of film through the first of two fixing baths, and what the sheet lets the bath carry of it alone. */
export interface ThroughFirstBath {
  /** Rolls or sheets, 0 to 10 000. */
  readonly done: number
  /** The same unit, 1 to 10 000. */
  readonly capacity: number
}

/** What to do with the pair of baths. */
export interface TwoBaths {
  /** Parts of the first bath's count that are used, summed over kinds of film: 1 and more is the end. */
  readonly used: number
  /** `rotate`: the first bath goes to the waste jug, the second becomes the first, a fresh one the second. */
  readonly verdict: 'carry-on' | 'rotate'
  /** What asks for it: the count, the first bath's clearing test, or both; empty while the pair carries on. */
  readonly because: readonly ('count' | 'clearing')[]
  /** How much of each kind alone the first bath still takes, in its own unit and order. */
  readonly left: readonly number[]
}

/** The last digit of a sum must not save a bath: 0.1 + 0.2 + 0.7 is one. */
const NEGLIGIBLE = 1e-9

/**
 * Two-bath fixing: film clears in the first bath and stays as long again in the second. When the count of the first is
 * used, or its clearing time has doubled, the baths move up (NAVEDTRA 14209, p. 249). 12 of 25 rolls and 40 of 67 sheets
 * are 1.08: rotate.
 */
export function twoBaths(
  film: readonly ThroughFirstBath[],
  clearing?: Pick<ClearingVerdict, 'verdict'>,
): Result<TwoBaths> {
  for (const { done, capacity } of film) {
    const refused =
      refusedOutside('fixing.bad-value', 'Film fixed', done, { low: 0, high: 10_000 }, 'done') ??
      refusedOutside('fixing.bad-value', 'What a bath carries', capacity, { low: 1, high: 10_000 }, 'capacity')
    if (refused) return refused
  }
  const used = film.reduce((sum, { done, capacity }) => sum + done / capacity, 0)
  const because: ('count' | 'clearing')[] = []
  if (used >= 1 - NEGLIGIBLE) because.push('count')
  if (clearing?.verdict === 'finished') because.push('clearing')
  const free = because.length > 0 ? 0 : 1 - used
  return ok({
    used,
    verdict: because.length > 0 ? 'rotate' : 'carry-on',
    because,
    left: film.map(({ capacity }) => free * capacity),
  })
}

/**
 * Part of a roll that each roll takes of the second bath, 0 to 1: the silver that it carries over in the liquid of the
 * first. Over the life of a first bath its silver rises from none to that of `rollsPerLitre` (1 to 500) rolls; half of
 * it, in `carriedOut` millilitres a roll (0 to 500), comes along. 20 rolls a litre and 20 mL: 0.2. An estimate by
 * balance; a clearing test decides.
 */
export function secondBathShare(rollsPerLitre: number, carriedOut: Millilitres): Result<number> {
  const refused =
    refusedOutside('fixing.bad-value', 'Rolls a litre', rollsPerLitre, { low: 1, high: 500 }, 'rollsPerLitre') ??
    refusedOutside('fixing.bad-value', 'Millilitres carried over', carriedOut, { low: 0, high: 500 }, 'carriedOut')
  return refused ?? ok(Math.min(1, (rollsPerLitre / 2) * (carriedOut / 1000)))
}
