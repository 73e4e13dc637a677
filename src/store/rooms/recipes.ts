import { compareNames } from '../../kernel/index.js'
import type { OwnRecipe, RecipesPort } from '../../lab/index.js'
import type { Db, RecipeRevisionRow } from '../schema.js'
import { toFlag } from './amounts.js'

/** Lists of baths of one bench, in one transaction. */
export function recipesRoom(db: Db, bench: string): RecipesPort {
  const revisions = () => db.selectFrom('recipe_revisions').selectAll().where('bench_id', '=', bench)
  return {
    addRevision: (record) => addRevision(db, bench, record),
    async newest(id) {
      const row = await revisions().where('recipe_id', '=', id).orderBy('revision', 'desc').limit(1).executeTakeFirst()
      return row ? recipeRecord(row) : null
    },
    async revision(id, revision) {
      const row = await revisions().where('recipe_id', '=', id).where('revision', '=', revision).executeTakeFirst()
      return row ? recipeRecord(row) : null
    },
    async all() {
      const newest = new Map<string, RecipeRevisionRow>()
      for (const row of await revisions().orderBy('revision').execute()) newest.set(row.recipe_id, row)
      return [...newest.values()]
        .filter((row) => row.removed === 0)
        .map(recipeRecord)
        .sort((a, b) => compareNames(a.recipe.name, b.recipe.name) || compareNames(a.id, b.id))
    },
  }
}

async function addRevision(db: Db, bench: string, record: OwnRecipe): Promise<'added' | 'conflict'> {
  if (record.revision === 1)
    await db
      .insertInto('recipes')
      .values({ bench_id: bench, id: record.id, created_at: record.savedAt })
      .onConflict((conflict) => conflict.doNothing())
      .execute()
  const added = await db
    .insertInto('recipe_revisions')
    .values(recipeRow(bench, record))
    .onConflict((conflict) => conflict.columns(['bench_id', 'recipe_id', 'revision']).doNothing())
    .executeTakeFirst()
  return added.numInsertedOrUpdatedRows === 0n ? 'conflict' : 'added'
}

const recipeRow = (bench: string, record: OwnRecipe): RecipeRevisionRow => ({
  bench_id: bench,
  recipe_id: record.id,
  revision: record.revision,
  saved_at: record.savedAt,
  saved_by: record.savedBy,
  removed: toFlag(record.removed),
  name: record.recipe.name,
  copied_from: record.copiedFrom,
  statement: JSON.stringify(record.recipe),
})

const recipeRecord = (row: RecipeRevisionRow): OwnRecipe => ({
  id: row.recipe_id,
  revision: row.revision,
  savedAt: row.saved_at,
  savedBy: row.saved_by,
  removed: row.removed === 1,
  copiedFrom: row.copied_from,
  recipe: JSON.parse(row.statement) as OwnRecipe['recipe'],
})
