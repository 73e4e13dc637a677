import { failed, ok, problem, type Result } from '../../../../kernel/index.js'
import { type Known, readDue } from '../../../../planning/index.js'
import type { OrderRecord, OrderStatementInput } from '../../../shared/api/index.js'

/** An order as it is typed when film is handed over; `id` of one that is open already, else empty. */
export interface OrderDraft {
  readonly id: string
  readonly counted: string
  readonly due: string
  readonly contact: string
  readonly deposit: string
  readonly agreed: string
}

export const EMPTY_ORDER: OrderDraft = { id: '', counted: '', due: '', contact: '', deposit: '', agreed: '' }

/** A count of rolls: a whole number from 1 to 500. */
export const countIn = (text: string): number | null => {
  const count = /^\d{1,3}$/.test(text.trim()) ? Number(text.trim()) : 0
  return count >= 1 && count <= 500 ? count : null
}

/** Orders of a person that are not handed back yet. */
export const openOrdersOf = (orders: readonly OrderRecord[], person: string): OrderRecord[] =>
  orders.filter(
    (order) =>
      order.counted_out === null && !order.removed && order.person.trim().toLowerCase() === person.trim().toLowerCase(),
  )

/** A new order. Everything that is listed at once must have been counted, or nothing is taken in. */
export function readOrder(
  draft: OrderDraft,
  person: string,
  listed: number | null,
  known: Known,
): Result<OrderStatementInput> {
  const counted = countIn(draft.counted)
  if (counted === null)
    return failed(
      problem('intake.missing', { what: `The number of rolls that ${person} handed over`, example: '5' }, 'counted'),
    )
  if (listed !== null && counted !== listed)
    return failed(problem('intake.count-mismatch', { counted, listed, person }, 'counted'))
  const due = draft.due.trim() === '' ? ok(null) : readDue(draft.due, known)
  if (!due.ok) return due
  return ok({
    person: person.trim(),
    due: due.value,
    contact: draft.contact.trim(),
    counted_in: counted,
    deposit: draft.deposit.trim(),
    agreed_on_loss: draft.agreed.trim(),
  })
}

/** A roll is due with its order where nothing else was said of it. */
export const dueWith = <R extends { readonly due: string | null }>(roll: R, order: OrderStatementInput | null): R => ({
  ...roll,
  due: roll.due ?? order?.due ?? null,
})
