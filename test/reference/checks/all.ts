import type { Check } from './check.js'
import { coefficients } from './coefficients.js'
import { contrasts, fitsOfAnother } from './contrasts.js'
import { controlStrips } from './control.js'
import { curves } from './curves.js'
import { densities } from './densities.js'
import { drifts } from './drift.js'
import { filmCases } from './film-cases.js'
import { filmTimes } from './film-times.js'
import { regressions } from './nist.js'
import { practiceCases, practiceLimits } from './practice.js'
import { filmSpeeds } from './speeds.js'
import { computedStrips } from './strips.js'
import { thermometers } from './thermometers.js'
import { normalContrasts, zoneModels } from './zones.js'

/** Every group of checks; `reference.test.ts` runs exactly these, `index.test.ts` counts exactly these. */
export const groups: Readonly<Record<string, readonly Check[]>> = {
  'film times A1 and A2': filmTimes,
  coefficients,
  'drifting baths': drifts,
  'practice cases': practiceCases,
  'practice limits': practiceLimits,
  thermometers,
  'curves and quantiles': curves,
  densities,
  'film speeds': filmSpeeds,
  'computed strips': computedStrips,
  'zones and papers': zoneModels,
  'normal contrasts': normalContrasts,
  'contrast in time': contrasts,
  'contrast laws by scipy': fitsOfAnother,
  'control strips': controlStrips,
  'film without a lab': filmCases,
  regressions,
}
