import type { Instant, UnitSystem } from '../../kernel/index.js'
import type { Following, RunState, Score } from '../../score/index.js'
import type { PaperName } from '../setting/page.js'

/** What the papers of a run have in common. */
interface RunPaper {
  /** What the run is called. */
  readonly title: string
  /** The plan the run begins with. */
  readonly score: Score
  /** What is on the reels, by the name of the tank; a tank that is absent is printed without. */
  readonly loads: Readonly<Record<string, string>>
  readonly units: UnitSystem
  readonly paper: PaperName
  /** The day of printing, as the bench writes a day. */
  readonly today: string
  /** Stands in the file as its date: the same paper for the same instant is the same file. */
  readonly printedAt: Instant
}

/** What a bench sheet is printed from. */
export interface BenchSheetInput extends RunPaper {
  /** What the person wrote beside the plan; empty for nothing. */
  readonly note: string
}

/** What the record of a run is printed from. */
export interface RunRecordInput extends RunPaper {
  readonly state: RunState
  /** The run followed to its end (or to now, while it goes on). Refused while its clock is in doubt. */
  readonly following: Following
  /** Time zone of the bench, as `Europe/Vienna`; an unknown one is read as UTC. */
  readonly zone: string
  /** The verdict on the negatives in words; null until they have been looked at. */
  readonly verdict: string | null
  /** Notes written after the run; those written during it are in `state`. */
  readonly note: string
}
