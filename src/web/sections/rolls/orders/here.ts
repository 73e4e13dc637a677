import type { OrderRecord, RollSummary } from '../../../shared/api/index.js'
import { HERE } from '../states.js'

/** Rolls of an order that a count must find: neither handed back nor gone. */
export const hereOf = ({ rolls }: Pick<OrderRecord, 'rolls'>): RollSummary[] =>
  rolls.filter(({ state }) => HERE.includes(state))
