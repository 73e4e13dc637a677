import type { Recipe } from '../../../../score/index.js'
import { say } from '../../../../words/index.js'
import { type RecipeRecord, useBench, useRecipes, useWrite } from '../../../shared/api/index.js'
import { keepRecipe } from '../../../shared/desk/index.js'
import { go } from '../../../shared/navigation/index.js'
import { Asked, ButtonLink, Page, Trouble, useDraft, useTell, useUnits, useWriter } from '../../../shared/ui/index.js'
import { addressOf } from '../kinds.js'
import { NoSuchList } from '../one/ListPage.js'
import { draftOfList } from './draft.js'
import { ListForm } from './ListForm.js'

export function CopyListPage({ params }: { params: Record<string, string> }) {
  const recipes = useRecipes()
  const bench = useBench()
  return (
    <Asked query={bench}>
      {() => (
        <Asked query={recipes}>
          {(all) => {
            const record = all.find(({ id }) => id === params.id)
            return record ? <Copy record={record} /> : <NoSuchList />
          }}
        </Asked>
      )}
    </Asked>
  )
}

function Copy({ record }: { record: RecipeRecord }) {
  const writer = useWriter()
  const units = useUnits()
  const tell = useTell()
  const recipe = record.recipe as unknown as Recipe
  const start = draftOfList({ ...recipe, name: say('list.copy-name', recipe, writer) }, units)
  const { draft, change, clear } = useDraft(`list-copy-${record.id}`, start)
  const keep = useWrite(keepRecipe, 'recipes')
  return (
    <Page
      title={`Copy ${recipe.name}`}
      lead={say('list.copy', {}, writer)}
      actions={<ButtonLink href={addressOf(record)}>Leave it</ButtonLink>}
    >
      <ListForm
        draft={draft}
        change={change}
        keepWords="Keep the copy"
        waits={keep.isPending}
        onKeep={(statement) =>
          keep.mutate(
            { copied_from: record.id, statement },
            {
              onSuccess: (kept) => {
                clear()
                go(addressOf(kept))
                tell({ sentence: say('times.form.kept', { name: kept.recipe.name }, writer) })
              },
            },
          )
        }
      >
        {keep.isError && <Trouble fault={keep.error} />}
      </ListForm>
    </Page>
  )
}
