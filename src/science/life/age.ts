import { failed, ok, problem, type Result } from '../../kernel/index.js'
import type { Origin } from '../development/index.js'
import { refusedOutside } from '../range.js'

/** How a solution stood. */
export type KeptIn = 'full' | 'half-full' | 'tray' | 'tank'
export type Keeps = 'stock-developer' | 'working-developer' | 'stop' | 'fixer' | 'opened-concentrate'

/** Days that a solution keeps in each state; null where nothing is said. */
export type KeepingTimes = Readonly<Record<KeptIn, number | null>>

/**
 * Days by common practice (a working fixer's two months: textbook, 3rd ed. 2008, p. 108). Defaults to be replaced by the
 * label. A session counts as a quarter of a day.
 */
export const KEEPING: Readonly<Record<Keeps, { readonly days: KeepingTimes; readonly origin: Origin }>> = {
  'stock-developer': { days: { full: 182, 'half-full': 61, tray: 1, tank: 30 }, origin: 'practice' },
  'working-developer': { days: { full: 1, 'half-full': null, tray: 0.25, tank: null }, origin: 'practice' },
  stop: { days: { full: 30, 'half-full': null, tray: 3, tank: 30 }, origin: 'practice' },
  fixer: { days: { full: 61, 'half-full': 61, tray: 7, tank: 30 }, origin: 'practice' },
  'opened-concentrate': { days: { full: 182, 'half-full': null, tray: null, tank: null }, origin: 'practice' },
}

/** A stretch of a solution's life. */
export interface Stretch {
  readonly state: KeptIn
  readonly days: number
}

/** How old a solution is. */
export interface Age {
  /** 0 fresh, 1 at the end of its life. */
  readonly used: number
  /** Days left in the state of the last stretch; null when nothing is known of that state. */
  readonly daysLeft: number | null
  readonly verdict: 'keeps' | 'past'
}

/**
 * Age as a sum of fractions: each stretch uses up its days over the life in that state, and at 1 the solution is past.
 * Refused: a state of which nothing is known, days outside 0 to 10 000, no stretch at all.
 */
export function ageOf(stretches: readonly Stretch[], lives: KeepingTimes): Result<Age> {
  const last = stretches.at(-1)
  if (last === undefined || stretches.length > 1000)
    return failed(
      problem('life.bad-value', { what: 'The number of stretches', value: stretches.length, low: 1, high: 1000 }),
    )
  let used = 0
  for (const { state, days } of stretches) {
    const wrong = refusedOutside('life.bad-value', 'Days', days, { low: 0, high: 10_000 }, 'days')
    if (wrong) return wrong
    const life = lifeIn(state, lives)
    if (!life.ok) return life
    used += days / life.value
  }
  const life = lives[last.state]
  return ok({
    used,
    daysLeft: life === null ? null : Math.max(0, (1 - used) * life),
    verdict: used >= 1 - 1e-12 ? 'past' : 'keeps',
  })
}

function lifeIn(state: KeptIn, lives: KeepingTimes): Result<number> {
  const life = lives[state]
  if (life === null || life === undefined) return failed(problem('life.state-unknown', { state }, 'state'))
  return refusedOutside('life.bad-value', 'A life in days', life, { low: 0.01, high: 10_000 }, 'life') ?? ok(life)
}
