import type { Recipe } from '../../../../score/index.js'
import { say } from '../../../../words/index.js'
import {
  type RecipeRecord,
  type RecipeStatementInput,
  useBench,
  useRecipes,
  useWrite,
} from '../../../shared/api/index.js'
import { correctRecipe, useWayBack } from '../../../shared/desk/index.js'
import { go } from '../../../shared/navigation/index.js'
import { Asked, ButtonLink, Page, Trouble, useDraft, useUnits, useWriter } from '../../../shared/ui/index.js'
import { keptList } from '../keptList.js'
import { addressOf } from '../kinds.js'
import { NoSuchList } from '../one/ListPage.js'
import { draftOfList } from './draft.js'
import { ListForm } from './ListForm.js'

export function EditListPage({ params }: { params: Record<string, string> }) {
  const recipes = useRecipes()
  const bench = useBench()
  return (
    <Asked query={bench}>
      {() => (
        <Asked query={recipes}>
          {(all) => {
            const record = all.find(({ id, shipped }) => id === params.id && !shipped)
            return record ? <Edit record={record} /> : <NoSuchList />
          }}
        </Asked>
      )}
    </Asked>
  )
}

function Edit({ record }: { record: RecipeRecord }) {
  const writer = useWriter()
  const units = useUnits()
  const { id, recipe } = record
  const revision = record.revision ?? 0
  const start = draftOfList(recipe as unknown as Recipe, units)
  const { draft, change, clear } = useDraft(`list-${id}-${revision}`, start)
  const { changed } = useWayBack(keptList(record))
  const correct = useWrite(
    (statement: RecipeStatementInput) => correctRecipe(id, { seen_revision: revision, statement }),
    'recipes',
  )
  const corrected = (kept: RecipeRecord) => {
    clear()
    go(addressOf(record))
    changed(say('times.form.corrected', { name: kept.recipe.name }, writer), kept.revision ?? 0)
  }
  return (
    <Page
      title={`Change ${recipe.name}`}
      lead={say('list.edit', {}, writer)}
      actions={<ButtonLink href={addressOf(record)}>Leave it as it was</ButtonLink>}
    >
      <ListForm
        draft={draft}
        change={change}
        keepWords="Keep the change"
        waits={correct.isPending}
        onKeep={(statement) => correct.mutate(statement, { onSuccess: corrected })}
      >
        {correct.isError && <Trouble fault={correct.error} />}
      </ListForm>
    </Page>
  )
}
