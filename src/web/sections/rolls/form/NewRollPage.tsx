import { type FormEvent, useState } from 'react'
import { say } from '../../../../words/index.js'
import { type OrderStatementInput, type RollStatementInput, takeInRolls, useWrite } from '../../../shared/api/index.js'
import { addOrder, useOrders } from '../../../shared/desk/index.js'
import { go } from '../../../shared/navigation/index.js'
import {
  Button,
  ButtonLink,
  Choices,
  Page,
  TextField,
  Trouble,
  useDraft,
  useTell,
  useWriter,
} from '../../../shared/ui/index.js'
import { EMPTY, type RollDraft, readDraft } from './draft.js'
import { OrderFields } from './OrderFields.js'
import { dueWith, EMPTY_ORDER, type OrderDraft, openOrdersOf, readOrder } from './order.js'
import { RollFields } from './RollFields.js'
import { useKnown } from './useKnown.js'

type Draft = RollDraft & { readonly own: 'own' | 'other'; readonly order: OrderDraft }
const START: Draft = { ...EMPTY, own: 'own', order: EMPTY_ORDER }

/** One roll is taken in: one's own, or somebody else's with its order. */
export function NewRollPage() {
  const writer = useWriter()
  const tell = useTell()
  const known = useKnown()
  const { draft, change, clear } = useDraft('roll-new', START)
  const [tried, setTried] = useState(false)
  const orders = useOrders().data ?? []
  const person = draft.whose.trim()
  const open = draft.own === 'other' && person !== '' ? openOrdersOf(orders, person) : []
  const reading = readDraft(draft.own === 'own' ? { ...draft, whose: '' } : draft, known)
  const belongs = open.find(({ id }) => id === draft.order.id)
  const order = draft.own === 'other' && person !== '' && !belongs ? readOrder(draft.order, person, null, known) : null
  const take = useWrite((asked: Taking) => takeIn(asked), 'rolls', 'orders')
  const submit = (event: FormEvent) => {
    event.preventDefault()
    setTried(true)
    const unowned = draft.own === 'other' && person === ''
    if (reading.roll === null || unowned || (order && !order.ok) || take.isPending) return
    const asked: Taking = { roll: reading.roll, order_id: belongs?.id ?? null, order: order?.ok ? order.value : null }
    take.mutate(asked, {
      onSuccess: ({ rolls: [roll] }) => {
        clear()
        if (!roll) return
        go(`/rolls/${roll.id}`)
        tell({ sentence: say('rolls.taken-in', { numbers: [roll.number] }, writer) })
      },
    })
  }
  return (
    <Page
      title="Take in a roll"
      lead={say('rolls.form.lead', {}, writer)}
      actions={<ButtonLink href="/rolls/several">Take in several instead</ButtonLink>}
    >
      <form onSubmit={submit} noValidate>
        <RollFields draft={draft} change={change} reading={reading} tried={tried} films={known.films} />
        <Choices
          legend="Whose film is it?"
          value={draft.own}
          options={[
            ['own', 'My own, or the bench’s'],
            ['other', 'Somebody else’s: it gets stickers, and an order'],
          ]}
          onValue={(own) => change({ own })}
        />
        {draft.own === 'other' && (
          <TextField
            label="Whose"
            value={draft.whose}
            onText={(whose) => change({ whose })}
            maxLength={120}
            trouble={tried && person === '' ? say('rolls.form.person-missing', {}, writer) : null}
          />
        )}
        {draft.own === 'other' && person !== '' && (
          <OrderFields
            person={person}
            draft={draft.order}
            change={(part) => change({ order: { ...draft.order, ...part } })}
            open={open}
            trouble={tried && order && !order.ok ? order.problem : null}
          />
        )}
        {take.isError && <Trouble fault={take.error} />}
        <div className="row">
          <Button type="submit" look="go" waits={take.isPending}>
            Take it in
          </Button>
        </div>
        <p role="alert" className="form-said">
          {tried &&
            reading.roll === null &&
            say('times.form.wants', { count: Object.keys(reading.troubles).length }, writer)}
        </p>
      </form>
    </Page>
  )
}

interface Taking {
  readonly roll: RollStatementInput
  readonly order_id: string | null
  readonly order: OrderStatementInput | null
}

/** The order first, as the roll says which it belongs to. */
async function takeIn({ roll, order_id, order }: Taking) {
  const id = order === null ? order_id : (await addOrder(order)).id
  return takeInRolls({ order_id: id, rolls: [{ statement: dueWith({ ...roll, due: roll.due ?? null }, order) }] })
}
