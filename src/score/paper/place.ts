import {
  type Instant,
  type Problem,
  problem,
  type TimeOfDay,
  type WallClocks,
  writeSpan,
  writeTimeOnClock,
} from '../../kernel/index.js'
import { HALF_A_MINUTE } from '../follow/stated.js'

/** Ours: what departs from the plan by no more than this is what happens at a sink, seconds; or this part of the gap. */
const USUAL = { late: 300, early: 60, part: 0.25 } as const
const DAY = 86_400

/** Where and when a sheet is read. */
export interface Place {
  readonly day: string
  readonly clocks: WallClocks
  readonly now: Instant
  /** Zero by the clock, where it is written: nothing of the run comes before it. */
  readonly zero?: Anchor | null
}

/** A moment that is known, with its second in the plan of the run. */
export interface Anchor {
  readonly at: Instant
  readonly planned: number
  readonly time: TimeOfDay
}

export const slackMs = ({ to }: TimeOfDay): number => (to === 'minute' ? HALF_A_MINUTE * 1000 : 0)

/** What a clock of the place shows, to the second. */
export const timeAt = (at: Instant, { clocks }: Pick<Place, 'clocks'>): TimeOfDay => ({
  second: Math.floor(clocks.shownAt(at) / 1000) % DAY,
  to: 'second',
})

export const expectedAt = (anchor: Anchor | null, planned: number): Instant | null =>
  anchor === null ? null : anchor.at + Math.round((planned - anchor.planned) * 1000)

/** The instant of a time of day: nearest to where it is expected, else on the sheet's day. */
export function instantOf(time: TimeOfDay, expected: Instant | null, { day, clocks }: Place): Instant {
  const shown = expected === null ? clocks.onDay(day, time.second) : clocks.nearest(time.second, expected)
  return shown + slackMs(time)
}

/** Null unless it lies ahead of now by more than its own slack. */
export function aheadOf(now: Instant, at: Instant, time: TimeOfDay, { day }: Place): Problem | null {
  return at - slackMs(time) > now ? problem('paper.ahead', { at: writeTimeOnClock(time), day }) : null
}

/** Null where a moment is about where the moment before it leads to expect it. */
export function oddAt(name: string, at: Instant, time: TimeOfDay, planned: number, anchor: Anchor): Problem | null {
  const by = (at - (expectedAt(anchor, planned) ?? at)) / 1000
  const slack = (slackMs(time) + slackMs(anchor.time)) / 1000
  const part = USUAL.part * (planned - anchor.planned)
  const details = { name, at: writeTimeOnClock(time), by: writeSpan(Math.abs(by) as never) }
  if (by > Math.max(USUAL.late, part) + slack) return problem('paper.late', details)
  return -by > Math.max(USUAL.early, part) + slack ? problem('paper.early', details) : null
}

/** Whether a moment was surely before another, both as well as they are known. */
export const surelyBefore = (at: Instant, time: TimeOfDay, other: Pick<Anchor, 'at' | 'time'>): boolean =>
  at + slackMs(time) < other.at - slackMs(other.time)
