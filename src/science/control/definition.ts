/** What is plotted of a control strip, as deviations from its aim. */
export type ControlQuantity = 'base-fog' | 'speed-step' | 'contrast' | 'densest'

/** Limits about the aim. A null lower limit means that falling is no fault: fog has an upper limit only. */
export interface ControlLimits {
  readonly lower: number | null
  readonly upper: number
  /** Act soon from here; null when the source gives none. */
  readonly warning: number | null
  readonly mark: 'source' | 'practice' | 'memory'
}

/** A named set of limits. */
export interface LimitSet {
  readonly name: 'regulation' | 'small-lab'
  readonly limits: Readonly<Partial<Record<ControlQuantity, ControlLimits>>>
}

/** What to do, as a code with its numbers; the words live in the catalogue. */
export type ControlVerdict =
  /** Inside, scattered: leave the process alone. */
  | { readonly code: 'leave-alone'; readonly deviation: number }
  /** Inside the limits but past the warning: look before the next important film. */
  | { readonly code: 'watch'; readonly deviation: number; readonly warning: number }
  /** Five moves one way, inside the limits: find the cause before it goes out. */
  | { readonly code: 'trend'; readonly deviation: number; readonly moves: number; readonly rising: boolean }
  /** Outside once: read again, check the process, run a second strip. */
  | { readonly code: 'second-strip'; readonly deviation: number; readonly limit: number }
  /** Outside, and a second strip agrees: no film until it is put right. */
  | { readonly code: 'stop'; readonly deviation: number; readonly limit: number; readonly second: number }
  /** The second strip does not agree: the first was at fault. */
  | { readonly code: 'first-strip-wrong'; readonly deviation: number; readonly second: number }
