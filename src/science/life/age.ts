import { failed, ok, problem, type Result } from '../../kernel/index.js'
import type { Origin } from '../development/index.js'
import { refusedOutside } from '../range.js'

/** How a solution stood: in a full or a half-full stoppered bottle, an open tray, a covered tank. */
export const FILL_STATES = ['full', 'half-full', 'tray', 'tank'] as const
/** How a solution stood, by its name. */
export type FillState = (typeof FILL_STATES)[number]
/** Kinds of solution that keep for different times. */
export const KEEPING_KINDS = ['stock-developer', 'working-developer', 'stop', 'fixer', 'opened-concentrate'] as const
/** A kind of solution by its name. */
export type KeepingKind = (typeof KEEPING_KINDS)[number]

/** Days that a solution keeps in each state; null where nothing is said. */
export type KeepingTimes = Readonly<Record<FillState, number | null>>

interface Keeping {
  readonly days: KeepingTimes
  readonly origin: Origin
  readonly source: string
}

const practice = (days: KeepingTimes, source = 'common practice'): Keeping => ({ days, origin: 'practice', source })

/**
 * Days by common practice: defaults, to be replaced by the label. Months are 30.4 days; a session in a tray is a quarter
 * of a day; an unused stop bath has no end.
 */
export const KEEPING: Readonly<Record<KeepingKind, Keeping>> = {
  'stock-developer': practice({ full: 182, 'half-full': 61, tray: 1, tank: 30 }),
  'working-developer': practice({ full: 1, 'half-full': null, tray: 0.25, tank: null }),
  stop: practice({ full: 30, 'half-full': null, tray: 3, tank: 30 }),
  fixer: practice(
    { full: 61, 'half-full': 61, tray: 7, tank: 30 },
    'two months in a bottle: textbook, 3rd ed. 2008, p. 108; the rest common practice',
  ),
  'opened-concentrate': practice({ full: 182, 'half-full': null, tray: null, tank: null }),
}

/** A stretch of a solution's life. */
export interface Stretch {
  readonly state: FillState
  readonly days: number
}

/** One stretch, with the part of the whole life that it used. */
export interface AgedStretch extends Stretch {
  readonly life: number
  readonly used: number
}

/** How old a solution is. */
export interface Age {
  /** 0 fresh, 1 at the end of its life. */
  readonly used: number
  /** Days left as it stands now: in the state of the last stretch. */
  readonly daysLeft: number
  readonly verdict: 'keeps' | 'past'
  readonly stretches: readonly AgedStretch[]
}

/** The last digit of a sum must not make a past solution young: ten tenths are one. */
const NEGLIGIBLE = 1e-9

/**
 * Age as a sum of fractions: each stretch uses its days over the life in that state, and at 1 the solution is past.
 * The last stretch is how it stands now; none of it yet is 0 days. 91 days of 182 full, then 30.5 of 61 half-full: 1.
 * Refused: a state of which nothing is known, days outside 0 to 10 000, no stretch at all.
 */
export function ageOf(stretches: readonly Stretch[], lives: KeepingTimes): Result<Age> {
  const aged: AgedStretch[] = []
  const count = refusedOutside('life.bad-value', 'The number of stretches', stretches.length, { low: 1, high: 1000 })
  if (count) return count
  for (const { state, days } of stretches) {
    const wrong = refusedOutside('life.bad-value', 'Days', days, { low: 0, high: 10_000 }, 'days')
    if (wrong) return wrong
    const life = lifeIn(state, lives)
    if (!life.ok) return life
    aged.push({ state, days, life: life.value, used: days / life.value })
  }
  const used = aged.reduce((sum, stretch) => sum + stretch.used, 0)
  const now = aged[aged.length - 1] as AgedStretch
  const past = used >= 1 - NEGLIGIBLE
  return ok({
    used,
    daysLeft: past ? 0 : (1 - used) * now.life,
    verdict: past ? 'past' : 'keeps',
    stretches: aged,
  })
}

function lifeIn(state: FillState, lives: KeepingTimes): Result<number> {
  const life = lives[state]
  if (life === null || life === undefined) return failed(problem('life.state-unknown', { state }, 'state'))
  return refusedOutside('life.bad-value', 'A life in days', life, { low: 0.01, high: 10_000 }, 'life') ?? ok(life)
}
