export {
  type Age,
  type AgedStretch,
  ageOf,
  FILL_STATES,
  type FillState,
  KEEPING,
  KEEPING_KINDS,
  type KeepingKind,
  type KeepingTimes,
  type Stretch,
} from './age.js'
export { type BookBalance, type BookEntry, balanceOf, CARRIED_OUT } from './book.js'
export { afterRolls, type Plateau, plateau, type Replenished, replenisherFor, rollsToPlateau } from './replenishment.js'
export {
  CARRIED_ALKALI,
  type CarriedAlkali,
  INDICATOR,
  neutralisedAt,
  STOP_ACIDS,
  type StopAcid,
  type StopAdvice,
  type StopBetween,
  type StopCapacity,
  type StopInUse,
  stopCapacity,
  stopFor,
  stopMolarity,
  type WaterStopReason,
} from './stop.js'
