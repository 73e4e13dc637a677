import { KEEPING, type KeepingKind } from '../../../../science/index.js'
import type { OnShelf, ProductRecord } from '../../../shared/api/index.js'

export type Left = NonNullable<OnShelf['left']>
export type LimitView = Left['limits'][number]

const DAY = 86_400_000
/** Rolls after which an untested fixer is to be tested before the next batch: an assumption. */
const TEST_AFTER = 5
/** Days before its end at which the end is worth saying. */
const SOON = 7
/** Rolls left at which a fresh mix is worth saying. */
const FEW = 2

/** What is to be done with one bottle. */
export type Next =
  | { readonly act: 'discard'; readonly by: LimitView['by'] }
  | { readonly act: 'top-up'; readonly due: number }
  | { readonly act: 'fresh'; readonly rolls: number }
  | { readonly act: 'test'; readonly rolls: number }
  | { readonly act: 'decant'; readonly days: number }
  | { readonly act: 'soon'; readonly at: number }
  | { readonly act: 'nothing' }

/** The limit that ends it first, and the next one after it by the part that is left. */
export function firstTwo(left: Left): { first: LimitView | null; next: LimitView | null } {
  const met = left.limits.find(({ part }) => part <= 0)
  const first = met ?? left.limits.find(({ by }) => by === left.decides) ?? null
  const others = left.limits.filter((limit) => limit !== first)
  const next = others.reduce<LimitView | null>((least, one) => (least && least.part <= one.part ? least : one), null)
  return { first, next }
}

/** Whether air stands over it. */
export const isHalfFull = ({ statement, held }: OnShelf): boolean =>
  statement.kind === 'bottle' && statement.shape === 'stoppered' && held < 0.9 * statement.holds_ml

/** What a bottle asks for first. */
export function nextFor(one: OnShelf, product: ProductRecord | undefined, now: number): Next {
  const { left } = one
  if (left === null) return { act: 'nothing' }
  const { first } = firstTwo(left)
  // Too little to fill a tank is not spent: it is mixed afresh, or poured into a smaller tank.
  if (first !== null && left.state === 'finished')
    return first.by === 'volume' ? { act: 'fresh', rolls: 0 } : { act: 'discard', by: first.by }
  if (left.due_ml !== null && left.due_ml >= 1) return { act: 'top-up', due: left.due_ml }
  const rolls = left.whole?.ordinary ?? null
  const again = product !== undefined && product.use !== 'single-use'
  if (again && rolls !== null && rolls <= FEW) return { act: 'fresh', rolls }
  if (product?.role === 'fixer' && again && left.clearing === null && left.met >= TEST_AFTER)
    return { act: 'test', rolls: left.met }
  const decanted = first?.by === 'age' && isHalfFull(one) ? decantedDays(one, first, product) : null
  if (decanted !== null && first?.days != null && decanted > 1.2 * first.days) return { act: 'decant', days: decanted }
  const end = left.ends === null ? null : Date.parse(left.ends)
  if (end !== null && end - now < SOON * DAY) return { act: 'soon', at: end }
  return { act: 'nothing' }
}

/** Days that the same solution would keep in full bottles. */
function decantedDays(one: OnShelf, age: LimitView, product: ProductRecord | undefined): number | null {
  const kind = keepingKind(one)
  const full = product?.keeps.full ?? (kind === null ? null : KEEPING[kind].days.full)
  return full === null ? null : age.part * full
}

function keepingKind({ lot }: OnShelf): KeepingKind | null {
  if (lot === null) return null
  if (lot.role === 'developer') return lot.parts === null ? 'stock-developer' : 'working-developer'
  return lot.role === 'stop' || lot.role === 'fixer' ? lot.role : null
}

/** The sentence above the shelf: what matters most of all that stands here. */
export type Lead =
  | { readonly of: 'short'; readonly left: number; readonly wait: number }
  | { readonly of: 'finished'; readonly one: OnShelf; readonly more: number; readonly by: LimitView['by'] }
  | { readonly of: 'first'; readonly one: OnShelf; readonly by: LimitView['by']; readonly at: number }
  | { readonly of: 'calm'; readonly count: number }

/** What to say first: film that waits for a fixer, then what is finished, then what ends next. */
export function leadOf(bottles: readonly OnShelf[], waiting: number): Lead | null {
  const baths = bottles.filter(({ lot, held }) => lot !== null && held > 0)
  if (baths.length === 0) return null
  const short = shortage(baths, waiting)
  if (short !== null) return short
  const finished = baths.filter(({ left }) => left?.state === 'finished')
  const [one] = finished
  if (one?.left) return { of: 'finished', one, more: finished.length - 1, by: firstTwo(one.left).first?.by ?? 'age' }
  const ending = baths.flatMap((bath) =>
    bath.left?.ends && bath.left.decides ? [{ one: bath, by: bath.left.decides, at: Date.parse(bath.left.ends) }] : [],
  )
  const first = ending.reduce<(typeof ending)[number] | null>(
    (least, end) => (least && least.at <= end.at ? least : end),
    null,
  )
  return first === null ? { of: 'calm', count: baths.length } : { of: 'first', ...first }
}

/** Fixers on the shelf that together take fewer rolls than wait. The second of two baths takes what the first took. */
function shortage(baths: readonly OnShelf[], waiting: number): Lead | null {
  const fixers = baths.filter(({ lot, station, left }) => lot?.role === 'fixer' && station !== 'second' && left?.whole)
  if (fixers.length === 0) return null
  const left = fixers.reduce((sum, fixer) => sum + (fixer.left?.whole?.ordinary ?? 0), 0)
  return waiting > left ? { of: 'short', left, wait: waiting } : null
}
