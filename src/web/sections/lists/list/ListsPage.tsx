import { type Bath, isBath, type Recipe } from '../../../../score/index.js'
import { say } from '../../../../words/index.js'
import { type RecipeRecord, useRecipes } from '../../../shared/api/index.js'
import { Link } from '../../../shared/navigation/index.js'
import { Asked, ButtonLink, Page, useWriter, Words } from '../../../shared/ui/index.js'
import { addressOf } from '../kinds.js'

/** Every list of baths: one's own first, since they were made on purpose. */
export function ListsPage() {
  const writer = useWriter()
  const recipes = useRecipes()
  const all = recipes.data ?? []
  const own = all.filter(({ shipped }) => !shipped)
  return (
    <Page
      title="Lists of baths"
      lead={all.length > 0 && say('list.here', { shipped: all.length - own.length, own: own.length }, writer)}
      actions={<ButtonLink href="/runs/new">Plan a run</ButtonLink>}
    >
      <Asked query={recipes}>
        {(found) => (
          <div className="lists">
            <Rows title="Your own" records={found.filter(({ shipped }) => !shipped)} />
            <Rows title="By common practice" records={found.filter(({ shipped }) => shipped)} />
          </div>
        )}
      </Asked>
    </Page>
  )
}

function Rows({ title, records }: { title: string; records: readonly RecipeRecord[] }) {
  const writer = useWriter()
  if (records.length === 0) return null
  return (
    <section>
      <h2>{title}</h2>
      <ul className="rows">
        {records.map((record) => (
          <li key={record.id}>
            <Link className="row-link" href={addressOf(record)}>
              <strong>{record.recipe.name}</strong>
              <span className="row-more">
                <Words>{record.recipe.about}</Words>
              </span>
              <span className="small row-more">
                <Words>{say('list.row', sizeOf(record.recipe as unknown as Recipe), writer)}</Words>
              </span>
            </Link>
          </li>
        ))}
      </ul>
    </section>
  )
}

/** How many baths, and how long they are at least. */
function sizeOf({ steps }: Recipe) {
  const baths = steps.filter(isBath)
  return {
    baths: baths.length,
    least: baths.reduce((sum, bath) => sum + leastOf(bath), 0),
    developing: baths.some(({ time }) => time.law === 'by-developing-time'),
  }
}

function leastOf({ time }: Bath): number {
  if (time.law === 'by-developing-time') return 0
  return time.law === 'fixed' ? time.seconds : time.least
}
