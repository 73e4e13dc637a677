import type { JobState } from '../follow/definition.js'
import type { Job, TankPlan } from '../plan/definition.js'
import type { Scale } from './scales.js'

/** One tank's line in the score. */
export interface StaveInput {
  /** As it is planned, or as the run has become. */
  readonly plan: TankPlan
  /** For a run: the plan it began with; its rate is drawn dashed over what became of it. */
  readonly began: TankPlan | null
  /** Where each job stands, by its id; jobs that are absent are drawn as plain plan. */
  readonly states: ReadonlyMap<string, JobState>
  /** Id of the job that comes next, drawn black; null on a plan. */
  readonly next: string | null
  /** Seconds from the tank's zero; null on a plan. */
  readonly now: number | null
  /** `A`; left of the line. */
  readonly label: string
  /** Under it, small: `3 reels`. */
  readonly note: string
  /** Inside the developer's band, the first one strong. */
  readonly band: readonly string[]
}

export interface ScoreLabels {
  readonly title: string
  readonly description: string
  readonly hands: string
  /** What block, tick and area are. */
  readonly legend: { readonly change: string; readonly turn: string; readonly area: string }
}

export interface ScorePictureInput {
  readonly staves: readonly StaveInput[]
  /** `page`: names at the left, hands and legend below. `strip`: one stave from edge to edge, as on a phone. */
  readonly form: 'page' | 'strip'
  /** Seconds of the run to show; the whole of it when absent. */
  readonly span?: { readonly from: number; readonly to: number }
  readonly size: { readonly width: number; readonly height: number }
  readonly labels: ScoreLabels
  /** No text is smaller. */
  readonly minTextSize: number
}

/** Where a stave lies. */
export interface StaveFrame {
  readonly left: number
  readonly right: number
  readonly top: number
  /** The line that bands stand on and jobs hang from. */
  readonly base: number
  readonly bottom: number
  /** Seconds of the tank to x. */
  readonly x: Scale
  /** Height of a rate of 1. */
  readonly unit: number
  /** Height of a bath that does not develop. */
  readonly low: number
  readonly size: number
}

/** Jobs that are a bath change are wide blocks, others are ticks. */
export const isBlock = ({ kind }: Job): boolean => kind === 'change' || kind === 'drain'
