import { say } from '../../../../words/index.js'
import type { OnShelf, ProductRecord } from '../../../shared/api/index.js'
import { useProducts, useShelf } from '../../../shared/desk/index.js'
import { usePlace } from '../../../shared/navigation/index.js'
import { Asked, ButtonLink, Page, useDraft, useUnits, useWriter, Words } from '../../../shared/ui/index.js'
import { Against } from './Against.js'
import { EMPTY_MIX, readMix } from './draft.js'
import { MixFields } from './MixFields.js'
import { mixPlan, usualPackage } from './plan.js'
import { Sheet } from './Sheet.js'

/** What is mixed is chosen, looked at, mixed step by step, and becomes a lot. */
export function MixPage() {
  const writer = useWriter()
  const products = useProducts()
  const shelf = useShelf()
  return (
    <Asked query={products}>
      {(kept) => (
        <Asked query={shelf}>
          {({ bottles, packages }) =>
            kept.length === 0 ? (
              <Page title="Mix" lead={say('mix.no-product', {}, writer)}>
                <ButtonLink look="go" href="/shelf/products">
                  Keep a product
                </ButtonLink>
              </Page>
            ) : (
              <Mix products={kept} packages={packages} empty={bottles.filter(({ lot }) => lot === null)} />
            )
          }
        </Asked>
      )}
    </Asked>
  )
}

interface MixProps {
  readonly products: readonly ProductRecord[]
  readonly packages: readonly OnShelf[]
  readonly empty: readonly OnShelf[]
}

function Mix({ products, packages, empty }: MixProps) {
  const writer = useWriter()
  const units = useUnits()
  const asked = usePlace().search.get('product')
  const { draft: typed, change, clear } = useDraft('mix', EMPTY_MIX)
  const draft = typed.product === '' && asked !== null ? { ...typed, product: asked } : typed
  const product = products.find(({ id }) => id === draft.product) ?? products[0]
  if (product === undefined) return null
  const usual = product.dilutions[0]
  const ratio = draft.ratio === '' && usual ? usual.join(' + ') : draft.ratio
  const reading = readMix({ ...draft, ratio }, product, units)
  const { volume, parts, scaleStep, rolls } = reading
  const plan =
    volume?.kind === 'read' && parts !== undefined
      ? mixPlan({ product, parts, volume: volume.value, scaleStep, rolls, instead: draft.instead })
      : null
  const lines = plan?.ok ? plan.value.lines : []
  const from = new Map(
    lines.map((line) => {
      const chosen = draft.from[line.key]
      const one = packages.find(({ id }) => id === chosen) ?? null
      return [line.key, chosen === undefined ? usualPackage(line, product, packages) : one] as const
    }),
  )
  const { into } = draft
  const chosen = into === null ? empty.slice(0, 1) : empty.filter(({ id }) => into.includes(id))
  const ready =
    plan?.ok && volume?.kind === 'read'
      ? { plan: plan.value, product, volume: volume.value, from, chosen, empty }
      : null
  if (draft.started && ready !== null)
    return (
      <Sheet
        {...ready}
        parts={parts ?? null}
        hot={reading.hot?.kind === 'read' ? reading.hot.value : null}
        cold={reading.cold?.kind === 'read' ? reading.cold.value : null}
        draft={draft}
        change={change}
        clear={clear}
      />
    )
  return (
    <Page title="Mix" lead={say('mix.lead', {}, writer)} actions={<ButtonLink href="/shelf">To the shelf</ButtonLink>}>
      <div className="lot">
        <MixFields
          {...{ draft: { ...draft, ratio }, change, reading, products, product, packages, lines, from, empty, chosen }}
        />
        <section aria-label="Before you begin" className="shelf-part">
          {plan !== null && !plan.ok && (
            <p className="note" role="status">
              <Words>{plan.problem.sentence}</Words>
            </p>
          )}
          {ready === null ? (
            <p className="quiet">{say('mix.unread', {}, writer)}</p>
          ) : (
            <Against {...ready} onStart={() => change({ product: product.id, ratio, started: true, done: 0 })} />
          )}
        </section>
      </div>
    </Page>
  )
}
