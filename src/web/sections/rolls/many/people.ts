import type { Problem } from '../../../../kernel/index.js'
import type { Known, ReadLine, TakenRoll } from '../../../../planning/index.js'
import type { OrderRecord, OrderStatementInput } from '../../../shared/api/index.js'
import { EMPTY_ORDER, type OrderDraft, openOrdersOf, readOrder } from '../form/order.js'

/** Rolls of one person on a list, in its order; `person` is null for one's own. */
export interface Share {
  readonly person: string | null
  readonly rolls: readonly TakenRoll[]
}

/** A share with the order that it goes into, or what is wrong with that. */
export interface ReadShare extends Share {
  readonly open: readonly OrderRecord[]
  readonly orderId: string | null
  readonly order: OrderStatementInput | null
  readonly trouble: Problem | null
}

/** Rolls by the person they belong to, each person once, however the name is capitalised. */
export function sharesOf(lines: readonly ReadLine[]): Share[] {
  const shares = new Map<string | null, { person: string | null; rolls: TakenRoll[] }>()
  for (const roll of lines.flatMap((line) => line.rolls)) {
    const key = roll.whose === null ? null : roll.whose.trim().toLowerCase()
    const share = shares.get(key) ?? { person: roll.whose?.trim() ?? null, rolls: [] }
    share.rolls.push(roll.whose === null ? roll : { ...roll, whose: share.person })
    shares.set(key, share)
  }
  return [...shares.values()]
}

/** Reads the order of a share: what was counted must be what is listed, with what an open order has already. */
export function readShare(
  share: Share,
  draft: OrderDraft | undefined,
  orders: readonly OrderRecord[],
  known: Known,
): ReadShare {
  const { person, rolls } = share
  if (person === null) return { ...share, open: [], orderId: null, order: null, trouble: null }
  const open = openOrdersOf(orders, person)
  const belongs = open.find(({ id }) => id === draft?.id)
  if (belongs) return { ...share, open, orderId: belongs.id, order: null, trouble: null }
  const order = readOrder(draft ?? EMPTY_ORDER, person, rolls.length, known)
  return {
    ...share,
    open,
    orderId: null,
    order: order.ok ? order.value : null,
    trouble: order.ok ? null : order.problem,
  }
}
