import { type Recipe, SHIPPED_RECIPES } from '../../../../score/index.js'
import type { RecipeRecord } from '../../../shared/api/index.js'

/** The lists to choose from: those that come with the program, then one's own. */
export const recipesOf = (records: readonly RecipeRecord[]): readonly Recipe[] => [
  ...SHIPPED_RECIPES,
  ...records.filter(({ shipped, removed }) => !shipped && !removed).map(({ recipe }) => recipe as unknown as Recipe),
]
