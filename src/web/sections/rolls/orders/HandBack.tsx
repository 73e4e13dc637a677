import { type FormEvent, useState } from 'react'
import { say } from '../../../../words/index.js'
import { type OrderRecord, useWrite } from '../../../shared/api/index.js'
import { handBack } from '../../../shared/desk/index.js'
import { Button, TextField, Trouble, useTell, useWriter } from '../../../shared/ui/index.js'

/** Counts the rolls out. The count is typed blind of the list: a mismatch stops everything, in a sentence. */
export function HandBack({ order }: { order: OrderRecord }) {
  const writer = useWriter()
  const tell = useTell()
  const [text, setText] = useState('')
  const [trouble, setTrouble] = useState<string | null>(null)
  const back = useWrite((counted: number) => handBack(order.id, { counted_out: counted }), 'orders', 'rolls')
  const submit = (event: FormEvent) => {
    event.preventDefault()
    if (back.isPending) return
    const typed = text.trim()
    const read = /^\d{1,3}$/.test(typed) && Number(typed) <= 500
    setTrouble(read ? null : say('order.count-unread', { text: typed }, writer))
    if (!read) return
    back.mutate(Number(typed), {
      onSuccess: () =>
        tell({ sentence: say('order.handed-back', { person: order.person, count: Number(typed) }, writer) }),
    })
  }
  return (
    <section>
      <h2>Hand it back</h2>
      <form className="step-form" onSubmit={submit} noValidate>
        <TextField
          label="Rolls counted out"
          hint="Count what lies in front of you."
          value={text}
          onText={setText}
          inputMode="numeric"
          trouble={trouble}
        />
        <Button type="submit" look="go" waits={back.isPending}>
          Hand back
        </Button>
        {back.isError && <Trouble fault={back.error} />}
      </form>
    </section>
  )
}
