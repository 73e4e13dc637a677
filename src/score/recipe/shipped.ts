import type { Recipe } from './definition.js'
import {
  reversal,
  shortWash,
  singleBath,
  stand,
  threeBathAcid,
  threeBathWater,
  twoBath,
} from './lists/black-and-white.js'
import { colourNegative, colourReversal } from './lists/colour.js'

/** The lists of baths that come with the program: common practice, nothing branded; copy one to change it. */
export const SHIPPED_RECIPES: readonly Recipe[] = [
  threeBathAcid,
  threeBathWater,
  shortWash,
  singleBath,
  twoBath,
  stand,
  reversal,
  colourNegative,
  colourReversal,
]
