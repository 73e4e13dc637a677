export {
  ACIDS,
  type Acid,
  type AcidName,
  acidToReach,
  chargeAt,
  formsAt,
  pHOf,
  type Solution,
  sulfurDioxideShare,
} from './charge-balance.js'
export { AIR_CHANGES, EXPOSURES, type Exposure, fanFor, SILVER_RULE, WASTE_RULES, type WasteRule } from './reference.js'
export { foldsToLimit, type Jug, type SilverHeld, silverHeld } from './silver.js'
