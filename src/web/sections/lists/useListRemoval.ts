import { say } from '../../../words/index.js'
import { type RecipeRecord, useWrite } from '../../shared/api/index.js'
import { removeRecipe, undoRecipe } from '../../shared/desk/index.js'
import { go } from '../../shared/navigation/index.js'
import { sentenceOf, useTell, useWriter } from '../../shared/ui/index.js'

/** Removes a list of one's own at once and offers the way back. */
export function useListRemoval({ id, revision, recipe: { name } }: RecipeRecord) {
  const writer = useWriter()
  const tell = useTell()
  const back = useWrite((seen: number) => undoRecipe(id, { seen_revision: seen }), 'recipes')
  const remove = useWrite(() => removeRecipe(id, { seen_revision: revision ?? 0 }), 'recipes')
  const removeIt = () =>
    remove.mutate(undefined, {
      onSuccess: (removed) => {
        const undo = async () => {
          await back.mutateAsync(removed.revision ?? 0)
          return say('web.brought-back', { name }, writer)
        }
        go('/runs/lists')
        tell({ sentence: say('web.removed', { name }, writer), undo })
      },
      onError: (fault) => tell({ sentence: sentenceOf(fault) }),
    })
  return { removeIt, waits: remove.isPending }
}
