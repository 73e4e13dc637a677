import type { Instant } from '../../kernel/index.js'
import { type ClockDoubt, clocksOf } from './clocks.js'
import type { EventOf, EventStamp, RunEvent } from './definition.js'
import { liveOf } from './undo.js'

/** The clocks of a device at this moment. */
export type ClockReading = Pick<EventStamp, 'device' | 'life' | 'monotonicMs' | 'wallMs' | 'serverOffsetMs'>

/** The instant it is, by the same rules as for events; in doubt where a person has to say. */
export type Now =
  | { readonly kind: 'sure'; readonly at: Instant }
  | { readonly kind: 'in-doubt'; readonly doubt: ClockDoubt }

/** Sorts after every real id. */
const LAST = '\uffff'

const moment = (clocks: ClockReading) => ({ ...clocks, id: LAST, tank: '', bath: null, actor: '' })

/** What time it is on a device, given everything it knows of a run. */
export function nowOf(events: readonly RunEvent[], clocks: ClockReading): Now {
  const here: RunEvent = { ...moment(clocks), kind: 'noted', text: '' }
  const { instantOf, doubts } = clocksOf([...events, here], liveOf(events))
  const doubt = doubts.find(({ device, life }) => device === clocks.device && life === clocks.life)
  return doubt === undefined ? { kind: 'sure', at: instantOf(here) } : { kind: 'in-doubt', doubt }
}

/** The events as they would be if a person settled a doubt so: to show what each answer would mean. */
export function settledAs(
  events: readonly RunEvent[],
  doubt: ClockDoubt,
  choice: EventOf<'clock-settled'>['choice'],
  clocks: ClockReading,
): RunEvent[] {
  return [...events, { ...moment(clocks), kind: 'clock-settled', life: doubt.life, choice }]
}
