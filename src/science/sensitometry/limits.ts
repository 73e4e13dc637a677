/** Ranges and defaults as data. Those without a source are assumptions of ours. */
export const SENSITOMETRY_LIMITS = {
  /** Densities that a densitometer can read. */
  density: { low: 0, high: 6 },
  /** log10 of lux-seconds, or of anything. */
  logExposure: { low: -12, high: 12 },
  steps: { fewest: 4, most: 64 },
  /** Steps are at least so far apart on log exposure. */
  closest: 0.01,
  /** Past this the toe of a curve may lie between two of them, which is said. */
  wideStep: 0.2,
  /** Standard error of one reading of a density: common practice 0.01. */
  readingError: 0.01,
  readingErrors: { low: 0.0005, high: 0.2 },
  /** Standard deviation of the average gradient from strip to strip, until measured: common practice 0.02. */
  stripScatter: 0.02,
  stripScatters: { low: 0, high: 0.5 },
  /**
   * How strongly a curve may bend: its third derivative, density per (log exposure)³. Chosen on toes a sixth of a
   * log unit wide: there the smoothing moves a speed by less than a sixth of its standard error.
   */
  bend: 8,
  /** A reading so many standard errors of a difference below an earlier one is no noise. */
  fall: 5,
  contrast: { low: 0.02, high: 6 },
} as const

/** The published figures of film speed, with their marks. */
export const SPEED_CRITERION = {
  /** Density of the speed point m over base and fog; ISO 6:1993. */
  speedPoint: 0.1,
  /** Distance of the second point n on log exposure; ISO 6:1993. */
  distance: 1.3,
  /** Density that n must lie over m; ISO 6:1993. */
  rise: 0.8,
  /** By how much the rise may miss; remembered, not seen in the standard. */
  tolerance: 0.05,
  /** S = numerator / Hm, Hm in lux-seconds; ISO 6:1993. */
  numerator: 0.8,
} as const
