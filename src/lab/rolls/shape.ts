import { instantText } from '../../kernel/index.js'
import type { RollEvent as EventView, RollSummary, RollRecord as View } from '../../wire/index.js'
import type { RollEvent, RollRecord } from './port.js'

export const summaryOf = (roll: RollRecord): RollSummary => ({
  ...roll.statement,
  id: roll.id,
  number: roll.number.text,
  twin: roll.twin,
  order_id: roll.orderId,
  revision: roll.revision,
  taken_in_at: instantText(roll.takenInAt),
  state: roll.state,
  state_at: instantText(roll.stateAt),
  run_id: roll.runId,
  hook: roll.hook,
})

/** Its steps as they stand on record, oldest first; those taken back are marked so. */
const historyOf = (events: readonly RollEvent[]): EventView[] =>
  events.flatMap((event) =>
    event.state === null
      ? []
      : {
          id: event.id,
          at: instantText(event.at),
          by: event.by,
          state: event.state,
          run_id: event.runId,
          hook: event.hook,
          reason: event.reason,
          batch_id: event.batchId,
          retracted: events.some((other) => other.retracts === event.id),
        },
  )

export const viewOf = (roll: RollRecord, events: readonly RollEvent[]): View => ({
  ...summaryOf(roll),
  history: historyOf(events.filter((event) => event.rollId === roll.id)),
})
