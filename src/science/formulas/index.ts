export { type AtHand, type FromAtHand, type Swap, withAtHand } from './at-hand.js'
export { ATOMIC_WEIGHTS } from './elements.js'
export { type Composition, molarMass, readFormula, writeFormula } from './parse.js'
export { type Doubt, doubtsAbout, SOLUBILITY } from './plausible.js'
export {
  type Addition,
  type BathFormula,
  type BathRole,
  type MixingCaution,
  type MixingSheet,
  mixingSheet,
  type SheetLine,
  volumeFrom,
  weighable,
} from './recipe.js'
export { PUBLISHED_SWAPS, type PublishedSwap, SALTS, type Salt } from './salts.js'
export { SHIPPED_FORMULAS } from './shipped.js'
export { hydrateFactor, type Substitution, saltNamed, substitute } from './substitution.js'
export { MIXING_WATER, type MixingWater, mixingWaterFor } from './water.js'
export { type Weighing, weighingOf } from './weighing.js'
