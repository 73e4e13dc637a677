import { aceticAcids } from './acetic.js'
import { acidsAndBases, mixingSafety } from './acids.js'
import { keepingTimes, replenished, stopBaths } from './baths.js'
import type { Check } from './check.js'
import { coefficients } from './coefficients.js'
import { contrasts, fitsOfAnother } from './contrasts.js'
import { controlStrips } from './control.js'
import { curves } from './curves.js'
import { densities } from './densities.js'
import { crossed, dilutions, percents } from './dilutions.js'
import { drifts } from './drift.js'
import { filmCases } from './film-cases.js'
import { filmTimes } from './film-times.js'
import { filmAreas, fixingBaths, silverAndWaste } from './fixers.js'
import { bathsByWeight, molarMasses, substitutions } from './formulas.js'
import { regressions } from './nist.js'
import { practiceCases, practiceLimits } from './practice.js'
import { quickList } from './quick-list.js'
import { solutionCases } from './solution-cases.js'
import { filmSpeeds } from './speeds.js'
import { standingBaths } from './standing.js'
import { computedStrips } from './strips.js'
import { tankPractice } from './tank-practice.js'
import { thermometers } from './thermometers.js'
import { washing } from './washes.js'
import { waterMixing, waterProperties, workingTemperatures } from './waters.js'
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
  'quick list': quickList,
  dilutions,
  'percent solutions': percents,
  'criss-cross': crossed,
  'acetic acid': aceticAcids,
  'mixing water': waterMixing,
  'water itself': waterProperties,
  'working temperatures': workingTemperatures,
  'molar masses': molarMasses,
  substitutions,
  'baths by weight': bathsByWeight,
  'film areas': filmAreas,
  'fixing baths': fixingBaths,
  'stop baths': stopBaths,
  'keeping times': keepingTimes,
  'replenished baths': replenished,
  washing,
  'silver and waste': silverAndWaste,
  'acids and bases': acidsAndBases,
  'safety in mixing': mixingSafety,
  'cases of solutions': solutionCases,
  'practice of tanks': tankPractice,
  'standing baths': standingBaths,
}
