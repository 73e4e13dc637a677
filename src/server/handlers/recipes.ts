import { ok } from '../../kernel/index.js'
import { correctRecipe, keepRecipe, listRecipes, removeRecipe, undoRecipe } from '../../lab/index.js'
import { type Handlers, read, write } from '../call.js'
import { recipePaper } from './recipe-paper.js'

type Names = 'listRecipes' | 'recipePaper' | 'keepRecipe' | 'correctRecipe' | 'removeRecipe' | 'undoRecipe'

export const recipesHandlers: Handlers<Names> = {
  listRecipes: async (call) => ok(await read(call, listRecipes)),
  recipePaper,
  keepRecipe: (call) =>
    write(call, (context, rooms) => keepRecipe(context, rooms, call.body.statement, call.body.copied_from)),
  correctRecipe: (call) =>
    write(call, (context, rooms) =>
      correctRecipe(context, rooms, call.params.id, call.body.seen_revision, call.body.statement),
    ),
  removeRecipe: (call) =>
    write(call, (context, rooms) => removeRecipe(context, rooms, call.params.id, call.body.seen_revision)),
  undoRecipe: (call) =>
    write(call, (context, rooms) => undoRecipe(context, rooms, call.params.id, call.body.seen_revision)),
}
