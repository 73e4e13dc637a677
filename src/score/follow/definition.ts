import type { Celsius, Instant, Problem, Seconds } from '../../kernel/index.js'
import type { ClockDoubt } from '../events/clocks.js'
import type { MishapKind, StatedTo } from '../events/definition.js'
import type { Job, TankPlan } from '../plan/definition.js'

/** What a reading would do, told before it is written down. */
export type Verdict =
  | { readonly verdict: 'fine' }
  /** More than 1 °C from where the bath should be: read a second time. */
  | { readonly verdict: 'read-again' }
  /** It would move the pour-out by more than a tenth of the planned time: ask. */
  | { readonly verdict: 'confirm-shift' }
  /** The developer cannot be followed at this temperature. */
  | { readonly verdict: 'outside'; readonly problem: Problem }

export type Screened = Verdict & {
  readonly temperature: Celsius
  /** Where the model has the bath at that moment. */
  readonly expected: Celsius
  /** Seconds by which the pour-out would move; below 0 is earlier. */
  readonly shift: number
}

/** A reading of a run and whether it counts. */
export interface ReadingTold extends Omit<Screened, 'verdict'> {
  readonly id: string
  readonly at: Instant
  readonly counts: boolean
  readonly verdict: Verdict['verdict'] | 'after-pour-out'
  /** How well its moment is known; left out where it was pressed. */
  readonly statedTo?: StatedTo
}

export type JobState = 'done' | 'now' | 'waiting' | 'to-come' | 'missed'

export interface FollowedJob {
  readonly job: Job
  readonly state: JobState
  readonly at: Instant
  readonly until: Instant
}

/** The one confirmation that the tank waits for next. */
export interface Awaited {
  readonly kind: 'poured-in' | 'poured-out' | 'step-done'
  readonly index: number
  /** When it is due; in the past when it is late. */
  readonly due: Instant
}

export interface Developed {
  readonly index: number
  /** Equivalent seconds at the reference temperature done by now. */
  readonly done: Seconds
  readonly target: Seconds
  /** Part of the planned development, 1 when done; with what the thermometer's error makes of it. */
  readonly fraction: number
  readonly low: number
  readonly high: number
  /** The band holds what the times of a run from paper leave open, too. */
  readonly byTheClock: boolean
  /** The bath's temperature by now. */
  readonly temperature: Celsius
}

/** What the last reading that counts did to the pour-out, when that is a second or more. */
export interface Changed {
  readonly code: 'pour-out-earlier' | 'pour-out-later'
  readonly by: Seconds
  readonly from: Instant
  readonly to: Instant
  readonly temperature: Celsius
  readonly expected: Celsius
}

/** How the run departed from its plan; for the record. */
export type Deviation =
  | {
      readonly code: 'poured-out-late' | 'poured-out-early'
      readonly name: string
      readonly by: Seconds
      /** Development gained by it, part of the plan; null where there is no dose. */
      readonly gained: number | null
    }
  | { readonly code: 'poured-in-late'; readonly name: string; readonly by: Seconds }
  | { readonly code: 'skipped'; readonly name: string; readonly reason: string }
  /** The film needed longer to clear than its fixer is good for. */
  | { readonly code: 'fixer-finished'; readonly name: string; readonly needed: Seconds; readonly most: Seconds }
  | { readonly code: 'mishap'; readonly mishap: MishapKind; readonly at: Instant }
  | { readonly code: 'reading-not-counted'; readonly temperature: Celsius; readonly expected: Celsius }
  /** Of a run that is over: steps of which nobody wrote down when they were done. */
  | { readonly code: 'not-written'; readonly names: readonly string[] }
  /** Nobody wrote down when the developing bath began or ended: its length is the plan's. */
  | { readonly code: 'development-assumed'; readonly name: string; readonly side: 'in' | 'out' | 'both' }
  | { readonly code: 'pressed-twice'; readonly name: string; readonly times: number }
  | { readonly code: 'taken-back'; readonly times: number }
  | { readonly code: 'abandoned'; readonly reason: string }

export type Phase = 'not-started' | 'running' | 'done' | 'abandoned'

export interface TankFollowing {
  readonly tank: string
  readonly phase: Phase
  /** The instant of the tank's zero, the beginning of its first pour. */
  readonly zero: Instant
  /** What the plan has become; seconds from `zero`. */
  readonly plan: TankPlan
  /** The step under way: a bath until it is empty, an act until it is done. */
  readonly index: number | null
  /** Of the bath under way, to the beginning of its draining; below 0 when overdue. */
  readonly timeLeft: number | null
  readonly awaited: Awaited | null
  readonly jobs: readonly FollowedJob[]
  readonly next: FollowedJob | null
  readonly pourOut: { readonly at: Instant; readonly planned: Instant } | null
  readonly developed: Developed | null
  readonly readings: readonly ReadingTold[]
  /** Steps whose moments are known to the minute, by their places in the list. */
  readonly toTheMinute: { readonly in: readonly number[]; readonly out: readonly number[] }
  readonly changed: Changed | null
  readonly deviations: readonly Deviation[]
}

/** What to do next. There is no pause: chemistry has none. */
export interface Following {
  /** Empty while the clock is in doubt: nothing is guessed. */
  readonly tanks: readonly TankFollowing[]
  readonly doubts: readonly ClockDoubt[]
  /** The soonest of the tanks' next jobs. */
  readonly next: { readonly tank: string; readonly job: FollowedJob } | null
}
