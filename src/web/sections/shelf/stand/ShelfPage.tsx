import { say, writeDay } from '../../../../words/index.js'
import { type OnShelf, type Shelf, useBench, useRolls } from '../../../shared/api/index.js'
import { useProducts, useShelf } from '../../../shared/desk/index.js'
import { Link } from '../../../shared/navigation/index.js'
import { deviceClock } from '../../../shared/platform/index.js'
import { Asked, ButtonLink, LookAtDemo, Page, useWriter, Words } from '../../../shared/ui/index.js'
import { Thermometers } from '../list/Thermometers.js'
import { ShelfNav } from '../ShelfNav.js'
import { Bottles } from './Bottles.js'
import { Jugs } from './Jugs.js'
import { leadOf } from './next.js'
import { Packages } from './Packages.js'

/** Everything that stands on the shelf, what matters most first. */
export function ShelfPage() {
  const shelf = useShelf()
  const fixer = shelf.data?.bottles.find(({ lot, held }) => lot?.role === 'fixer' && held > 0)
  return (
    <Page
      title="Shelf"
      lead={shelf.data && <LeadWords bottles={shelf.data.bottles} />}
      actions={
        <>
          {fixer?.lot && <ButtonLink href={`/shelf/lots/${fixer.lot.id}`}>Test a fixer</ButtonLink>}
          <ButtonLink href="/shelf/things/new?kind=bottle">Add a bottle</ButtonLink>
          <ButtonLink look="go" href="/shelf/mix">
            Mix
          </ButtonLink>
        </>
      }
    >
      <ShelfNav />
      <Asked query={shelf}>{(all) => <Everything all={all} />}</Asked>
    </Page>
  )
}

function Everything({ all }: { all: Shelf }) {
  const writer = useWriter()
  const products = useProducts().data ?? []
  const filled = all.bottles.filter(({ lot }) => lot !== null)
  const empty = all.bottles.filter(({ lot }) => lot === null)
  const bare = filled.length + empty.length + all.packages.length + all.jugs.length === 0
  return (
    <div className="shelf">
      {bare ? (
        <Bare />
      ) : (
        <>
          <Bottles bottles={filled} products={products} now={deviceClock.wall()} />
          {empty.length > 0 && <Empties empty={empty} />}
          {all.jugs.length > 0 && (
            <section aria-label="Jugs of waste" className="shelf-part">
              <Jugs jugs={all.jugs} />
            </section>
          )}
          <section aria-labelledby="packages" className="shelf-part">
            <div className="shelf-part-head">
              <h2 id="packages">Packages</h2>
              <ButtonLink href="/shelf/things/new?kind=package">Add a package</ButtonLink>
            </div>
            {all.packages.length > 0 ? (
              <Packages packages={all.packages} />
            ) : (
              <p className="quiet">{say('bottle.new.package', {}, writer)}</p>
            )}
          </section>
        </>
      )}
      <Thermometers />
    </div>
  )
}

function Bare() {
  const writer = useWriter()
  return (
    <div className="teach">
      <p className="lead">
        <strong>{say('bottle.none', {}, writer)}</strong> {say('bottle.none.how', {}, writer)}
      </p>
      <p className="row">
        <ButtonLink look="go" href="/shelf/products">
          Keep a product
        </ButtonLink>
        <ButtonLink href="/shelf/things/new?kind=bottle">Add a bottle</ButtonLink>
      </p>
      <LookAtDemo words={say('times.none.look', {}, writer)} />
    </div>
  )
}

const SHOWN = 12

function Empties({ empty }: { empty: readonly OnShelf[] }) {
  return (
    <p className="small empties">
      Empty:{' '}
      {empty.slice(0, SHOWN).map((one, place) => (
        <span key={one.id}>
          {place > 0 && ', '}
          <Link href={`/shelf/things/${one.id}`}>{one.statement.name}</Link>
        </span>
      ))}
      {empty.length > SHOWN && ` and ${empty.length - SHOWN} more`}
    </p>
  )
}

/** What matters most of all that stands here. */
function LeadWords({ bottles }: { bottles: readonly OnShelf[] }) {
  const writer = useWriter()
  const zone = useBench().data?.zone ?? 'UTC'
  const waiting = useRolls({ look: { state: ['taken-in'], process: 'black-and-white' }, most: 1 }).data?.found ?? 0
  const lead = leadOf(bottles, waiting)
  if (lead === null) return null
  const code = lead.of === 'finished' || lead.of === 'first' ? (lead.one.lot?.code ?? '') : ''
  switch (lead.of) {
    case 'short':
      return <Words>{say('bottle.lead.short', lead, writer)}</Words>
    case 'finished':
      return (
        <Words>
          {say('bottle.lead.finished', { name: lead.one.product, code, more: lead.more, by: lead.by }, writer)}
        </Words>
      )
    case 'first': {
      const day = writeDay(lead.at, zone)
      return <Words>{say('bottle.lead.first', { name: lead.one.product, code, by: lead.by, day }, writer)}</Words>
    }
    case 'calm':
      return <Words>{say('bottle.lead.calm', lead, writer)}</Words>
  }
}
