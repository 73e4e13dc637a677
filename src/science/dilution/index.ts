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
export { type FloorAnswer, type FloorAsked, floorFor, type TankForRolls, type WaysOut, waysOut } from './floor.js'
export {
  COMMON_MEASURES,
  DROPS_A_MILLILITRE,
  type Drops,
  dropsFor,
  type Graduate,
  type GraduateError,
  leastMeasurable,
  measuresFor,
  WORTH_SAYING,
} from './measuring.js'
export {
  type ColonReadings,
  chained,
  colonReadings,
  eachReading,
  type FromStocks,
  type IntoReadings,
  intoOrUpTo,
  mix,
  mostFrom,
  mostFromStocks,
  type RatioReading,
  strengthOf,
} from './parts.js'
export {
  type ByWeight,
  blendOf,
  type CrissCross,
  crissCross,
  dryFor,
  solutionHolding,
  type WeighedOut,
  weighedFor,
  weightInVolume,
  weightPercent,
} from './percent.js'
export { type ConcentrateAndStock, concentrateAndStock } from './stock.js'
