import { type FormEvent, type ReactNode, useState } from 'react'
import { writeRatio } from '../../../../kernel/index.js'
import type { TimeStatement } from '../../../../wire/index.js'
import { say } from '../../../../words/index.js'
import { Button, Choices, QuantityField, TextArea, TextField, useUnits, Words } from '../../../shared/ui/index.js'
import type { TimeDraft } from './draft.js'
import { MoreFields } from './MoreFields.js'
import { Points } from './Points.js'
import { readDraft } from './readDraft.js'

interface TimeFormProps {
  readonly draft: TimeDraft
  readonly change: (part: Partial<TimeDraft>) => void
  readonly onKeep: (statement: TimeStatement) => void
  readonly keepWords: string
  readonly waits: boolean
  readonly films: readonly string[]
  readonly developers: readonly string[]
  readonly children?: ReactNode
}

/** One developing time as it stands on the sheet. Every field says how it was read. */
export function TimeForm({ draft, change, onKeep, keepWords, waits, films, developers, children }: TimeFormProps) {
  const units = useUnits()
  const [tried, setTried] = useState(false)
  const reading = readDraft(draft, units)
  const trouble = (field: string) => (tried ? reading.troubles[field] : null)
  const keep = (event: FormEvent) => {
    event.preventDefault()
    setTried(true)
    if (reading.statement && !waits) onKeep(reading.statement)
  }
  return (
    <form onSubmit={keep} noValidate>
      <div className="form-pair">
        <TextField
          label="Film"
          value={draft.film}
          onText={(film) => change({ film })}
          list="films-kept"
          maxLength={120}
          trouble={trouble('film')}
        />
        <TextField
          label="Exposure index"
          hint="Leave it empty when the sheet gives none."
          value={draft.index}
          onText={(index) => change({ index })}
          inputMode="numeric"
          trouble={reading.troubles.index}
        />
        <TextField
          label="Developer"
          value={draft.developer}
          onText={(developer) => change({ developer })}
          list="developers-kept"
          maxLength={120}
          trouble={trouble('developer')}
        />
        <QuantityField
          label="Dilution"
          hint="Such as 1 + 3, or stock. Empty when it is not said."
          text={draft.dilution}
          onText={(dilution) => change({ dilution })}
          reading={reading.dilution}
          write={writeRatio}
          strict={tried}
        />
      </div>
      <Kept id="films-kept" names={films} />
      <Kept id="developers-kept" names={developers} />
      <Points draft={draft} change={change} reading={reading} tried={tried} />
      <Choices
        legend="What kind of developer is it?"
        value={draft.kind}
        options={[
          ['ordinary', 'Black-and-white: warmer is faster'],
          ['single-bath', 'A single bath that develops and fixes in one: only its own sheet counts'],
          ['fixed', 'Colour or a reversal first developer: one time at one temperature'],
        ]}
        onValue={(kind) => change({ kind })}
      />
      <TextField
        label="Agitation"
        hint="In the sheet’s words, such as: turn for 30 s, then 5 s each minute."
        value={draft.agitation}
        onText={(agitation) => change({ agitation })}
        maxLength={200}
      />
      <TextField
        label="Where it stands"
        hint="Such as: maker’s sheet of March 2025, page 2."
        value={draft.sourceWords}
        onText={(sourceWords) => change({ sourceWords })}
        maxLength={500}
      />
      <TextArea
        label="Note"
        className="words"
        rows={2}
        value={draft.note}
        onText={(note) => change({ note })}
        maxLength={4000}
      />
      <MoreFields draft={draft} change={change} reading={reading} />
      {children}
      <div className="row">
        <Button type="submit" look="go" waits={waits}>
          {keepWords}
        </Button>
      </div>
      <p role="alert" className="form-said">
        {tried && reading.wrong > 0 && <Words>{say('times.form.wants', { count: reading.wrong }, units)}</Words>}
      </p>
    </form>
  )
}

const Kept = ({ id, names }: { id: string; names: readonly string[] }) => (
  <datalist id={id}>
    {names.map((name) => (
      <option key={name} value={name} />
    ))}
  </datalist>
)
