import { writeRatio } from '../../../../kernel/index.js'
import { say } from '../../../../words/index.js'
import type { LotView, OnShelf } from '../../../shared/api/index.js'
import { useLot, useProducts } from '../../../shared/desk/index.js'
import { Asked, ButtonLink, Page, useWriter, Words } from '../../../shared/ui/index.js'
import { Acts } from './Acts.js'
import { History } from './History.js'
import { Limits } from './Limits.js'

/** One lot: where it stands, what ends it, what is done with it, and all that happened to it. */
export function LotPage({ params }: { params: Record<string, string> }) {
  return <Asked query={useLot(params.id ?? '')}>{(view) => <One view={view} />}</Asked>
}

function One({ view }: { view: LotView }) {
  const writer = useWriter()
  const { lot, containers } = view
  const ratio = lot.parts === null ? null : writeRatio({ parts: lot.parts })
  const where = containers.map(({ statement, held, unit }) =>
    say('bottle.holds', { bottle: statement.name, held: { held, unit } }, writer),
  )
  return (
    <Page
      title={say('lot.title', { product: lot.product, ratio, code: lot.code }, writer)}
      lead={<Words>{say('lot.lead', { where }, writer)}</Words>}
      actions={
        <>
          <ButtonLink href="/shelf">To the shelf</ButtonLink>
          <ButtonLink href={`/shelf/products/${lot.product_id}`}>Its product</ButtonLink>
        </>
      }
    >
      <div className="lot">
        <div className="shelf">
          {containers.map((one) => (
            <Standing key={one.id} one={one} several={containers.length > 1} />
          ))}
          {lot.note !== '' && <p className="small">{lot.note}</p>}
        </div>
        <section aria-labelledby="history">
          <h2 id="history">What happened to it</h2>
          <History view={view} />
        </section>
      </div>
    </Page>
  )
}

function Standing({ one, several }: { one: OnShelf; several: boolean }) {
  const product = (useProducts().data ?? []).find(({ id }) => id === one.lot?.product_id)
  return (
    <section aria-label={several ? one.statement.name : 'What is left'} className="shelf-part">
      {several && <h2>{one.statement.name}</h2>}
      <Limits one={one} />
      <Acts one={one} product={product} />
    </section>
  )
}
