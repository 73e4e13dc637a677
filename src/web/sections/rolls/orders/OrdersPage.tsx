import { say } from '../../../../words/index.js'
import type { OrderRecord } from '../../../shared/api/index.js'
import { useOrders } from '../../../shared/desk/index.js'
import { Link } from '../../../shared/navigation/index.js'
import { Asked, ButtonLink, Page, useWriter, Words } from '../../../shared/ui/index.js'
import { hereOf } from './here.js'

/** Orders, newest first: those that wait for their people before those that are done. */
export function OrdersPage() {
  const writer = useWriter()
  return (
    <Page
      title="Orders"
      actions={
        <>
          <ButtonLink href="/rolls">All rolls</ButtonLink>
          <ButtonLink look="go" href="/rolls/several">
            Take in film
          </ButtonLink>
        </>
      }
    >
      <Asked query={useOrders()}>
        {(orders) =>
          orders.length === 0 ? (
            <div className="teach">
              <p className="lead">
                <strong>{say('orders.none', {}, writer)}</strong> {say('orders.none.how', {}, writer)}
              </p>
            </div>
          ) : (
            <div className="orders">
              <Rows title="Here" orders={orders.filter(({ counted_out }) => counted_out === null)} />
              <Rows title="Handed back" orders={orders.filter(({ counted_out }) => counted_out !== null)} />
            </div>
          )
        }
      </Asked>
    </Page>
  )
}

function Rows({ title, orders }: { title: string; orders: readonly OrderRecord[] }) {
  const writer = useWriter()
  if (orders.length === 0) return null
  return (
    <section>
      <h2>{title}</h2>
      <ul className="rows">
        {orders.map((order) => (
          <li key={order.id}>
            <Link className="row-link" href={`/rolls/orders/${order.id}`}>
              <strong>{order.person}</strong>
              <span className="small row-more">
                <Words>{say('orders.row', { ...order, here: hereOf(order).length }, writer)}</Words>
              </span>
            </Link>
          </li>
        ))}
      </ul>
    </section>
  )
}
