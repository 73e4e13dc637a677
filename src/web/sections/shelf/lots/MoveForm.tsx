import { type FormEvent, useState } from 'react'
import { say } from '../../../../words/index.js'
import type { MovePortionInput, OnShelf } from '../../../shared/api/index.js'
import { movePortion, useShelf } from '../../../shared/desk/index.js'
import { Button, ButtonLink, Select, Trouble, useWriter } from '../../../shared/ui/index.js'
import { AmountField, useVolume } from './AmountField.js'
import { usePosting } from './usePosting.js'

/** A portion goes into an empty bottle or into one of the same lot. */
export function MoveForm({ one }: { one: OnShelf }) {
  const writer = useWriter()
  const bottles = useShelf().data?.bottles ?? []
  const free = bottles.filter(({ id, lot_id }) => id !== one.id && (lot_id === null || lot_id === one.lot_id))
  const [chosen, setInto] = useState('')
  const into = free.find(({ id }) => id === chosen) ?? free[0]
  const [amount, setAmount] = useState('')
  const reading = useVolume(amount)
  const { post, isPending, fault } = usePosting((asked: MovePortionInput) => movePortion(asked))
  if (into === undefined)
    return (
      <p className="row">
        <span>{say('lot.move.none', {}, writer)}</span>
        <ButtonLink href="/shelf/things/new?kind=bottle">Add a bottle</ButtonLink>
      </p>
    )
  const submit = (event: FormEvent) => {
    event.preventDefault()
    if (isPending || (reading !== null && reading.kind !== 'read')) return
    const asked = { from_id: one.id, into_id: into.id, amount: reading?.kind === 'read' ? reading.value : null }
    post(
      asked,
      () => say('lot.moved', { name: into.statement.name }, writer),
      () => setAmount(''),
    )
  }
  return (
    <form onSubmit={submit} noValidate>
      <Select
        label="Into"
        hint={say('lot.move.into', {}, writer)}
        value={into.id}
        options={free.map(({ id, statement }) => [id, statement.name] as const)}
        onValue={setInto}
      />
      <AmountField label="How much" hint={say('lot.amount-hint', {}, writer)} text={amount} onText={setAmount} />
      {fault && <Trouble fault={fault} />}
      <div className="row">
        <Button type="submit" waits={isPending}>
          Book the pour
        </Button>
      </div>
    </form>
  )
}
