import { type FormEvent, useState } from 'react'
import { say } from '../../../../words/index.js'
import { type ChangeRollsInput, changeRolls, type RollSummary, useWrite } from '../../../shared/api/index.js'
import { Button, Select, TextField, Trouble, useWriter } from '../../../shared/ui/index.js'
import { useKnown } from '../form/useKnown.js'
import { CHANGES, type Changed, readChange } from './readChange.js'
import { useBatch } from './useBatch.js'

/** The same words changed on all these rolls, or on none; one Undo takes all of it back. */
export function ChangeForm({ rolls, onDone }: { rolls: readonly RollSummary[]; onDone: () => void }) {
  const writer = useWriter()
  const known = useKnown()
  const { told } = useBatch()
  const [what, setWhat] = useState<Changed>('due')
  const [text, setText] = useState('')
  const [trouble, setTrouble] = useState<string | null>(null)
  const change = useWrite((asked: ChangeRollsInput) => changeRolls(asked), 'rolls')
  const submit = (event: FormEvent) => {
    event.preventDefault()
    if (change.isPending) return
    const read = readChange(what, text, known)
    setTrouble(read.ok ? null : read.problem.sentence)
    if (!read.ok) return
    change.mutate(
      { roll_ids: rolls.map(({ id }) => id), change: read.value },
      {
        onSuccess: (batch) => {
          const number = batch.rolls[0]?.number ?? ''
          told(batch, say('rolls.changed', { count: batch.rolls.length, number }, writer))
          onDone()
        },
      },
    )
  }
  return (
    <details>
      <summary>Change something on all of them</summary>
      <form className="step-form" onSubmit={submit} noValidate>
        <Select
          label="What"
          value={what}
          options={CHANGES.map(([value, words]) => [value, words] as const)}
          onValue={(value) => {
            setWhat(value)
            setTrouble(null)
          }}
        />
        <TextField
          label="To"
          hint={`Such as ${CHANGES.find(([value]) => value === what)?.[2]}.`}
          value={text}
          onText={setText}
          trouble={trouble}
          maxLength={120}
        />
        <Button type="submit" waits={change.isPending}>
          Change them
        </Button>
        {change.isError && <Trouble fault={change.error} />}
      </form>
    </details>
  )
}
