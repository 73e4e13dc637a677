import { SALTS } from '../../../../science/index.js'
import { say } from '../../../../words/index.js'
import type { ProductRecord } from '../../../shared/api/index.js'
import { DEVELOPER_CLASS_CHOICES } from '../../../shared/figures/index.js'
import { Select, TextArea, TextField, useWriter } from '../../../shared/ui/index.js'
import { FIGURES, KEEPS, type ProductDraft, type ProductReading } from './draft.js'

const ROLES = [
  ['developer', 'developer'],
  ['stop', 'stop'],
  ['fixer', 'fixer'],
  ['wash-aid', 'wash aid'],
  ['wetting-agent', 'wetting agent'],
  ['toner', 'toner'],
  ['bleach', 'bleach'],
  ['cleaner', 'cleaner'],
  ['other', 'something else, a raw chemical'],
] as const
const USES = [
  ['reusable', 'poured back and used again'],
  ['single-use', 'used once, then gone'],
  ['replenished', 'replenished after each roll'],
] as const
const ORIGINS = [
  ['label', 'its label'],
  ['sheet', 'a printed sheet'],
  ['own', 'own measurements'],
  ['practice', 'common practice'],
  ['memory', 'memory'],
  ['assumption', 'assumed'],
] as const
const HAZARDS = [
  ['acid', 'acid'],
  ['strong-acid', 'strong acid'],
  ['caustic', 'caustic'],
  ['sensitiser', 'skin can become allergic'],
  ['irritant', 'irritant'],
  ['fumes', 'fumes'],
  ['oxidiser', 'oxidiser'],
  ['poison', 'poison'],
  ['flammable', 'flammable'],
] as const

interface ProductFieldsProps {
  readonly draft: ProductDraft
  readonly change: (part: Partial<ProductDraft>) => void
  readonly reading: ProductReading
  readonly tried: boolean
  readonly formula: ProductRecord['formula']
}

/** What a label says: at first sight what everything needs, the figures behind one line. */
export function ProductFields({ draft, change, reading, tried, formula }: ProductFieldsProps) {
  const { troubles } = reading
  return (
    <>
      <TextField
        label="Name"
        value={draft.name}
        onText={(name) => change({ name })}
        maxLength={120}
        trouble={tried ? troubles.name : null}
      />
      <div className="form-pair">
        <Select label="Role" value={draft.role} options={ROLES} onValue={(role) => change({ role })} />
        <Select label="Use" value={draft.use} options={USES} onValue={(use) => change({ use })} />
        <Select
          label="Comes as"
          value={draft.form}
          options={[
            ['liquid', 'a liquid'],
            ['powder', 'a powder'],
          ]}
          onValue={(form) => change({ form })}
        />
        <TextField
          label="Parts of a package"
          hint="Such as A, B; empty for one bottle or bag."
          value={draft.parts}
          onText={(parts) => change({ parts })}
        />
      </div>
      <TextField
        label="Dilutions"
        hint="Such as 1 + 4, 1 + 9. Empty where it is mixed by weight or used as it is."
        value={draft.dilutions}
        onText={(dilutions) => change({ dilutions })}
        trouble={troubles.dilutions}
      />
      <OfRole draft={draft} change={change} troubles={troubles} />
      {formula !== null && <Formula draft={draft} change={change} troubles={troubles} formula={formula} />}
      <Figures draft={draft} change={change} troubles={troubles} />
      <Cautions draft={draft} change={change} />
      <div className="form-pair">
        <Select
          label="Its figures are from"
          value={draft.origin}
          options={ORIGINS}
          onValue={(origin) => change({ origin })}
        />
        <TextField
          label="Source"
          hint="Which sheet, and of when."
          value={draft.source}
          onText={(source) => change({ source })}
          maxLength={300}
        />
      </div>
      <TextArea label="Note" className="words" rows={2} value={draft.note} onText={(note) => change({ note })} />
    </>
  )
}

type Part = Pick<ProductFieldsProps, 'draft' | 'change'> & { readonly troubles: ProductReading['troubles'] }

function OfRole({ draft, change, troubles }: Part) {
  switch (draft.role) {
    case 'fixer':
      return (
        <div className="form-pair">
          <Select
            label="What fixes in it"
            value={draft.salt}
            options={[
              ['', 'not known'],
              ['ammonium-thiosulfate', 'ammonium thiosulfate'],
              ['sodium-thiosulfate', 'sodium thiosulfate (hypo)'],
            ]}
            onValue={(salt) => change({ salt })}
          />
          <Select
            label="Acid or not"
            value={draft.alkaline ? 'alkaline' : 'acid'}
            options={[
              ['acid', 'acid'],
              ['alkaline', 'neutral or alkaline'],
            ]}
            onValue={(kind) => change({ alkaline: kind === 'alkaline' })}
          />
        </div>
      )
    case 'stop':
      return (
        <div className="form-pair">
          <Select
            label="Its acid"
            value={draft.acid}
            options={[
              ['', 'not known'],
              ['acetic', 'acetic'],
              ['citric', 'citric'],
            ]}
            onValue={(acid) => change({ acid })}
          />
          <TextField
            label="Acid in the bath, in per cent"
            value={draft.percent}
            onText={(percent) => change({ percent })}
            inputMode="decimal"
            trouble={troubles.percent}
          />
        </div>
      )
    case 'developer':
      return (
        <Select
          label="What it develops with"
          value={draft.developerClass}
          options={DEVELOPER_CLASS_CHOICES}
          onValue={(developerClass) => change({ developerClass })}
        />
      )
    default:
      return null
  }
}

function Formula({ draft, change, troubles, formula }: Part & { formula: NonNullable<ProductRecord['formula']> }) {
  const writer = useWriter()
  return (
    <fieldset className="points">
      <legend>Mixed by weight, for a litre</legend>
      <p className="small">{say('product.formula', { from: draft.origin }, writer)}</p>
      <div className="form-pair">
        {formula.additions.map(({ salt, ml_per_l, percent }, place) => (
          <TextField
            key={salt}
            label={`${SALTS.find(({ id }) => id === salt)?.name ?? salt}${percent === null ? '' : ` of ${percent} %`}, in ${ml_per_l === null ? 'g' : 'mL'}`}
            value={draft.amounts[place] ?? ''}
            onText={(text) =>
              change({ amounts: formula.additions.map((_, at) => (at === place ? text : (draft.amounts[at] ?? ''))) })
            }
            inputMode="decimal"
            trouble={troubles[`amount-${place}`]}
          />
        ))}
      </div>
    </fieldset>
  )
}

function Figures({ draft, change, troubles }: Part) {
  const writer = useWriter()
  const known = [...Object.values(draft.figures), ...Object.values(draft.keeps)].some((text) => text !== '')
  return (
    <details open={known || undefined}>
      <summary>What a litre carries, and how long it keeps</summary>
      <p className="small">{say('product.figures', {}, writer)}</p>
      <div className="form-pair">
        {FIGURES.filter(([name]) => name !== 'replenish_ml_per_roll' || draft.use === 'replenished').map(
          ([name, label, hint]) => (
            <TextField
              key={name}
              label={label}
              hint={hint}
              value={draft.figures[name] ?? ''}
              onText={(text) => change({ figures: { ...draft.figures, [name]: text } })}
              inputMode="decimal"
              trouble={troubles[name]}
            />
          ),
        )}
        {KEEPS.map(([name, label]) => (
          <TextField
            key={name}
            label={label}
            value={draft.keeps[name] ?? ''}
            onText={(text) => change({ keeps: { ...draft.keeps, [name]: text } })}
            inputMode="decimal"
            trouble={troubles[name]}
          />
        ))}
      </div>
    </details>
  )
}

function Cautions({ draft, change }: Pick<Part, 'draft' | 'change'>) {
  const writer = useWriter()
  return (
    <fieldset className="choices hazards">
      <legend>What its label warns of</legend>
      {HAZARDS.map(([hazard, words]) => (
        <label key={hazard}>
          <input
            type="checkbox"
            checked={draft.hazards.includes(hazard)}
            onChange={() =>
              change({
                hazards: draft.hazards.includes(hazard)
                  ? draft.hazards.filter((one) => one !== hazard)
                  : [...draft.hazards, hazard],
              })
            }
          />
          <span>{words}</span>
        </label>
      ))}
      <p className="small">{say('product.care', {}, writer)}</p>
    </fieldset>
  )
}
