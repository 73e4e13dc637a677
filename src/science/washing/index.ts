export {
  FACTORS as WASH_FACTORS,
  HALF_LIFE,
  HALF_LIVES,
  RESIDUE_LIMIT,
  WASH_FLOORS,
  WASHING_LIMITS,
  type WashFactor,
  type WashFloor,
  type WashScheme,
  type WashStep,
} from './definition.js'
export { afterChanges, afterDiffusion, afterFlow, type FirstFill, firstFill } from './dilution.js'
export {
  estimateWash,
  type LeftBy as LeftByWash,
  type WashAsked,
  type WashEstimate,
  type WashVerdict,
} from './estimate.js'
export { type FixerFault, type FixerVerdict, fixerByClearing, fixerByLeft } from './fixer-verdict.js'
export type { FloorHeld } from './floor.js'
export { SPOT_TESTS, type SpotCaution, type SpotReading, type SpotTest, type WashDone } from './tests.js'
export { partAfterRinse, RINSES, type Rinse, WET_FILM, type WetFilm } from './wet-film.js'
