import { say } from '../../../../words/index.js'
import type { ProductRecord } from '../../../shared/api/index.js'
import { useProducts, useShelf, useStartingProducts } from '../../../shared/desk/index.js'
import { Link } from '../../../shared/navigation/index.js'
import { Asked, ButtonLink, Page, useWriter } from '../../../shared/ui/index.js'
import { ShelfNav } from '../ShelfNav.js'

/** Products that are kept, and generic ones to begin with. */
export function ProductsPage() {
  const writer = useWriter()
  const products = useProducts()
  return (
    <Page
      title="Products"
      lead={products.data && say('product.lead', { count: products.data.length }, writer)}
      actions={
        <ButtonLink look="go" href="/shelf/products/new">
          Keep a product
        </ButtonLink>
      }
    >
      <ShelfNav />
      <Asked query={products}>
        {(kept) => (
          <div className="shelf">
            {kept.length > 0 && <Kept kept={kept} />}
            <Starting kept={kept} />
          </div>
        )}
      </Asked>
    </Page>
  )
}

function Kept({ kept }: { kept: readonly ProductRecord[] }) {
  const writer = useWriter()
  const packages = useShelf().data?.packages ?? []
  const of = (id: string) =>
    packages.filter(({ statement }) => statement.kind === 'package' && statement.product_id === id).length
  return (
    <ul className="rows">
      {kept.map((one) => (
        <li key={one.id}>
          <Link className="row-link" href={`/shelf/products/${one.id}`}>
            <strong>{one.name}</strong>
            <span className="row-figure small">{say('product.packages', { count: of(one.id) }, writer)}</span>
            <span className="small row-more">{say('product.row', one, writer)}</span>
          </Link>
        </li>
      ))}
    </ul>
  )
}

function Starting({ kept }: { kept: readonly ProductRecord[] }) {
  const writer = useWriter()
  const names = new Set(kept.map(({ name }) => name))
  const offered = (useStartingProducts().data ?? []).filter(({ name }) => !names.has(name))
  if (offered.length === 0) return null
  return (
    <section aria-labelledby="starting" className="shelf-part">
      <h2 id="starting">To start from</h2>
      <p>{say('product.starting', {}, writer)}</p>
      <ul className="rows">
        {offered.map((one) => (
          <li key={one.name}>
            <Link className="row-link" href={`/shelf/products/new?from=${encodeURIComponent(one.name)}`}>
              <strong>{one.name}</strong>
              <span className="row-figure small">{say('product.starting-from', one, writer)}</span>
              <span className="small row-more">{say('product.row', one, writer)}</span>
            </Link>
          </li>
        ))}
      </ul>
    </section>
  )
}
