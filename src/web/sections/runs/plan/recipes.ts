import { type Recipe, SHIPPED_RECIPES } from '../../../../score/index.js'
import type { RecipeRecord } from '../../../shared/api/index.js'

/** The lists to choose from: those that come with the program at once, one's own as soon as the bench answers. */
export const recipesOf = (records: readonly RecipeRecord[] | undefined): readonly Recipe[] => [
  ...SHIPPED_RECIPES,
  ...(records ?? [])
    .filter(({ shipped, removed }) => !shipped && !removed)
    .map(({ recipe }) => recipe as unknown as Recipe),
]
