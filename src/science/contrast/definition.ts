import type { Seconds } from '../../kernel/index.js'

/** Contrast of one strip developed for a time, by any one measure (an average gradient, a contrast index, gamma). */
export interface ContrastPoint {
  readonly time: Seconds
  readonly contrast: number
  /** Standard error of the contrast by reading; strip scatter is added to it. Default 0. */
  readonly standardError?: number
}

/** G(t) = most · (1 − exp(−rate · (t − start))), zero until start. */
export interface ContrastLaw {
  /** G∞: what endless development would give. */
  readonly most: number
  /** k, per second. */
  readonly rate: number
  /** t0, s: when an image begins to show. */
  readonly start: number
}

/** A law with what it was found from. */
export interface FittedContrast {
  readonly law: ContrastLaw
  readonly points: readonly ContrastPoint[]
  /**
   * `two-strips`: closed form from times t and 2t; `assumed-start`: two times, least squares; `least-squares`: three
   * or more. All but the last assume that the image begins at once, which is said.
   */
  readonly method: 'two-strips' | 'assumed-start' | 'least-squares'
  readonly startOrigin: 'assumption' | 'measured'
  /** Found minus measured contrast, in the order of `points`. */
  readonly misfits: readonly number[]
  /** Standard deviation from strip to strip that was counted, and whether it was the person's own. */
  readonly scatter: { readonly value: number; readonly origin: 'assumption' | 'measured' }
}

/** The time for a wanted contrast. */
export interface OwnTime {
  readonly time: Seconds
  /** 95 % interval; an end that the strips leave open is null. */
  readonly low: Seconds | null
  readonly high: Seconds | null
  /** Whether the contrast lies outside the strips', by less than one N. */
  readonly beyondStrips: boolean
}
