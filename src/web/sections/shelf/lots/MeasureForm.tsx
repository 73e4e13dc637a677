import { type FormEvent, useState } from 'react'
import { say } from '../../../../words/index.js'
import type { MeasureContentsInput, OnShelf } from '../../../shared/api/index.js'
import { measureContents } from '../../../shared/desk/index.js'
import { Button, Trouble, useWriter } from '../../../shared/ui/index.js'
import { AmountField, useVolume } from './AmountField.js'
import { usePosting } from './usePosting.js'

/** What was found by measuring, where the book says otherwise. */
export function MeasureForm({ one }: { one: OnShelf }) {
  const writer = useWriter()
  const [amount, setAmount] = useState('')
  const [tried, setTried] = useState(false)
  const reading = useVolume(amount)
  const { post, isPending, fault } = usePosting((asked: MeasureContentsInput) => measureContents(asked))
  const submit = (event: FormEvent) => {
    event.preventDefault()
    setTried(true)
    if (isPending || reading?.kind !== 'read') return
    post(
      { container_id: one.id, found: reading.value, seen: one.held },
      () => say('lot.measured', { name: one.statement.name }, writer),
      () => setAmount(''),
    )
  }
  return (
    <form onSubmit={submit} noValidate>
      <AmountField
        label="Found in it"
        text={amount}
        onText={setAmount}
        strict={tried}
        trouble={tried && amount.trim() === '' ? say('bottle.missing', {}, writer) : null}
      />
      {fault && <Trouble fault={fault} />}
      <div className="row">
        <Button type="submit" waits={isPending}>
          Book what was found
        </Button>
      </div>
    </form>
  )
}
