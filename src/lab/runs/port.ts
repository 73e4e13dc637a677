import type { Instant } from '../../kernel/index.js'
import type { RunEvent } from '../../score/index.js'
import type { JudgeRun, RunPlan } from '../../wire/index.js'

export type RunStanding = 'planned' | 'running' | 'finished' | 'abandoned'

/** How far a run has come, by its events: kept beside them so that a list of runs need not fold every one. */
export interface Progress {
  readonly state: RunStanding
  readonly startedAt: Instant | null
  readonly endedAt: Instant | null
}

/** A run: its plan never changes; what happened stands in its events. */
export interface RunRecord extends Progress {
  readonly id: string
  readonly plannedAt: Instant
  readonly plannedBy: string
  readonly plan: RunPlan
  /** Number of its newest event; 0 when nothing has happened. */
  readonly lastSeq: number
}

/** An event as it was received. */
export interface Received {
  readonly seq: number
  readonly receivedAt: Instant
  readonly receivedBy: string
  readonly event: RunEvent
}

/** What was said of the negatives of one tank. The newest of a tank stands. */
export interface Verdict extends JudgeRun {
  readonly id: string
  readonly runId: string
  readonly at: Instant
  readonly by: string
}

export interface RunsWanted {
  /** Capitals do not matter. */
  readonly film: string | null
  readonly ended: boolean | null
  readonly practice: boolean | null
  /** Only runs that stand after this one in the list. */
  readonly before: string | null
  readonly most: number
}

export interface RunsPort {
  add(run: RunRecord): Promise<void>
  run(id: string): Promise<RunRecord | null>
  /** The run, with its row held until the transaction ends: nobody else adds an event meanwhile. */
  hold(id: string): Promise<RunRecord | null>
  /** By when they began (those not begun: by when they were planned), newest first. */
  newest(wanted: RunsWanted): Promise<RunRecord[]>
  /** Events after a number, in the order in which they came in; all, or at most so many. */
  events(runId: string, after: number, most?: number): Promise<Received[]>
  /** One of these ids that an event of another run has; null when none is known there. */
  elsewhere(runId: string, eventIds: readonly string[]): Promise<string | null>
  /** Appends to a run that is held, and numbers what came without gaps. Ids that are known already are a bug here. */
  append(runId: string, received: readonly Omit<Received, 'seq'>[], progress: Progress): Promise<Received[]>
  /** On a run that is held. */
  addVerdict(verdict: Verdict): Promise<void>
  /** Verdicts on these runs, of each run in the order in which they were said. */
  verdicts(runIds: readonly string[]): Promise<Verdict[]>
}
