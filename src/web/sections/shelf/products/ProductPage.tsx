import { SALTS } from '../../../../science/index.js'
import { say } from '../../../../words/index.js'
import type { ProductRecord } from '../../../shared/api/index.js'
import { useProducts, useRemoval, useShelf } from '../../../shared/desk/index.js'
import { Link } from '../../../shared/navigation/index.js'
import { Asked, Button, ButtonLink, Page, useWriter, Words } from '../../../shared/ui/index.js'
import { packageFacts } from '../things/facts.js'
import { FIGURES, KEEPS } from './draft.js'
import { keptProduct } from './keptProduct.js'

/** One product: what is said of it, its packages, its cautions. */
export function ProductPage({ params }: { params: Record<string, string> }) {
  return (
    <Asked query={useProducts()}>
      {(all) => {
        const one = all.find(({ id }) => id === params.id)
        return one ? <One one={one} /> : <NoProduct />
      }}
    </Asked>
  )
}

export function NoProduct() {
  const writer = useWriter()
  return (
    <Page title="No such product" lead={say('product.not-here', {}, writer)}>
      <ButtonLink href="/shelf/products">To the products</ButtonLink>
    </Page>
  )
}

function One({ one }: { one: ProductRecord }) {
  const writer = useWriter()
  return (
    <Page
      title={one.name}
      lead={say('product.row', one, writer)}
      actions={
        <>
          <ButtonLink href={`/shelf/products/${one.id}/edit`}>Correct</ButtonLink>
          <Remove one={one} />
          <ButtonLink look="go" href={`/shelf/mix?product=${one.id}`}>
            Mix it
          </ButtonLink>
        </>
      }
    >
      <div className="lot">
        <div className="shelf">
          <Packages one={one} />
          {one.hazards.length > 0 && (
            <div className="note">
              {one.hazards.map((hazard) => (
                <p key={hazard}>{say('product.hazard', { hazard }, writer)}</p>
              ))}
              <p>{say('product.care', {}, writer)}</p>
            </div>
          )}
        </div>
        <Facts one={one} />
      </div>
    </Page>
  )
}

function Packages({ one }: { one: ProductRecord }) {
  const writer = useWriter()
  const all = useShelf().data?.packages ?? []
  const own = all.filter(({ statement }) => statement.kind === 'package' && statement.product_id === one.id)
  return (
    <section aria-labelledby="packages" className="shelf-part">
      <div className="shelf-part-head">
        <h2 id="packages">Packages</h2>
        <ButtonLink href={`/shelf/things/new?kind=package&product=${one.id}`}>Add a package</ButtonLink>
      </div>
      {own.length === 0 && <p className="quiet">{say('product.no-packages', {}, writer)}</p>}
      <ul className="rows">
        {own.map(({ id, statement, held, unit, left }) =>
          statement.kind === 'package' ? (
            <li key={id}>
              <Link className="row-link" href={`/shelf/things/${id}`}>
                <strong>
                  {[statement.name || one.name, statement.part && `part ${statement.part}`].filter(Boolean).join(', ')}
                </strong>
                <span className="row-figure">
                  <Words>
                    {say('bottle.of-full', { held: { held, unit }, full: { held: statement.full, unit } }, writer)}
                  </Words>
                </span>
                <span className="small row-more">
                  <Words>
                    {[packageFacts(statement, writer), left?.state === 'finished' && 'past its date']
                      .filter(Boolean)
                      .join('; ')}
                  </Words>
                </span>
              </Link>
            </li>
          ) : null,
        )}
      </ul>
    </section>
  )
}

function Facts({ one }: { one: ProductRecord }) {
  const facts: (readonly [string, string])[] = [
    ...FIGURES.flatMap(([name, label]) => (one[name] === null ? [] : [[label, String(one[name])] as const])),
    ...KEEPS.flatMap(([name, label]) => (one.keeps[name] === null ? [] : [[label, String(one.keeps[name])] as const])),
    ...(one.formula?.additions ?? []).map(
      ({ salt, g_per_l, ml_per_l, percent }) =>
        [
          SALTS.find(({ id }) => id === salt)?.name ?? salt,
          g_per_l === null ? `${ml_per_l ?? 0} mL/L${percent === null ? '' : ` of ${percent} %`}` : `${g_per_l} g/L`,
        ] as const,
    ),
    ['Its figures are from', [one.origin, one.source].filter(Boolean).join(': ')],
    ...(one.note === '' ? [] : [['Note', one.note] as const]),
  ]
  return (
    <aside aria-label="What is known of it">
      <dl className="due">
        {facts.map(([name, value]) => (
          <div key={name} className="fact">
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
    </aside>
  )
}

function Remove({ one }: { one: ProductRecord }) {
  const { removeIt, waits } = useRemoval(keptProduct(one))
  return (
    <Button onClick={removeIt} waits={waits}>
      Remove
    </Button>
  )
}
