export { blended, fromTheTaps, type TapMixture, type TapsAsked } from './blending.js'
export { type ColdFactor, coldFixing, coldWashing } from './cold.js'
export {
  constantFrom,
  GUESS_SPREAD,
  guessConstant,
  HEAT_PASSED,
  READING_ERROR,
  type StandingReading,
} from './constant.js'
export {
  LIQUID_WATER,
  type Poured,
  SIMPLE_RULE,
  type Sourced,
  type Surroundings,
  THERMAL_LIMITS,
  type TimeConstant,
  type VesselMaterial,
  type Warmth,
} from './definition.js'
export { HEAT_OF_FUSION, HEAT_OF_MATERIAL, HEAT_OF_WATER, worthInWater } from './heat.js'
export { type Ice, iceFor, type Pour, pourAt } from './pouring.js'
export { judgeTemperatures, SPREAD, type SpreadBath, type SpreadPair, type SpreadVerdict } from './spread.js'
export {
  drawnToward,
  meanOver,
  READ_AGAIN,
  reachesAt,
  readAgainAfter,
  type Standing,
  standsAt,
  startForMean,
} from './standing.js'
export { type HeatBalance, heatBalance, type Water, waterAt } from './water.js'
