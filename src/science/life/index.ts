export { type Age, ageOf, KEEPING, type KeepingTimes, type Keeps, type KeptIn, type Stretch } from './age.js'
export {
  afterRolls,
  type BookBalance,
  type BookEntry,
  balanceOf,
  type Plateau,
  plateau,
  type Replenished,
  replenisherFor,
} from './replenishment.js'
export {
  ACETIC_PKA,
  CARRIED,
  type CarriedAlkali,
  INDICATOR,
  neutralisedAt,
  type StopCapacity,
  stopCapacity,
  stopFor,
  type WaterStopReason,
} from './stop.js'
