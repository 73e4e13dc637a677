export { type ClearingVerdict, clearingVerdict, FINISHED_AT } from './clearing.js'
export {
  capacityOf,
  FIXING_FAMILIES,
  FIXING_FAMILY_NAMES,
  type FilmFixed,
  type FixingFamily,
  takenOfCount,
} from './families.js'
export {
  areaOf,
  FILM_FORMATS,
  type FilmFormat,
  FORMAT_FACTS,
  FRAMES_135,
  FRAMES_OF_A_ROLL,
  frameAreaOf,
  ROLL_AREA_CM2,
} from './formats.js'
export { type FixerEnd, type FixerInUse, type FixerLeft, fixerLeft, UNKNOWN_CAPACITY } from './left.js'
export { type CountedBy, type CountedPiece, type FilmCount, type FilmPiece, fitting, rollsOf } from './rolls.js'
export {
  FIXER_KINDS,
  type FixerKind,
  rollsToSilver,
  SILVER_LIMITS,
  SILVER_OF_FILM,
  type SilverInBath,
  type SilverOfFilm,
  silverAfter,
  silverLimit,
  silverOfARoll,
} from './silver.js'
export { type ClearingTest, type ClearingTrend, clearingTrend } from './trend.js'
export { secondBathShare, type ThroughFirstBath, type TwoBaths, twoBaths } from './two-baths.js'
