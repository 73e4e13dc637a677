export {
  ACETIC_DENSITIES,
  ACETIC_MOLAR_MASS,
  type AceticAcid,
  type AcidByWeight,
  aceticAcid,
  dilutedAcetic,
  WATER_20,
} from './acetic.js'
export { DILUTION_LIMITS, type Mixture } from './definition.js'
export { type FloorAnswer, type FloorAsked, floorFor } from './floor.js'
export {
  DROPS_A_MILLILITRE,
  dropsFor,
  type Graduate,
  type GraduateError,
  measuresFor,
  WORTH_SAYING,
} from './measuring.js'
export {
  type ColonReadings,
  chained,
  colonReadings,
  type IntoReadings,
  intoOrUpTo,
  mix,
  mostFrom,
  strengthOf,
} from './parts.js'
export {
  type ByWeight,
  blendOf,
  type CrissCross,
  crissCross,
  dryFor,
  solutionHolding,
  weightPercent,
} from './percent.js'
export { type ConcentrateAndStock, concentrateAndStock } from './stock.js'
