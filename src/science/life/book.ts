import { failed, type Millilitres, millilitres, ok, problem, type Result } from '../../kernel/index.js'
import { refusedOutside } from '../range.js'

/** One entry in the book of a bath. */
export interface BookEntry {
  readonly added?: Millilitres
  readonly discarded?: Millilitres
  /** Gone with wet film and tank. */
  readonly carriedOut?: Millilitres
}

/** What the book says: what should be in the tank, and the sums of its columns. */
export interface BookBalance {
  readonly volume: Millilitres
  readonly added: Millilitres
  readonly discarded: Millilitres
  readonly carriedOut: Millilitres
}

/** Carried out with a roll of wet film and its tank: assumed until the bench has measured it. */
export const CARRIED_OUT = { perRoll: millilitres(20), origin: 'assumption' } as const

const VOLUME = { low: 0, high: 1_000_000 }
/** Less than a book of volumes can tell. */
const NEGLIGIBLE = 1e-6

/**
 * Volumes as they were written down: start + added − discarded − carried out. A book that goes below empty, or past a
 * cubic metre, is refused with the entry at which it does.
 * 1000 mL, then 70 added, 50 discarded and 20 carried out: 1000 mL.
 */
export function balanceOf(start: Millilitres, entries: readonly BookEntry[]): Result<BookBalance> {
  const first = refusedOutside('life.bad-value', 'The start in millilitres', start, VOLUME, 'start')
  if (first) return first
  const total = { volume: start as number, added: 0, discarded: 0, carriedOut: 0 }
  for (const [index, { added = 0, discarded = 0, carriedOut = 0 }] of entries.entries()) {
    for (const value of [added, discarded, carriedOut]) {
      const wrong = refusedOutside('life.bad-value', 'A volume in the book, in millilitres,', value, VOLUME)
      if (wrong) return wrong
    }
    total.added += added
    total.discarded += discarded
    total.carriedOut += carriedOut
    total.volume += added - discarded - carriedOut
    if (total.volume < -NEGLIGIBLE || total.added > VOLUME.high)
      return failed(problem('life.book-does-not-balance', { entry: index + 1, volume: Math.round(total.volume) }))
  }
  return ok({
    volume: millilitres(Math.max(0, total.volume)),
    added: millilitres(total.added),
    discarded: millilitres(total.discarded),
    carriedOut: millilitres(total.carriedOut),
  })
}
