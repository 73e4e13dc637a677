export {
  FACTORS as WASH_FACTORS,
  type FixerFinding,
  HALF_LIFE,
  HALF_LIVES,
  RESIDUE_LIMIT,
  WASH_FLOORS,
  WASHING_LIMITS,
  type WashFloor,
  type WashScheme,
  type WashStep,
} from './definition.js'
export { afterChanges, afterDiffusion, afterFlow, type FirstFill, firstFill } from './dilution.js'
export { estimateWash, type WashAsked, type WashEstimate, type WashVerdict } from './estimate.js'
export { SPOT_TESTS, type SpotCaution, type SpotTest } from './tests.js'
