import type { Recipe } from '../../score/index.js'
import type { Revised } from '../revisions.js'

/** One revision of a list of baths of one's own. */
export interface OwnRecipe extends Revised {
  /** Id of the list that it began as; a word for one that came with the program. */
  readonly copiedFrom: string | null
  readonly recipe: Omit<Recipe, 'id'>
}

export interface RecipesPort {
  addRevision(record: OwnRecipe): Promise<'added' | 'conflict'>
  newest(id: string): Promise<OwnRecipe | null>
  revision(id: string, revision: number): Promise<OwnRecipe | null>
  /** The newest revision of each list that is not removed, by name. */
  all(): Promise<OwnRecipe[]>
}
