import { type FormEvent, useMemo, useState } from 'react'
import { readRollList } from '../../../../planning/index.js'
import { say } from '../../../../words/index.js'
import { takeInRolls, useWrite } from '../../../shared/api/index.js'
import { addOrder, useOrders } from '../../../shared/desk/index.js'
import { go } from '../../../shared/navigation/index.js'
import { Button, ButtonLink, Page, TextArea, Trouble, useDraft, useTell, useWriter } from '../../../shared/ui/index.js'
import { OrderFields } from '../form/OrderFields.js'
import { dueWith, EMPTY_ORDER, type OrderDraft } from '../form/order.js'
import { useKnown } from '../form/useKnown.js'
import { type ReadShare, readShare, sharesOf } from './people.js'
import { ReadLines } from './ReadLines.js'

const EXAMPLE = `2 × Tarn 100, 135-36, EI 100
Fell 25, 120, push 1, EI 25, summer 2024
Ida:
Corvane 400, 135-24, due in 2 weeks
Weir 200, 120, found, note: light leak`

interface Draft {
  readonly text: string
  readonly orders: Readonly<Record<string, OrderDraft>>
}
const START: Draft = { text: '', orders: {} }

/** Several rolls at once: typed or pasted, read back line by line, counted, then taken in. */
export function ManyPage() {
  const writer = useWriter()
  const tell = useTell()
  const known = useKnown()
  const { draft, change, clear } = useDraft('rolls-many', START)
  const [tried, setTried] = useState(false)
  const orders = useOrders().data ?? []
  const { today, films } = known
  // biome-ignore lint/correctness/useExhaustiveDependencies: what is known changes with the day and the films only
  const lines = useMemo(() => readRollList(draft.text, known), [draft.text, today, films.join('\n')])
  const shares = sharesOf(lines).map((share) => readShare(share, draft.orders[keyOf(share.person)], orders, known))
  const wrong = lines.filter(({ troubles }) => troubles.length > 0).length
  const count = shares.reduce((sum, { rolls }) => sum + rolls.length, 0)
  const take = useWrite(takeInShares, 'rolls', 'orders')
  const submit = (event: FormEvent) => {
    event.preventDefault()
    setTried(true)
    if (count === 0 || wrong > 0 || shares.some(({ trouble }) => trouble !== null) || take.isPending) return
    take.mutate(shares, {
      onSuccess: (numbers) => {
        clear()
        go('/rolls')
        tell({ sentence: say('rolls.taken-in', { numbers }, writer) })
      },
    })
  }
  const changeOrder = (person: string, part: Partial<OrderDraft>) => {
    const key = keyOf(person)
    change({ orders: { ...draft.orders, [key]: { ...EMPTY_ORDER, ...draft.orders[key], ...part } } })
  }
  return (
    <Page
      title="Take in several"
      lead={say('rolls.many.lead', {}, writer)}
      actions={<ButtonLink href="/rolls/new">One roll instead</ButtonLink>}
    >
      <form onSubmit={submit} noValidate>
        <div className="rolls-many">
          <TextArea
            label="The rolls, a line each"
            rows={14}
            placeholder={EXAMPLE}
            value={draft.text}
            onText={(text) => change({ text })}
          />
          <ReadLines lines={lines} text={draft.text} />
        </div>
        {shares.map((share) =>
          share.person === null ? null : (
            <OrderFields
              key={keyOf(share.person)}
              person={share.person}
              draft={draft.orders[keyOf(share.person)] ?? EMPTY_ORDER}
              change={(part) => changeOrder(share.person as string, part)}
              open={share.open}
              listed={share.rolls.length}
              trouble={tried || draft.orders[keyOf(share.person)]?.counted ? share.trouble : null}
            />
          ),
        )}
        {take.isError && <Trouble fault={take.error} />}
        <p role="alert" className="form-said">
          {tried && wrong > 0 && say('rolls.many.wants', { count: wrong }, writer)}
        </p>
        <div className="row">
          <Button type="submit" look="go" waits={take.isPending || count === 0}>
            {say('rolls.many.keep', { count }, writer)}
          </Button>
        </div>
      </form>
    </Page>
  )
}

const keyOf = (person: string | null): string => (person ?? '').toLowerCase()

/** Share by share, each order before its rolls; gives the numbers in the order of the list. */
async function takeInShares(shares: readonly ReadShare[]): Promise<string[]> {
  const numbers: string[] = []
  for (const { rolls, order, orderId } of shares) {
    const id = order === null ? orderId : (await addOrder(order)).id
    const taken = await takeInRolls({ order_id: id, rolls: rolls.map((roll) => ({ statement: dueWith(roll, order) })) })
    numbers.push(...taken.rolls.map(({ number }) => number))
  }
  return numbers
}
