import type { LimitSet } from './definition.js'

/**
 * Published limits about the aim. `regulation`: 21 CFR 900.12(e)(1), for radiographs; its warning is remembered from
 * a quality manual. `small-lab`: common practice for black-and-white still film; the wider published figures are its
 * limits and the narrower its warnings.
 */
export const LIMIT_SETS = {
  regulation: {
    name: 'regulation',
    limits: {
      'base-fog': { lower: null, upper: 0.03, warning: null, mark: 'source' },
      'speed-step': { lower: -0.15, upper: 0.15, warning: 0.1, mark: 'source' },
      contrast: { lower: -0.15, upper: 0.15, warning: 0.1, mark: 'source' },
    },
  },
  'small-lab': {
    name: 'small-lab',
    limits: {
      'base-fog': { lower: null, upper: 0.03, warning: null, mark: 'practice' },
      'speed-step': { lower: -0.1, upper: 0.1, warning: 0.08, mark: 'practice' },
      contrast: { lower: -0.1, upper: 0.1, warning: 0.08, mark: 'practice' },
    },
  },
} as const satisfies Record<LimitSet['name'], LimitSet>

/** Ranges of this folder as data. */
export const CONTROL_RANGES = {
  value: { low: -1e6, high: 1e6 },
  density: { low: 0, high: 6 },
  values: { most: 2000 },
  /** Strips averaged for an operating level: five days are usual (FDA guidance). */
  settingUp: 5,
} as const
