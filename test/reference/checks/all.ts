import type { Check } from './check.js'
import { coefficients } from './coefficients.js'
import { curves } from './curves.js'
import { drifts } from './drift.js'
import { filmTimes } from './film-times.js'
import { practiceCases, practiceLimits } from './practice.js'
import { thermometers } from './thermometers.js'

/** Every group of checks; `reference.test.ts` runs exactly these, `index.test.ts` counts exactly these. */
export const groups: Readonly<Record<string, readonly Check[]>> = {
  'film times A1 and A2': filmTimes,
  coefficients,
  'drifting baths': drifts,
  'practice cases': practiceCases,
  'practice limits': practiceLimits,
  thermometers,
  'curves and quantiles': curves,
}
