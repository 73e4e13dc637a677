import type { Instant } from '../../../../kernel/index.js'
import {
  type FromPaper,
  fold,
  isFromPaper,
  PAPER,
  paperEvents,
  type RunEvent,
  type Score,
} from '../../../../score/index.js'
import { type AddRunEventsInput, addRunEvents } from '../../../shared/api/index.js'

/** Who types, when, and under which entry. */
export interface Entry {
  readonly entry: string
  readonly now: Instant
  readonly actor: string
}

/** The id of the n-th event of an entry: the same whenever it is sent again. */
const idOf = (entry: string, n: number): string => `${entry.slice(0, -3)}${n.toString(16).padStart(3, '0')}`

/** What a sheet says as events, and what takes back the sheet that it stands in place of. */
export function entryEvents(
  score: Score,
  before: readonly RunEvent[],
  happened: readonly FromPaper[],
  { entry, now, actor }: Entry,
): RunEvent[] {
  let number = 0
  const nextId = () => idOf(entry, number++)
  const standing = fold(score, before).events.flatMap(({ event, stands }) =>
    stands && isFromPaper(event) && event.life !== entry && event.kind !== 'retracted' ? [event] : [],
  )
  return [
    ...paperEvents(happened, { entry, now, actor, nextId }),
    ...retractions(standing, { entry, now, actor }, nextId),
  ]
}

const retractions = (events: readonly RunEvent[], { entry, now, actor }: Entry, nextId: () => string): RunEvent[] =>
  events.map(({ id, tank }) => ({
    ...{ id: nextId(), device: PAPER, life: entry, monotonicMs: 0, wallMs: now, serverOffsetMs: now },
    ...{ statedMs: now, statedTo: 'placed', tank, bath: null, actor, kind: 'retracted', of: id },
  }))

/** Takes an entry back whole: what it took back stands again. */
export const takeBack = (run: string, events: readonly RunEvent[], as: Entry): Promise<unknown> => {
  let number = 0
  return sendEvents(
    run,
    retractions(events, as, () => idOf(as.entry, number++)),
  )
}

/** All of them or none. */
export const sendEvents = (run: string, events: readonly RunEvent[]): Promise<unknown> =>
  addRunEvents(run, { events } as unknown as AddRunEventsInput)
