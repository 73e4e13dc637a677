import { failed, instantText, ok, problem, type Result } from '../../kernel/index.js'
import { checkRecipe, type Recipe, SHIPPED_RECIPES } from '../../score/index.js'
import type { RecipeStatement, RecipeRecord as View } from '../../wire/index.js'
import type { Context } from '../context.js'
import { nameTaken } from '../names.js'
import { correct, keepFirst, remove, revise, undo } from '../revisions.js'
import type { Rooms } from '../store.js'
import type { OwnRecipe } from './port.js'

const WHAT = 'list of baths'

const viewOf = (record: OwnRecipe): View => ({
  id: record.id,
  shipped: false,
  revision: record.revision,
  saved_at: instantText(record.savedAt),
  removed: record.removed,
  copied_from: record.copiedFrom,
  recipe: recipeOf(record),
})

const recipeOf = ({ id, recipe }: OwnRecipe): View['recipe'] => ({ ...(recipe as RecipeStatement), id })

const shippedView = (recipe: Recipe): View => ({
  id: recipe.id,
  shipped: true,
  revision: null,
  saved_at: null,
  removed: false,
  copied_from: null,
  recipe: recipe as View['recipe'],
})

/** The lists that come with the program, in their order, then one's own by name. */
export async function listRecipes(rooms: Rooms): Promise<{ recipes: View[] }> {
  const own = await rooms.recipes.all()
  return { recipes: [...SHIPPED_RECIPES.map(shippedView), ...own.map(viewOf)] }
}

/** One list, of one's own or of the program; refused when there is none, or no more. */
export async function getRecipe(rooms: Rooms, id: string): Promise<Result<View>> {
  const { recipes } = await listRecipes(rooms)
  const found = recipes.find((one) => one.id === id)
  return found === undefined ? failed(problem('record.not-found', { what: WHAT, id })) : ok(found)
}

async function told(context: Context, rooms: Rooms, done: Result<OwnRecipe>): Promise<Result<View>> {
  if (!done.ok) return done
  await rooms.feed.tell({ kind: 'recipes', subject: done.value.id }, context.clock.now())
  return ok(viewOf(done.value))
}

/** A list that can be run, under a name that no other list here has: people choose by the name. */
async function checked(rooms: Rooms, statement: RecipeStatement, except: string | null): Promise<Result<null>> {
  const sound = checkRecipe({ ...statement, id: 'statement' })
  if (!sound.ok) return failed({ ...sound.problem, field: `statement.${sound.problem.field ?? 'steps'}` })
  const { recipes } = await listRecipes(rooms)
  const others = recipes.filter(({ id }) => id !== except).map(({ recipe }) => recipe.name)
  const taken = nameTaken(WHAT, statement.name, others, 'statement.name')
  return taken === null ? ok(null) : failed(taken)
}

/** Lists that came with the program are data of the program: nobody's to change. */
function ownOnly(id: string): Result<null> {
  const shipped = SHIPPED_RECIPES.find((recipe) => recipe.id === id)
  return shipped === undefined ? ok(null) : failed(problem('recipe.comes-with-program', { name: shipped.name }))
}

/** Keeps a list of one's own; a copy says what it was copied from. */
export async function keepRecipe(
  context: Context,
  rooms: Rooms,
  statement: RecipeStatement,
  copiedFrom: string | null,
): Promise<Result<View>> {
  const sound = await checked(rooms, statement, null)
  if (!sound.ok) return sound
  return told(context, rooms, ok(await keepFirst(context, rooms.recipes, { recipe: statement, copiedFrom })))
}

export async function correctRecipe(
  context: Context,
  rooms: Rooms,
  id: string,
  seen: number,
  statement: RecipeStatement,
): Promise<Result<View>> {
  const own = ownOnly(id)
  if (!own.ok) return own
  const sound = await checked(rooms, statement, id)
  if (!sound.ok) return sound
  const next = async (newest: OwnRecipe) =>
    correct<OwnRecipe>(WHAT, { recipe: statement, copiedFrom: newest.copiedFrom })(newest)
  return told(context, rooms, await revise(context, rooms.recipes, WHAT, id, seen, next))
}

const change =
  (next: (rooms: Rooms) => (newest: OwnRecipe) => Promise<Result<OwnRecipe>>) =>
  async (context: Context, rooms: Rooms, id: string, seen: number): Promise<Result<View>> => {
    const own = ownOnly(id)
    if (!own.ok) return own
    return told(context, rooms, await revise(context, rooms.recipes, WHAT, id, seen, next(rooms)))
  }

export const removeRecipe = change(() => remove(WHAT))
export const undoRecipe = change((rooms) => undo(rooms.recipes))
