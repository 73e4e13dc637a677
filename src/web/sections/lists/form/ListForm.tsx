import { type FormEvent, type ReactNode, useState } from 'react'
import { RECIPE_LIMITS } from '../../../../score/index.js'
import { say } from '../../../../words/index.js'
import type { RecipeStatementInput } from '../../../shared/api/index.js'
import { Button, Select, TextArea, TextField, useUnits, useWriter, Words } from '../../../shared/ui/index.js'
import { PROCESSES } from '../kinds.js'
import { AddStep } from './AddStep.js'
import type { ListDraft } from './draft.js'
import { countWrong, readList, WHOLE_LIST } from './readList.js'
import { StepRow } from './StepRow.js'
import { useSteps } from './useSteps.js'

interface ListFormProps {
  readonly draft: ListDraft
  readonly change: (part: Partial<ListDraft>) => void
  readonly onKeep: (statement: RecipeStatementInput) => void
  readonly keepWords: string
  readonly waits: boolean
  readonly children?: ReactNode
}

/** A list of baths to type: what it is called, and its steps in their order. */
export function ListForm({ draft, change, onKeep, keepWords, waits, children }: ListFormProps) {
  const writer = useWriter()
  const units = useUnits()
  const [tried, setTried] = useState(false)
  const reading = readList(draft, units)
  const steps = useSteps(draft, change)
  const keep = (event: FormEvent) => {
    event.preventDefault()
    setTried(true)
    if (reading.statement !== null && !waits) onKeep(reading.statement)
  }
  return (
    <form onSubmit={keep} noValidate className="list-form">
      <About draft={draft} change={change} />
      <section>
        <h2>Steps</h2>
        <ol className="step-rows">
          {draft.steps.map((step, place) => (
            <StepRow
              key={step.id}
              step={step}
              place={place + 1}
              of={draft.steps.length}
              reading={reading.steps[place]}
              troubles={reading.troubles.get(place) ?? []}
              steps={steps}
            />
          ))}
        </ol>
        <AddStep steps={draft.steps} onAdd={steps.add} />
      </section>
      {(reading.troubles.get(WHOLE_LIST) ?? []).map((sentence) => (
        <p key={sentence} className="trouble" role="status">
          <Words>{sentence}</Words>
        </p>
      ))}
      {children}
      <div className="row">
        <Button type="submit" look="go" waits={waits}>
          {keepWords}
        </Button>
      </div>
      <p role="alert" className="form-said">
        {tried && reading.statement === null && say('list.wrong', { count: countWrong(reading) }, writer)}
      </p>
    </form>
  )
}

const About = ({ draft, change }: Pick<ListFormProps, 'draft' | 'change'>) => (
  <>
    <TextField
      label="Name of the list"
      value={draft.name}
      onText={(name) => change({ name })}
      maxLength={RECIPE_LIMITS.name.most}
    />
    <Select
      label="What it makes"
      value={draft.process}
      options={PROCESSES}
      onValue={(process) => change({ process })}
    />
    <TextArea
      label="When to choose it"
      className="words"
      rows={2}
      value={draft.about}
      onText={(about) => change({ about })}
      maxLength={2000}
    />
  </>
)
