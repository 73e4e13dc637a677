import type { CheckMethod } from './definition.js'

/** Limits of thermometers as data. All are assumptions of ours, save the boiling and freezing of water. */
export const THERMOMETER_LIMITS = {
  /** Past this a thermometer is broken or misread, °C. */
  error: 5,
  /** Give or take of a reading that no check speaks for, °C. */
  unchecked: 0.5,
  /** Give or take of a check by its method, °C. */
  band: { entered: 0.3, comparison: 0.2, ice: 0.1, boiling: 0.2 } satisfies Record<CheckMethod, number>,
  /** The band grows by so much per °C from the nearest check: scales are not evenly divided. */
  growth: { between: 0.01, beyond: 0.02 },
  /** A lone check in ice or boiling water counts this near to its mark, °C. */
  nearMark: 5,
  /** Checks whose readings lie this near count as one, by their mean, °C. */
  sameReading: 0.05,
  /** A newer check takes the place of older ones whose readings lie this near, °C. */
  replaces: 3,
  /** Shortest scale, °C. */
  shortestScale: 5,
  scale: { low: -50, high: 200 },
  altitude: { low: -500, high: 9000 },
  pressure: { low: 300, high: 1100 },
} as const
