import { writePartialDay } from '../../../../kernel/index.js'
import { say } from '../../../../words/index.js'
import type { OrderRecord } from '../../../shared/api/index.js'
import { useOrder } from '../../../shared/desk/index.js'
import { Asked, ButtonLink, Page, useWriter } from '../../../shared/ui/index.js'
import { RollRow } from '../find/RollRow.js'
import { SlipLink, StickersLink } from '../paper/PaperLink.js'
import { CorrectOrder } from './CorrectOrder.js'
import { HandBack } from './HandBack.js'
import { hereOf } from './here.js'
import { Links } from './Links.js'

export function OrderPage({ params }: { params: Record<string, string> }) {
  return <Asked query={useOrder(params.id ?? '')}>{(order) => <One order={order} />}</Asked>
}

/** What one person handed over: which rolls, what was agreed, the link to look in, and the count on the way out. */
function One({ order }: { order: OrderRecord }) {
  const writer = useWriter()
  const { person, rolls, counted_in, counted_out, due } = order
  const here = hereOf(order).length
  return (
    <Page
      title={`Order of ${person}`}
      lead={say('order.lead', { rolls: rolls.length, here, counted_out, due }, writer)}
      actions={
        <>
          <ButtonLink href="/rolls/orders">All orders</ButtonLink>
          {rolls.length > 0 && <StickersLink of={{ order_id: order.id }} />}
          {rolls.length > 0 && rolls.length === counted_in && <SlipLink order={order.id} />}
        </>
      }
    >
      <div className="roll-body">
        <div>
          {counted_out === null && counted_in !== rolls.length && (
            <p className="note">{say('order.count-off', { counted_in, listed: rolls.length }, writer)}</p>
          )}
          {rolls.length > 0 && (
            <ul className="rows" aria-label="Rolls of this order">
              {rolls.map((roll) => (
                <RollRow key={roll.id} roll={roll} />
              ))}
            </ul>
          )}
          {counted_out === null && here > 0 && <HandBack order={order} />}
        </div>
        <aside aria-label="What was agreed">
          <dl className="due">
            <dt>Counted in</dt>
            <dd>{counted_in}</dd>
            <dt>Due</dt>
            <dd>{due === null ? 'no day was said' : writePartialDay(due)}</dd>
            <dt>Contact</dt>
            <dd>{order.contact === '' ? 'none' : order.contact}</dd>
            <dt>Deposit</dt>
            <dd>{order.deposit === '' ? 'none' : order.deposit}</dd>
            <dt>In case of loss</dt>
            <dd className="roll-note">{order.agreed_on_loss === '' ? 'nothing was agreed' : order.agreed_on_loss}</dd>
            <dt>Note</dt>
            <dd className="roll-note">{order.note === '' ? 'none' : order.note}</dd>
          </dl>
          <CorrectOrder key={order.revision} order={order} />
          <Links order={order} />
        </aside>
      </div>
    </Page>
  )
}
