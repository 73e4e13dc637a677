import { type FormEvent, useState } from 'react'
import { say } from '../../../../words/index.js'
import { type MoveRollsInput, moveRolls, type RollSummary, useWrite } from '../../../shared/api/index.js'
import { Button, Select, TextField, Trouble, useWriter } from '../../../shared/ui/index.js'
import { MISHAPS, type State, stateWord, stepsFrom } from '../states.js'
import { useBatch } from './useBatch.js'

/** The next step on the way of these rolls: all of them take it, or none. */
export function StepForm({ rolls, onDone }: { rolls: readonly RollSummary[]; onDone?: () => void }) {
  const writer = useWriter()
  const { told } = useBatch()
  const steps = commonSteps(rolls)
  const [wanted, setWanted] = useState<State | null>(null)
  const [hook, setHook] = useState('')
  const [reason, setReason] = useState('')
  const move = useWrite((asked: MoveRollsInput) => moveRolls(asked), 'rolls')
  const state = wanted !== null && steps.includes(wanted) ? wanted : steps[0]
  if (state === undefined) return null
  const mishap = MISHAPS.includes(state)
  const submit = (event: FormEvent) => {
    event.preventDefault()
    if (move.isPending) return
    const asked = {
      roll_ids: rolls.map(({ id }) => id),
      state,
      hook: state === 'hung' ? hook.trim() : '',
      reason: mishap ? reason.trim() : '',
    }
    move.mutate(asked, {
      onSuccess: (batch) => {
        setReason('')
        setWanted(null)
        const number = batch.rolls[0]?.number ?? ''
        told(batch, say('rolls.moved', { count: batch.rolls.length, number, state }, writer))
        onDone?.()
      },
    })
  }
  return (
    <form className="step-form" onSubmit={submit} noValidate>
      <Select
        label="Next step"
        value={state}
        options={steps.map((step) => [step, stateWord(step, writer)] as const)}
        onValue={setWanted}
      />
      {state === 'hung' && (
        <TextField label="Hook" hint="Such as: line 2, clip 4." value={hook} onText={setHook} maxLength={60} />
      )}
      {mishap && (
        <TextField
          label="What happened"
          hint={say('rolls.reason-hint', { state }, writer)}
          value={reason}
          onText={setReason}
          maxLength={4000}
        />
      )}
      <Button type="submit" look="go" waits={move.isPending}>
        Note the step
      </Button>
      {move.isError && <Trouble fault={move.error} />}
    </form>
  )
}

/** Steps that every one of the rolls can take. */
function commonSteps(rolls: readonly RollSummary[]): readonly State[] {
  const [first, ...rest] = rolls.map(({ state }) => stepsFrom(state))
  return (first ?? []).filter((step) => rest.every((steps) => steps.includes(step)))
}
