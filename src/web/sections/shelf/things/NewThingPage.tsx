import { type FormEvent, useState } from 'react'
import { say } from '../../../../words/index.js'
import { type ContainerStatementInput, useTodayHere, useWrite } from '../../../shared/api/index.js'
import { addContainer, useProducts } from '../../../shared/desk/index.js'
import { go, usePlace } from '../../../shared/navigation/index.js'
import {
  Asked,
  Button,
  ButtonLink,
  Page,
  Trouble,
  useDraft,
  useTell,
  useUnits,
  useWriter,
} from '../../../shared/ui/index.js'
import { EMPTY_THING, type Kind, readThing } from './draft.js'
import { ThingFields } from './ThingFields.js'

const TITLES: Readonly<Record<Kind, string>> = {
  bottle: 'Add a bottle',
  jug: 'Add a jug for waste',
  package: 'Add a package',
}

/** A package, a bottle or a jug comes to the shelf. */
export function NewThingPage() {
  const { search } = usePlace()
  const asked = search.get('kind')
  const kind: Kind = asked === 'jug' || asked === 'package' ? asked : 'bottle'
  return <Form key={kind} kind={kind} product={search.get('product') ?? ''} />
}

function Form({ kind, product }: { kind: Kind; product: string }) {
  const writer = useWriter()
  const tell = useTell()
  const units = useUnits()
  const today = useTodayHere()
  const query = useProducts()
  const products = query.data ?? []
  const one = products.find(({ id }) => id === product)
  const of =
    one === undefined
      ? {}
      : { product, unit: one.form === 'powder' ? ('g' as const) : ('ml' as const), part: one.package_parts[0] ?? '' }
  const { draft: typed, change, clear } = useDraft(`new-${kind}-${product}`, EMPTY_THING)
  const draft = typed.product === '' ? { ...typed, ...of } : typed
  const [tried, setTried] = useState(false)
  const reading = readThing(kind, draft, units, today)
  const add = useWrite((statement: ContainerStatementInput) => addContainer({ statement }), 'shelf')
  const submit = (event: FormEvent) => {
    event.preventDefault()
    setTried(true)
    if (reading.statement === null || add.isPending) return
    add.mutate(reading.statement, {
      onSuccess: ({ statement }) => {
        clear()
        go(placeAfter(kind, draft.product))
        const name = statement.name || (products.find(({ id }) => id === draft.product)?.name ?? 'It')
        tell({ sentence: say('bottle.added', { name }, writer) })
      },
    })
  }
  return (
    <Page
      title={TITLES[kind]}
      lead={say(`bottle.new.${kind}`, {}, writer)}
      actions={<ButtonLink href={placeAfter(kind, product)}>Leave it</ButtonLink>}
    >
      <Asked query={query}>
        {() =>
          kind === 'package' && products.length === 0 ? (
            <p className="row">
              <span>{say('bottle.choose-product', {}, writer)}</span>
              <ButtonLink href="/shelf/products">Keep a product</ButtonLink>
            </p>
          ) : (
            <form className="narrow" onSubmit={submit} noValidate>
              <ThingFields {...{ kind, draft, change, reading, tried, products }} />
              {add.isError && <Trouble fault={add.error} />}
              <div className="row">
                <Button type="submit" look="go" waits={add.isPending}>
                  Put it on the shelf
                </Button>
              </div>
            </form>
          )
        }
      </Asked>
    </Page>
  )
}

const placeAfter = (kind: Kind, product: string) =>
  kind === 'jug' ? '/shelf/waste' : kind === 'package' && product !== '' ? `/shelf/products/${product}` : '/shelf'
