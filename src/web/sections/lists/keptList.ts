import type { RecipeRecord } from '../../shared/api/index.js'
import { removeRecipe, undoRecipe } from '../../shared/desk/index.js'

/** A list of one’s own, as it is changed or removed with the way back. */
export const keptList = (record: RecipeRecord) =>
  ({
    name: record.recipe.name,
    kind: 'recipes',
    undo: (seen: { seen_revision: number }) => undoRecipe(record.id, seen),
    remove: () => removeRecipe(record.id, { seen_revision: record.revision ?? 0 }),
    leadsTo: '/runs/lists',
  }) as const
