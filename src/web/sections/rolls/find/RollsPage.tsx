import { say } from '../../../../words/index.js'
import { type RollSummaries, useRolls, useTodayHere } from '../../../shared/api/index.js'
import { go, Link, usePlace } from '../../../shared/navigation/index.js'
import { Asked, Button, ButtonLink, Page, useWriter, Words } from '../../../shared/ui/index.js'
import { Finder } from './Finder.js'
import { addressOf, askedOf, isEverythingHere, type Look, lookOf } from './look.js'
import { NoRolls } from './NoRolls.js'
import { RollList } from './RollList.js'

/** Rolls on one page of the list: enough to fill a screen or two, few enough to be drawn at once. */
const ON_A_PAGE = 50

export function RollsPage() {
  const writer = useWriter()
  const { search } = usePlace()
  const look = lookOf(search)
  const after = search.get('after')
  const { asked, unread } = askedOf(look, useTodayHere())
  const rolls = useRolls({ look: asked, after, most: ON_A_PAGE })
  const bare = rolls.data?.found === 0 && isEverythingHere(look)
  return (
    <Page
      title="Rolls"
      lead={
        rolls.data &&
        rolls.data.found > 0 && (
          <Words>{say('rolls.here', { found: rolls.data.found, shown: rolls.data.rolls.length }, writer)}</Words>
        )
      }
      actions={
        <>
          <ButtonLink href="/rolls/orders">Orders</ButtonLink>
          <ButtonLink href="/rolls/several">Take in several</ButtonLink>
          <ButtonLink look="go" href="/rolls/new">
            Take in a roll
          </ButtonLink>
        </>
      }
    >
      {!bare && <Finder look={look} asked={asked} unread={unread} />}
      <Asked query={rolls}>{(found) => (bare ? <NoRolls /> : <Found found={found} look={look} after={after} />)}</Asked>
    </Page>
  )
}

function Found({ found, look, after }: { found: RollSummaries; look: Look; after: string | null }) {
  const writer = useWriter()
  const { search } = usePlace()
  const table = search.get('as') === 'table'
  const shape: Record<string, string> = table ? { as: 'table' } : {}
  if (found.rolls.length === 0)
    return (
      <div className="teach">
        <p role="status">{say('rolls.none-found', {}, writer)}</p>
        <p>
          <Link href={addressOf({ ...look, state: 'all' })}>Look among all rolls</Link>
        </p>
      </div>
    )
  return (
    <>
      <p className="row">
        <Button
          look="bare"
          onClick={() =>
            go(addressOf(look, { ...(table ? {} : { as: 'table' }), ...(after ? { after } : {}) }), { replace: true })
          }
        >
          {table ? 'Show as sentences' : 'Show as a table'}
        </Button>
      </p>
      <RollList key={`${after} ${found.rolls[0]?.id}`} rolls={found.rolls} table={table} />
      <nav className="row" aria-label="Pages of the list">
        {after !== null && <ButtonLink href={addressOf(look, shape)}>To the newest</ButtonLink>}
        {found.next !== null && found.rolls.length < found.found && (
          <ButtonLink href={addressOf(look, { ...shape, after: found.next })}>Earlier rolls</ButtonLink>
        )}
      </nav>
    </>
  )
}
