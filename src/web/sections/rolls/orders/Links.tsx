import { say, writeDay } from '../../../../words/index.js'
import { type OrderRecord, revokeOrderLink, useBench, useWrite } from '../../../shared/api/index.js'
import { makeOrderLink } from '../../../shared/desk/index.js'
import { Button, sentenceOf, Trouble, useTell, useWriter } from '../../../shared/ui/index.js'
import { SlipLink } from '../paper/PaperLink.js'

/** Private links that show how far the rolls are. */
export function Links({ order }: { order: OrderRecord }) {
  const writer = useWriter()
  const tell = useTell()
  const zone = useBench().data?.zone ?? 'UTC'
  const make = useWrite(() => makeOrderLink(order.id, {}), 'orders')
  const revoke = useWrite((id: string) => revokeOrderLink(id, {}), 'orders')
  const withdraw = (id: string) =>
    revoke.mutate(id, {
      onSuccess: () => tell({ sentence: say('order.link.revoked', {}, writer) }),
      onError: (fault) => tell({ sentence: sentenceOf(fault) }),
    })
  return (
    <section className="order-links">
      <h2>A link to look in</h2>
      <p className="small">{say('order.link.lead', {}, writer)}</p>
      <ul className="checks" aria-label="Links of this order">
        {order.links.map(({ id, expires_at, revoked }) => (
          <li key={id}>
            <span>{say('order.link', { until: writeDay(Date.parse(expires_at), zone), revoked }, writer)}</span>
            {!revoked && <Button onClick={() => withdraw(id)}>Withdraw</Button>}
          </li>
        ))}
      </ul>
      {make.data && (
        <>
          <p className="raw new-link">{addressOf(make.data.token)}</p>
          {order.rolls.length > 0 && order.rolls.length === order.counted_in && (
            <p>
              <SlipLink order={order.id} token={make.data.token} />
            </p>
          )}
        </>
      )}
      <Button onClick={() => make.mutate(undefined)} waits={make.isPending}>
        Make a link
      </Button>
      {make.isError && <Trouble fault={make.error} />}
    </section>
  )
}

const addressOf = (token: string): string => `${window.location.origin}/o/${token}`
