/** One step of a developed strip: how much light it had, and the density read. */
export interface StripStep {
  /** log10 of the exposure; in lux-seconds when {@link StripInput.exposure} says so. */
  readonly logExposure: number
  readonly density: number
}

/** What a person states about a strip; `defineStrip` checks it and fills the rest. */
export interface StripInput {
  /** From the least light to the most. */
  readonly steps: readonly StripStep[]
  /** Density of the clear film and how many readings it is the mean of. Default: the lightest step of the curve. */
  readonly baseFog?: { readonly density: number; readonly readings?: number }
  /** Whether the exposures are lux-seconds or only right among each other. Default `relative`. */
  readonly exposure?: 'lux-seconds' | 'relative'
  /** Standard error of one reading. Default {@link SENSITOMETRY_LIMITS}.readingError, an assumption. */
  readonly readingError?: number
  /** Standard deviation of contrast from strip to strip. Default {@link SENSITOMETRY_LIMITS}.stripScatter. */
  readonly stripScatter?: number
}

/** A checked strip; only `defineStrip` makes one. */
export interface Strip {
  readonly steps: readonly StripStep[]
  readonly baseFog: { readonly density: number; readonly readings: number } | null
  readonly exposure: 'lux-seconds' | 'relative'
  readonly readingError: number
  readonly stripScatter: number
}

/** Density against log exposure: what every measure is read off. It never falls. */
export interface CharacteristicCurve {
  /** Density at a log exposure; past the ends the end tangent goes on, which measures must not use. */
  readonly at: (logExposure: number) => number
  readonly slopeAt: (logExposure: number) => number
  /** Density of film that had no light. */
  readonly baseFog: number
  /** Log exposures of the first and last step. */
  readonly from: number
  readonly to: number
}

/** A figure read off a curve, with what reading errors and strip-to-strip scatter leave open. */
export interface Measured {
  readonly value: number
  /** 95 % interval for the film in this development, readings and scatter together; null where a reading's error decides whether the measure exists. */
  readonly low: number | null
  readonly high: number | null
  /** Standard errors by source, in the unit of the value (of log10 H for a speed). */
  readonly byReadings: number | null
  readonly byStrips: number | null
}

/** Where a figure of this folder comes from. */
export type FigureMark = 'source' | 'practice' | 'memory' | 'derived'
