import { type FormEvent, useState } from 'react'
import { writePartialDay } from '../../../../kernel/index.js'
import { readDue } from '../../../../planning/index.js'
import { say } from '../../../../words/index.js'
import { type OrderRecord, type OrderStatementInput, useWrite } from '../../../shared/api/index.js'
import { correctOrder, useRemoval, useWayBack } from '../../../shared/desk/index.js'
import { Button, TextArea, TextField, Trouble, useDraft, useWriter } from '../../../shared/ui/index.js'
import { countIn } from '../form/order.js'
import { useKnown } from '../form/useKnown.js'
import { keptOrder } from './keptOrder.js'

const textsOf = (order: OrderRecord) => ({
  person: order.person,
  counted: String(order.counted_in),
  due: order.due === null ? '' : writePartialDay(order.due),
  contact: order.contact,
  deposit: order.deposit,
  agreed: order.agreed_on_loss,
  note: order.note,
})

/** What was agreed, corrected in place; one without rolls can be removed. */
export function CorrectOrder({ order }: { order: OrderRecord }) {
  const writer = useWriter()
  const known = useKnown()
  const { draft, change, clear } = useDraft(`order-${order.id}-${order.revision}`, textsOf(order))
  const [tried, setTried] = useState(false)
  const due = draft.due.trim() === '' ? null : readDue(draft.due, known)
  const counted = countIn(draft.counted)
  const nameless = draft.person.trim() === ''
  const correct = useWrite(
    (statement: OrderStatementInput) => correctOrder(order.id, { seen_revision: order.revision, statement }),
    'orders',
  )
  const { changed } = useWayBack(keptOrder(order))
  const submit = (event: FormEvent) => {
    event.preventDefault()
    setTried(true)
    if (nameless || counted === null || (due !== null && !due.ok) || correct.isPending) return
    const { person, contact, deposit, agreed, note } = draft
    correct.mutate(
      { person, contact, deposit, agreed_on_loss: agreed, note, counted_in: counted, due: due?.value ?? null },
      {
        onSuccess: (kept) => {
          clear()
          changed(say('order.kept', { person }, writer), kept.revision)
        },
      },
    )
  }
  return (
    <details>
      <summary>Correct the order</summary>
      <form onSubmit={submit} noValidate>
        <TextField
          label="Person"
          value={draft.person}
          onText={(person) => change({ person })}
          maxLength={120}
          trouble={tried && nameless ? say('rolls.form.person-missing', {}, writer) : null}
        />
        <TextField
          label="Counted in"
          value={draft.counted}
          onText={(text) => change({ counted: text })}
          inputMode="numeric"
          trouble={counted === null ? say('rolls.form.count-missing', { person: draft.person }, writer) : null}
        />
        <TextField
          label="Due by"
          value={draft.due}
          onText={(text) => change({ due: text })}
          echo={due?.ok ? `read as ${writePartialDay(due.value)}` : null}
          trouble={due && !due.ok ? due.problem.sentence : null}
        />
        <TextField label="Contact" value={draft.contact} onText={(contact) => change({ contact })} maxLength={200} />
        <TextField label="Deposit" value={draft.deposit} onText={(deposit) => change({ deposit })} maxLength={60} />
        <TextArea
          label="Agreed in case of loss"
          className="words"
          rows={2}
          value={draft.agreed}
          onText={(agreed) => change({ agreed })}
          maxLength={4000}
        />
        <TextArea
          label="Note on the order"
          className="words"
          rows={2}
          value={draft.note}
          onText={(note) => change({ note })}
          maxLength={4000}
        />
        {correct.isError && <Trouble fault={correct.error} />}
        <div className="row">
          <Button type="submit" waits={correct.isPending}>
            Keep the correction
          </Button>
          {order.rolls.length === 0 && <RemoveOrder order={order} />}
        </div>
      </form>
    </details>
  )
}

function RemoveOrder({ order }: { order: OrderRecord }) {
  const { removeIt, waits } = useRemoval(keptOrder(order))
  return (
    <Button onClick={removeIt} waits={waits}>
      Remove the order
    </Button>
  )
}
