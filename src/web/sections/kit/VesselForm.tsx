import { type FormEvent, type ReactNode, useState } from 'react'
import { say } from '../../../words/index.js'
import type { VesselStatementInput } from '../../shared/api/index.js'
import { Button, Choices, Select, TextArea, TextField, useUnits, useWriter } from '../../shared/ui/index.js'
import { readVessel, type VesselDraft, type VesselTroubles } from './readVessel.js'

interface VesselFormProps {
  readonly draft: VesselDraft
  readonly change: (part: Partial<VesselDraft>) => void
  readonly keepWords: string
  readonly waits: boolean
  readonly onKeep: (statement: VesselStatementInput) => void
  readonly children?: ReactNode
}

const KINDS = [
  ['tank', 'a tank'],
  ['reel', 'a reel'],
  ['graduate', 'a graduate'],
  ['syringe', 'a syringe'],
] as const

/** A tank, a reel, a graduate or a syringe; what is asked depends on which. */
export function VesselForm({ draft, change, keepWords, waits, onKeep, children }: VesselFormProps) {
  const units = useUnits()
  const [tried, setTried] = useState(false)
  const reading = readVessel(draft, units)
  const troubles: VesselTroubles = tried && reading.statement === null ? reading.troubles : {}
  const keep = (event: FormEvent) => {
    event.preventDefault()
    setTried(true)
    if (reading.statement !== null && !waits) onKeep(reading.statement)
  }
  return (
    <form onSubmit={keep} noValidate className="narrow">
      <Select label="What it is" value={draft.kind} options={KINDS} onValue={(kind) => change({ kind })} />
      <TextField
        label="Name"
        value={draft.name}
        onText={(name) => change({ name })}
        maxLength={120}
        trouble={troubles.name}
      />
      {draft.kind === 'tank' && <TankFields draft={draft} change={change} troubles={troubles} />}
      {draft.kind === 'reel' && <ReelFields draft={draft} change={change} troubles={troubles} />}
      {(draft.kind === 'graduate' || draft.kind === 'syringe') && (
        <div className="form-pair">
          <TextField
            label="Holds"
            hint="Such as 600 mL."
            value={draft.volume}
            onText={(volume) => change({ volume })}
            trouble={troubles.volume}
          />
          <TextField
            label="Marked every"
            hint="Such as 10 mL."
            value={draft.marks}
            onText={(marks) => change({ marks })}
            trouble={troubles.marks}
          />
        </div>
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

type FieldsProps = Pick<VesselFormProps, 'draft' | 'change'> & { troubles: VesselTroubles }

function Material({ draft, change }: Pick<VesselFormProps, 'draft' | 'change'>) {
  return (
    <Select
      label="Made of"
      value={draft.material}
      options={[
        ['plastic', 'plastic'],
        ['steel', 'steel'],
        ['glass', 'glass'],
      ]}
      onValue={(material) => change({ material })}
    />
  )
}

function TankFields({ draft, change, troubles }: FieldsProps) {
  const writer = useWriter()
  return (
    <>
      <TextArea
        label="What it holds, and how much covers that"
        hint={say('kit.holds', {}, writer)}
        rows={4}
        value={draft.holds}
        onText={(holds) => change({ holds })}
        maxLength={4000}
        trouble={troubles.holds}
      />
      <Choices
        legend="How it is moved"
        value={draft.moved}
        options={[
          ['inversion', 'turned over by hand'],
          ['rotary', 'rolled by a machine'],
        ]}
        onValue={(moved) => change({ moved })}
      />
      <div className="form-pair">
        <Material draft={draft} change={change} />
        <TextField
          label="Its own warmth"
          hint={say('kit.warmth', {}, writer)}
          value={draft.warmth}
          onText={(warmth) => change({ warmth })}
          trouble={troubles.warmth}
        />
        <TextField
          label="Time constant"
          hint={say('kit.constant', {}, writer)}
          value={draft.constant}
          onText={(constant) => change({ constant })}
          trouble={troubles.constant}
        />
      </div>
    </>
  )
}

function ReelFields({ draft, change, troubles }: FieldsProps) {
  return (
    <div className="form-pair">
      <TextField
        label="Formats"
        hint="Such as 135, 120."
        value={draft.formats}
        onText={(formats) => change({ formats })}
        trouble={troubles.formats}
      />
      <Material draft={draft} change={change} />
    </div>
  )
}
