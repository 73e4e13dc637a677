import { useQuery } from '@tanstack/react-query'
import { say } from '../../../words/index.js'
import { ApiProblem, type OrderStanding, orderStanding } from '../../shared/api/index.js'
import { Asked, Page, useWriter, Words } from '../../shared/ui/index.js'

/** A page left open moves on by itself; its holder hears of changes no other way. */
const LOOK_AGAIN_MS = 60_000

/** How far the rolls of an order are, for whoever holds its private address. */
export function OrderLinkPage({ params }: { params: Record<string, string> }) {
  const writer = useWriter()
  const token = params['token'] ?? ''
  const standing = useQuery({
    queryKey: ['order-link', token],
    queryFn: () => orderStanding(token),
    refetchInterval: LOOK_AGAIN_MS,
  })
  const dead = standing.error instanceof ApiProblem && standing.error.status !== 0
  if (dead)
    return (
      <Page title={say('order-link.dead', {}, writer)} lead={say('order-link.ask', {}, writer)}>
        {null}
      </Page>
    )
  const lead = standing.data && say(`order-link.${stageOf(standing.data)}`, {}, writer)
  return (
    <Page title={say('order-link.title', {}, writer)} lead={lead}>
      <Asked query={standing}>{({ rolls }) => <Rolls rolls={rolls} />}</Asked>
      <p className="small quiet">{say('order-link.private', {}, writer)}</p>
    </Page>
  )
}

function stageOf({ rolls, ready }: OrderStanding) {
  if (rolls.length === 0) return 'empty'
  if (rolls.every(({ state }) => state === 'handed-back')) return 'over'
  return ready ? 'ready' : 'waiting'
}

function Rolls({ rolls }: Pick<OrderStanding, 'rolls'>) {
  return (
    <ul className="standing">
      {rolls.map(({ number, sentence }) => (
        <li key={number}>
          <strong>
            <Words>{number}</Words>
          </strong>
          <span>
            <Words>{sentence}</Words>
          </span>
        </li>
      ))}
    </ul>
  )
}
