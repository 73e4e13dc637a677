import { ok, type Result } from '../../kernel/index.js'
import { type FixerVerdict, fixerByLeft } from '../../science/index.js'
import type { ShelfWash, ShelfWashAnswer } from '../../wire/index.js'
import type { Writer } from '../../words/index.js'
import type { Context } from '../context.js'
import type { Rooms } from '../store.js'
import { washAfter } from '../waste/wash.js'
import { clearingNow } from './left.js'
import { type Bath, limitsOf } from './limits.js'
import { nameOf, standingContainer } from './posting.js'
import { bathIn, knownOf } from './views.js'

/**
 * A wash after the fixer in a bottle, judged by what the ledger knows of that: its tests, its count and its silver, this
 * film booked or not. No verdict after a finished bath, after none that is known, and after an empty bottle.
 */
export async function washFromBottle(
  context: Context,
  rooms: Rooms,
  { fixer_id, wash }: ShelfWash,
  writer: Writer,
): Promise<Result<ShelfWashAnswer>> {
  const found = fixer_id === null ? ok(null) : await standingContainer(rooms, fixer_id, 'fixer_id')
  if (!found.ok) return found
  const standing = found.value
  const known = standing === null ? null : await knownOf(rooms, [standing.container])
  const bath = standing === null || known === null ? null : bathIn(known, standing.container)
  const verdict = fixerVerdict(bath, context.clock.now())
  const answer = washAfter(wash, verdict, writer)
  if (!answer.ok) return answer
  const fixer =
    standing === null
      ? null
      : { id: standing.container.id, name: nameOf(standing), code: standing.lot?.code ?? null, state: verdict.state }
  return ok({ fixer, ...answer.value })
}

/** A clearing test speaks first; then what the bath has met. */
function fixerVerdict(bath: Bath | null, now: number): FixerVerdict {
  if (bath === null || bath.product.role !== 'fixer') return { state: 'unknown' }
  const clearing = clearingNow(bath)
  if (clearing?.finished) return { state: 'finished', because: 'clearing-doubled' }
  const { fixer } = limitsOf(bath, now)
  if (fixer === null) return clearing === null ? { state: 'unknown' } : { state: 'usable', by: 'clearing-test' }
  return fixerByLeft(fixer)
}
