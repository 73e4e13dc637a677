import type { TakenProcess, TakenRemark } from '../../../../planning/index.js'
import { say } from '../../../../words/index.js'
import { Select, TextArea, TextField, useWriter } from '../../../shared/ui/index.js'
import type { RollDraft, RollReading } from './draft.js'

const REMARKS: readonly TakenRemark[] = ['found', 'expired', 'infrared', 'carbon-backing', 'chromogenic']
const PROCESSES: readonly (readonly [TakenProcess | '', string])[] = [
  ['', 'as the film says, else black-and-white'],
  ['black-and-white', 'black-and-white'],
  ['colour-negative', 'colour negative'],
  ['colour-reversal', 'colour slide'],
]
/** What is only missing is not said before the form was tried. */
const SAID_LATE = ['film', 'format']

interface RollFieldsProps {
  readonly draft: RollDraft
  readonly change: (part: Partial<RollDraft>) => void
  readonly reading: RollReading
  readonly tried: boolean
  readonly films: readonly string[]
}

/** What is known of a roll, but whose it is. */
export function RollFields({ draft, change, reading, tried, films }: RollFieldsProps) {
  const writer = useWriter()
  const said = (field: string, text: string) => ({
    echo: reading.echoes[field],
    trouble:
      tried || (text.trim() !== '' && !SAID_LATE.includes(field)) || (field === 'format' && text.length > 3)
        ? reading.troubles[field]
        : null,
  })
  return (
    <>
      <div className="form-pair">
        <TextField
          label="Film"
          value={draft.film}
          onText={(film) => change({ film })}
          list="films-known"
          maxLength={120}
          {...said('film', draft.film)}
        />
        <TextField
          label="Format and length"
          hint="Such as 135-36, 120 or 12 sheets 4×5."
          value={draft.format}
          onText={(format) => change({ format })}
          {...said('format', draft.format)}
        />
        <TextField
          label="Exposed at index"
          hint="Empty when nobody knows."
          value={draft.index}
          onText={(index) => change({ index })}
          inputMode="numeric"
          {...said('exposure_index', draft.index)}
        />
        <TextField
          label="What is wanted"
          hint={say('rolls.form.wanted-hint', {}, writer)}
          value={draft.wanted}
          onText={(wanted) => change({ wanted })}
          {...said('treatment', draft.wanted)}
        />
        <TextField
          label="When it was exposed"
          hint={say('rolls.form.exposed-hint', {}, writer)}
          value={draft.exposed}
          onText={(exposed) => change({ exposed })}
          {...said('exposed', draft.exposed)}
        />
        <TextField
          label="Due by"
          hint="Such as 3 May or in 2 weeks."
          value={draft.due}
          onText={(due) => change({ due })}
          {...said('due', draft.due)}
        />
      </div>
      <datalist id="films-known">
        {films.map((name) => (
          <option key={name} value={name} />
        ))}
      </datalist>
      <fieldset className="choices remarks">
        <legend>Remarks</legend>
        {REMARKS.map((remark) => (
          <label key={remark}>
            <input
              type="checkbox"
              checked={draft.remarks.includes(remark)}
              onChange={(event) => change({ remarks: toggled(draft.remarks, remark, event.target.checked) })}
            />
            <span>{say('rolls.remark', { remark }, writer)}</span>
          </label>
        ))}
      </fieldset>
      {draft.remarks.includes('expired') && (
        <TextField
          label="Expired since"
          hint="Such as 1998."
          value={draft.expired}
          onText={(expired) => change({ expired })}
          {...said('expired_since', draft.expired)}
        />
      )}
      <Select label="Chemistry" value={draft.process} options={PROCESSES} onValue={(process) => change({ process })} />
      {reading.troubles.process && (tried || draft.process !== '') && (
        <p className="trouble">{reading.troubles.process}</p>
      )}
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

const toggled = (remarks: readonly TakenRemark[], remark: TakenRemark, on: boolean): TakenRemark[] =>
  on ? [...remarks, remark] : remarks.filter((one) => one !== remark)
