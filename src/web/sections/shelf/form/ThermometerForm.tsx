import { type FormEvent, type ReactNode, useState } from 'react'
import {
  type Celsius,
  celsius,
  type Reading,
  readTemperature,
  type UnitSystem,
  writeTemperature,
} from '../../../../kernel/index.js'
import { checkIsPossible } from '../../../../science/index.js'
import type { ThermometerStatement } from '../../../../wire/index.js'
import { say } from '../../../../words/index.js'
import {
  Button,
  QuantityField,
  Select,
  TextArea,
  TextField,
  useUnits,
  useWriter,
  Words,
} from '../../../shared/ui/index.js'
import { KINDS } from '../kinds.js'

export interface ThermometerDraft {
  readonly name: string
  readonly kind: ThermometerStatement['kind']
  readonly low: string
  readonly high: string
  readonly note: string
}
export const EMPTY_THERMOMETER: ThermometerDraft = { name: '', kind: 'spirit', low: '', high: '', note: '' }

export const draftOf = (stated: ThermometerStatement, units: UnitSystem): ThermometerDraft => ({
  name: stated.name,
  kind: stated.kind,
  low: writeTemperature(celsius(stated.scale_low_c), units),
  high: writeTemperature(celsius(stated.scale_high_c), units),
  note: stated.note,
})

interface ThermometerFormProps {
  readonly draft: ThermometerDraft
  readonly change: (part: Partial<ThermometerDraft>) => void
  readonly onKeep: (statement: ThermometerStatement) => void
  readonly keepWords: string
  readonly waits: boolean
  readonly children?: ReactNode
}

export function ThermometerForm({ draft, change, onKeep, keepWords, waits, children }: ThermometerFormProps) {
  const units = useUnits()
  const writer = useWriter()
  const [tried, setTried] = useState(false)
  // A scale may well begin at −10 and end at 110, so a bare number here is never doubted.
  const low = readEnd(draft.low, units)
  const high = readEnd(draft.high, units)
  const scale = low?.kind === 'read' && high?.kind === 'read' ? checkIsPossible('entered', low.value, high.value) : null
  const missing = say('shelf.missing', {}, writer)
  const keep = (event: FormEvent) => {
    event.preventDefault()
    setTried(true)
    if (draft.name.trim() === '' || low?.kind !== 'read' || high?.kind !== 'read' || !scale?.ok || waits) return
    const stated = { name: draft.name.trim(), kind: draft.kind, note: draft.note }
    onKeep({ ...stated, scale_low_c: low.value, scale_high_c: high.value })
  }
  const end = (label: string, field: 'low' | 'high', reading: Reading<Celsius> | null, trouble: string | null) => (
    <QuantityField
      label={label}
      text={draft[field]}
      onText={(text) => change({ [field]: text })}
      reading={reading}
      write={(value) => writeTemperature(value, units)}
      trouble={trouble ?? (tried && draft[field].trim() === '' ? missing : null)}
      strict={tried}
    />
  )
  return (
    <form onSubmit={keep} noValidate className="narrow">
      <TextField
        label="Name"
        hint="What is written on it, or where it hangs."
        value={draft.name}
        onText={(name) => change({ name })}
        maxLength={120}
        trouble={tried && draft.name.trim() === '' ? missing : null}
      />
      <Select label="Kind" value={draft.kind} options={KINDS} onValue={(kind) => change({ kind })} />
      <div className="form-pair">
        {end('Its scale begins at', 'low', low, null)}
        {end('Its scale ends at', 'high', high, null)}
      </div>
      {scale && !scale.ok && (
        <p className="trouble" role="status">
          <Words>{scale.problem.sentence}</Words>
        </p>
      )}
      <TextArea
        label="Note"
        className="words"
        rows={2}
        value={draft.note}
        onText={(note) => change({ note })}
        maxLength={4000}
      />
      {children}
      <div className="row">
        <Button type="submit" look="go" waits={waits}>
          {keepWords}
        </Button>
      </div>
    </form>
  )
}

/** A bare end of a scale is in the bench's unit, however large. */
function readEnd(text: string, units: UnitSystem): Reading<Celsius> | null {
  if (text.trim() === '') return null
  const bare = /^[-−+]?\s*[\d.,]+\s*°?$/.test(text.trim())
  return readTemperature(bare ? `${text} ${units === 'us' ? 'F' : 'C'}` : text, {
    system: units,
    what: 'an end of the scale',
  })
}
