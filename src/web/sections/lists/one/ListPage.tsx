import type { Recipe } from '../../../../score/index.js'
import { say } from '../../../../words/index.js'
import { type RecipeRecord, recipePaperAddress, useBench, useRecipes } from '../../../shared/api/index.js'
import { useRemoval } from '../../../shared/desk/index.js'
import { Asked, Button, ButtonLink, Page, useWriter, Words } from '../../../shared/ui/index.js'
import { keptList } from '../keptList.js'
import { addressOf } from '../kinds.js'
import { Steps } from './Steps.js'

export function ListPage({ params }: { params: Record<string, string> }) {
  const recipes = useRecipes()
  return (
    <Asked query={recipes}>
      {(all) => {
        const record = all.find(({ id }) => id === params.id)
        return record ? <One record={record} /> : <NoSuchList />
      }}
    </Asked>
  )
}

/** One list as it would be explained to somebody at the sink. */
function One({ record }: { record: RecipeRecord }) {
  const writer = useWriter()
  const paper = useBench().data?.paper
  return (
    <Page
      title={record.recipe.name}
      lead={<Words>{record.recipe.about}</Words>}
      actions={
        <>
          {!record.shipped && <OwnActions record={record} />}
          <ButtonLink look={record.shipped ? 'go' : 'plain'} href={`${addressOf(record)}/copy`}>
            Copy it
          </ButtonLink>
          <a
            className="btn"
            href={recipePaperAddress(record.id, paper ? { paper } : {})}
            target="_blank"
            rel="noreferrer"
          >
            Print it
          </a>
        </>
      }
    >
      {record.shipped && <p className="quiet">{say('list.shipped', {}, writer)}</p>}
      <Steps recipe={record.recipe as unknown as Recipe} />
    </Page>
  )
}

function OwnActions({ record }: { record: RecipeRecord }) {
  const { removeIt, waits } = useRemoval(keptList(record))
  return (
    <>
      <ButtonLink look="go" href={`${addressOf(record)}/edit`}>
        Change it
      </ButtonLink>
      <Button onClick={removeIt} waits={waits}>
        Remove it
      </Button>
    </>
  )
}

export function NoSuchList() {
  const writer = useWriter()
  return (
    <Page title="No such list" lead={say('list.not-here', {}, writer)}>
      <ButtonLink href="/runs/lists">All lists of baths</ButtonLink>
    </Page>
  )
}
