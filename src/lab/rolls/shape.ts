import { instantText } from '../../kernel/index.js'
import type { RollEvent as EventView, RollSummary, RollRecord as View } from '../../wire/index.js'
import type { Rooms } from '../store.js'
import type { RollEvent, RollRecord, RollRevision } from './port.js'

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

const revisionsOf = (revisions: readonly RollRevision[]): View['revisions'] =>
  revisions.map(({ revision, savedAt, savedBy, orderId, statement }) => ({
    revision,
    at: instantText(savedAt),
    by: savedBy,
    order_id: orderId,
    statement,
  }))

/** A roll that was just taken in: nothing has happened to it yet. */
export const freshView = (roll: RollRecord): View => {
  const { id, revision, takenInAt, takenInBy, orderId, statement } = roll
  const first = { rollId: id, revision, savedAt: takenInAt, savedBy: takenInBy, orderId, batchId: null, statement }
  return { ...summaryOf(roll), history: [], revisions: revisionsOf([first]) }
}

/** A roll with its way and all that was said of it. */
export const viewOf = async (rooms: Rooms, roll: RollRecord): Promise<View> => ({
  ...summaryOf(roll),
  history: historyOf(await rooms.rolls.events([roll.id])),
  revisions: revisionsOf(await rooms.rolls.revisions(roll.id)),
})
