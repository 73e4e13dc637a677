import { writeMass, writeRatio, writeTemperature, writeVolume } from '../../../../kernel/index.js'
import { PUBLISHED_SWAPS, SALTS } from '../../../../science/index.js'
import { say } from '../../../../words/index.js'
import type { OnShelf, ProductRecord } from '../../../shared/api/index.js'
import { QuantityField, Select, TextField, useUnits, useWriter } from '../../../shared/ui/index.js'
import type { MixDraft, MixReading } from './draft.js'
import { type MixLine, packagesFor } from './plan.js'

interface MixFieldsProps {
  readonly draft: MixDraft
  readonly change: (part: Partial<MixDraft>) => void
  readonly reading: MixReading
  readonly products: readonly ProductRecord[]
  readonly product: ProductRecord
  readonly packages: readonly OnShelf[]
  readonly lines: readonly MixLine[]
  readonly from: ReadonlyMap<string, OnShelf | null>
  readonly empty: readonly OnShelf[]
  readonly chosen: readonly OnShelf[]
}

/** What, how much, from where and into which bottle. */
export function MixFields(props: MixFieldsProps) {
  const { draft, change, reading, products, product } = props
  const writer = useWriter()
  const units = useUnits()
  const byRatio = product.formula === null && product.form === 'liquid'
  return (
    <form onSubmit={(event) => event.preventDefault()} noValidate>
      <Select
        label="What"
        value={product.id}
        options={products.map(({ id, name }) => [id, name] as const)}
        onValue={(id) => change({ product: id, ratio: '', from: {}, instead: {} })}
      />
      <QuantityField
        label="How much"
        text={draft.volume}
        onText={(volume) => change({ volume })}
        reading={reading.volume}
        write={(value) => writeVolume(value, units)}
      />
      {byRatio && (
        <QuantityField
          label="Dilution"
          hint={say(
            'mix.ratio-hint',
            { known: product.dilutions.map((parts) => writeRatio({ parts })).join(' and ') },
            writer,
          )}
          text={draft.ratio}
          onText={(ratio) => change({ ratio })}
          reading={reading.ratio}
          write={(value) => writeRatio(value)}
        />
      )}
      {product.floor_ml_per_roll !== null && (
        <TextField
          label="For how many rolls"
          hint={say('mix.rolls-hint', {}, writer)}
          value={draft.rolls}
          onText={(rolls) => change({ rolls })}
          inputMode="decimal"
        />
      )}
      <div className="form-pair">
        {(['hot', 'cold'] as const).map((tap) => (
          <QuantityField
            key={tap}
            label={tap === 'hot' ? 'Hot tap' : 'Cold tap'}
            hint={say('mix.tap-hint', {}, writer)}
            text={draft[tap]}
            onText={(text) => change({ [tap]: text })}
            reading={reading[tap]}
            write={(value) => writeTemperature(value, units)}
          />
        ))}
      </div>
      {product.formula !== null && (
        <QuantityField
          label="Step of the scale"
          hint={say('mix.scale-hint', {}, writer)}
          text={draft.scale}
          onText={(scale) => change({ scale })}
          reading={reading.scale}
          write={(value) => writeMass(value, units)}
        />
      )}
      <Sources {...props} />
      <Bottles {...props} />
    </form>
  )
}

/** Where each thing comes from, and for a salt also which of its forms is at hand. */
function Sources({ draft, change, product, packages, lines, from }: MixFieldsProps) {
  const writer = useWriter()
  const formula = product.formula
  return (
    <>
      {formula?.additions
        .filter(({ g_per_l }) => g_per_l !== null)
        .map(({ salt }) => {
          const others = formsOf(salt)
          if (others.length < 2) return null
          return (
            <Select
              key={`form-${salt}`}
              label={`At hand for ${nameOfSalt(salt)}`}
              value={draft.instead[salt] ?? salt}
              options={others.map((id) => [id, nameOfSalt(id)] as const)}
              onValue={(id) => change({ instead: withInstead(draft.instead, salt, id) })}
            />
          )
        })}
      {lines.map((line) => {
        const choices = packagesFor(line, product, packages)
        if (choices.length === 0) return null
        return (
          <Select
            key={line.key}
            label={`${line.name} from`}
            value={from.get(line.key)?.id ?? 'none'}
            options={[
              ...choices.map(
                ({ id, statement, product: name, held, unit }) =>
                  [
                    id,
                    say('mix.package', { name: statement.name || name, held, unit }, writer).replaceAll('\u202f', ' '),
                  ] as const,
              ),
              ['none', say('mix.not-taken', {}, writer)],
            ]}
            onValue={(id) => change({ from: { ...draft.from, [line.key]: id } })}
          />
        )
      })}
    </>
  )
}

const nameOfSalt = (salt: string) => SALTS.find(({ id }) => id === salt)?.name ?? salt

/** A salt with its other hydrates and what the trade swaps it for. */
function formsOf(salt: string): string[] {
  const family = SALTS.find(({ id }) => id === salt)?.family
  const same = SALTS.filter((one) => one.family === family).map(({ id }) => id)
  return [
    ...new Set([salt, ...same, ...PUBLISHED_SWAPS.flatMap(({ wanted, have }) => (wanted === salt ? [have] : []))]),
  ]
}

function withInstead(instead: MixDraft['instead'], wanted: string, have: string): MixDraft['instead'] {
  const { [wanted]: _, ...rest } = instead
  return have === wanted ? rest : { ...rest, [wanted]: have }
}

/** Empty bottles that it may go into; they are filled in this order. */
function Bottles({ change, empty, chosen }: MixFieldsProps) {
  const writer = useWriter()
  if (empty.length === 0) return null
  const ids = chosen.map(({ id }) => id)
  return (
    <fieldset className="choices">
      <legend>Into</legend>
      {empty.map(({ id, statement }) => (
        <label key={id}>
          <input
            type="checkbox"
            checked={ids.includes(id)}
            onChange={() => change({ into: ids.includes(id) ? ids.filter((one) => one !== id) : [...ids, id] })}
          />
          <span>
            {statement.name}
            {statement.kind === 'bottle' &&
              ` (${say('bottle.amount', { held: statement.holds_ml, unit: 'ml' }, writer).replaceAll('\u202f', ' ')})`}
          </span>
        </label>
      ))}
    </fieldset>
  )
}
