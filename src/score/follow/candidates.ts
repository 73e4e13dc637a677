import type { Instant } from '../../kernel/index.js'
import type { ClockDoubt } from '../events/clocks.js'
import type { EventOf, RunEvent } from '../events/definition.js'
import { fold } from '../events/fold.js'
import { type ClockReading, nowOf, settledAs } from '../events/now.js'
import type { Score } from '../plan/definition.js'
import type { Following } from './definition.js'
import { follow } from './follow.js'

/** Where the run would stand by one answer to a clock in doubt. */
export interface Candidate {
  readonly now: Instant
  readonly following: Following
}

/** Both answers to a doubt, worked out, so that the person at the sink can tell which one is true. */
export function candidatesOf(
  score: Score,
  events: readonly RunEvent[],
  doubt: ClockDoubt,
  clocks: ClockReading,
): Readonly<Record<EventOf<'clock-settled'>['choice'], Candidate | null>> {
  const by = (choice: EventOf<'clock-settled'>['choice']): Candidate | null => {
    const settled = settledAs(events, doubt, choice, clocks)
    const now = nowOf(settled, clocks)
    return now.kind === 'in-doubt' ? null : { now: now.at, following: follow(score, fold(score, settled), now.at) }
  }
  return { 'by-wall': by('by-wall'), continued: by('continued') }
}
