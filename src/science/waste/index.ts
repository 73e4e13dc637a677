export {
  ACIDS,
  type Acid,
  type AcidName,
  chargeAt,
  formsAt,
  pHOf,
  type Solution,
} from './charge-balance.js'
export {
  acidToReach,
  pouredTogether,
  ppmInRoom,
  type SulfiteForms,
  sulfiteBath,
  sulfiteIn,
  sulfurDioxideShare,
} from './gas.js'
export {
  AIR_CHANGES,
  DISPOSAL,
  EXPOSURES,
  type Exposure,
  fanFor,
  type Generator,
  generatorOf,
  SILVER_RULE,
  SULFUR_DIOXIDE_LIMITS,
  WASTE_RULES,
  type WasteRule,
} from './reference.js'
export {
  type AgainstLimit,
  foldsToLimit,
  type JugPour,
  type SilverBand,
  type SilverHeld,
  type SilverKnown,
  silverHeld,
} from './silver.js'
