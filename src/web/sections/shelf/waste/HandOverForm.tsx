import { type FormEvent, useState } from 'react'
import { say } from '../../../../words/index.js'
import type { HandOverInput } from '../../../shared/api/index.js'
import { handOver } from '../../../shared/desk/index.js'
import { Button, TextField, Trouble, useWriter } from '../../../shared/ui/index.js'
import { AmountField, useVolume } from '../lots/AmountField.js'
import { usePosting } from '../lots/usePosting.js'
import type { Jug } from '../stand/Jugs.js'

/** A jug, or a part of it, is given to whoever takes it. */
export function HandOverForm({ jug }: { jug: Jug }) {
  const writer = useWriter()
  const [to, setTo] = useState('')
  const [amount, setAmount] = useState('')
  const [note, setNote] = useState('')
  const [tried, setTried] = useState(false)
  const reading = useVolume(amount)
  const { post, isPending, fault } = usePosting((asked: HandOverInput) => handOver(asked))
  const submit = (event: FormEvent) => {
    event.preventDefault()
    setTried(true)
    const receiver = to.trim()
    if (isPending || receiver === '' || (reading !== null && reading.kind !== 'read')) return
    post({ jug_id: jug.id, to: receiver, ml: reading?.kind === 'read' ? reading.value : null, note }, () =>
      say('jugs.handed-over', { name: jug.name, to: receiver }, writer),
    )
  }
  return (
    <form className="narrow" onSubmit={submit} noValidate>
      <TextField
        label="Handed over to"
        hint={say('jugs.hand-over.to', {}, writer)}
        value={to}
        onText={setTo}
        maxLength={120}
        trouble={tried && to.trim() === '' ? say('bottle.missing', {}, writer) : null}
      />
      <AmountField label="How much" hint={say('lot.amount-hint', {}, writer)} text={amount} onText={setAmount} />
      <TextField label="Note" hint="A receipt number, for example." value={note} onText={setNote} maxLength={4000} />
      {fault && <Trouble fault={fault} />}
      <div className="row">
        <Button type="submit" waits={isPending}>
          Note the hand-over
        </Button>
      </div>
    </form>
  )
}
