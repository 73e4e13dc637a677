import { type Grams, type Millilitres, writeMass, writePartialDay, writeVolume } from '../../../../kernel/index.js'
import { say } from '../../../../words/index.js'
import type { ProductRecord } from '../../../shared/api/index.js'
import { QuantityField, Select, TextArea, TextField, useUnits, useWriter } from '../../../shared/ui/index.js'
import type { Kind, ThingDraft, ThingReading } from './draft.js'

interface ThingFieldsProps {
  readonly kind: Kind
  readonly draft: ThingDraft
  readonly change: (part: Partial<ThingDraft>) => void
  readonly reading: ThingReading
  readonly tried: boolean
  readonly products: readonly ProductRecord[]
  /** What it is of stays as it is: what was booked on it would no longer be true. */
  readonly kept?: boolean
}

const SHAPES = [
  ['stoppered', 'stoppered bottle: air stands over what is left'],
  ['collapsible', 'collapsible: pressed until no air is over it'],
  ['tank', 'tank or jar with a lid'],
  ['tray', 'open tray'],
] as const

export function ThingFields({ kind, draft, change, reading, tried, products, kept = false }: ThingFieldsProps) {
  const writer = useWriter()
  const units = useUnits()
  const missing = (text: string) => (tried && text.trim() === '' ? say('bottle.missing', {}, writer) : null)
  const ofPackage = kind === 'package'
  return (
    <>
      {ofPackage && !kept && <OfProduct draft={draft} change={change} products={products} missing={missing} />}
      <TextField
        label="Name"
        hint={ofPackage ? 'Empty for the product’s own name.' : 'What is written on it, such as Brown 1.'}
        value={draft.name}
        onText={(name) => change({ name })}
        maxLength={120}
        trouble={ofPackage ? null : missing(draft.name)}
      />
      {kind === 'bottle' && (
        <Select label="Kind" value={draft.shape} options={SHAPES} onValue={(shape) => change({ shape })} />
      )}
      <QuantityField
        label={ofPackage ? 'What it held when it was bought' : 'How much it can hold'}
        text={draft.amount}
        onText={(amount) => change({ amount })}
        reading={reading.amount}
        write={(value) =>
          ofPackage && draft.unit === 'g' ? writeMass(value as Grams, units) : writeVolume(value as Millilitres, units)
        }
        trouble={missing(draft.amount)}
        strict={tried}
      />
      {ofPackage && <Dates draft={draft} change={change} reading={reading} tried={tried} />}
      <TextArea
        label="Note"
        className="words"
        rows={2}
        value={draft.note}
        onText={(note) => change({ note })}
        maxLength={4000}
      />
    </>
  )
}

type Part = Pick<ThingFieldsProps, 'draft' | 'change'>

function OfProduct({
  draft,
  change,
  products,
  missing,
}: Part & Pick<ThingFieldsProps, 'products'> & { missing: (text: string) => string | null }) {
  const product = products.find(({ id }) => id === draft.product)
  const choose = (id: string) => {
    const chosen = products.find((one) => one.id === id)
    change({ product: id, part: chosen?.package_parts[0] ?? '', unit: chosen?.form === 'powder' ? 'g' : 'ml' })
  }
  return (
    <>
      <Select
        label="Product"
        value={draft.product}
        options={[['', 'choose one'], ...products.map(({ id, name }) => [id, name] as const)]}
        onValue={choose}
      />
      {missing(draft.product) && <p className="trouble">{missing(draft.product)}</p>}
      {product !== undefined && product.package_parts.length > 0 && (
        <Select
          label="Part"
          value={draft.part}
          options={product.package_parts.map((part) => [part, part] as const)}
          onValue={(part) => change({ part })}
        />
      )}
      <Select
        label="Counted in"
        value={draft.unit}
        options={[
          ['ml', 'millilitres'],
          ['g', 'grams'],
        ]}
        onValue={(unit) => change({ unit })}
      />
    </>
  )
}

function Dates({ draft, change, reading, tried }: Part & Pick<ThingFieldsProps, 'reading' | 'tried'>) {
  const writer = useWriter()
  const field = (label: string, name: 'bought' | 'useBy' | 'opened', hint?: string) => {
    const read = reading.days[name]
    return (
      <TextField
        label={label}
        {...(hint ? { hint } : {})}
        value={draft[name]}
        onText={(text) => change({ [name]: text })}
        echo={read?.kind === 'read' ? `read as ${writePartialDay(read.value)}` : null}
        trouble={read !== null && read.kind !== 'read' ? read.problem.sentence : null}
      />
    )
  }
  return (
    <div className="form-pair">
      {field('Use by', 'useBy', 'Such as 3 May 2027, when one is printed on it.')}
      {field('Opened', 'opened', 'Such as today; from then on it keeps for less.')}
      {field('Bought', 'bought')}
      <TextField
        label="Price"
        hint="Such as 14.50 EUR; it gives the cost of a roll."
        value={draft.price}
        onText={(price) => change({ price })}
        trouble={
          draft.price.trim() !== '' && reading.price === null && tried
            ? say('bottle.price-unread', { text: draft.price }, writer)
            : null
        }
      />
    </div>
  )
}
