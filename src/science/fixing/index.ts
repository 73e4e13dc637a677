export { type ClearingVerdict, clearingVerdict, FINISHED_AT } from './clearing.js'
export { FIXING_FAMILIES, type FixingFamily } from './families.js'
export {
  areaOf,
  FILM_FORMATS,
  type FilmCount,
  type FilmFormat,
  type FilmPiece,
  FORMAT_FACTS,
  FRAMES_OF_A_ROLL,
  ROLL_AREA_CM2,
  rollsOf,
} from './formats.js'
export {
  type FilmFixed,
  type FixerLeft,
  fixerLeft,
  type ThroughFirstBath,
  type TwoBaths,
  twoBaths,
  UNKNOWN_CAPACITY,
  used as usedOfFixer,
} from './left.js'
export {
  type FixerKind,
  rollsToSilver,
  SILVER_LIMITS,
  SILVER_OF_FILM,
  type SilverInBath,
  silverAfter,
  silverOfARoll,
} from './silver.js'
export { type ClearingTest, type ClearingTrend, clearingTrend } from './trend.js'
