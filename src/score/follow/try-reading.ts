import type { Celsius, Instant } from '../../kernel/index.js'
import type { EventOf } from '../events/definition.js'
import type { Placed, TankState } from '../events/fold.js'
import type { TankPlan } from '../plan/definition.js'
import type { ReadingTold } from './definition.js'
import { reckon } from './facts.js'

/**
 * What a reading would be worth at this instant, before it is written down: whether it would count, where the bath
 * should be, how far the pour-out would move. Null where no bath is followed by its temperature. `confirmed` once
 * the person has said that it is right.
 */
export function tryReading(
  plan: TankPlan,
  state: TankState,
  at: Instant,
  temperature: Celsius,
  confirmed = false,
): ReadingTold | null {
  const bath = plan.laid.find(({ development }) => development?.from === 'basis')
  if (bath === undefined) return null
  const stamp = { id: '\uffff', device: '', life: '', monotonicMs: 0, wallMs: at, serverOffsetMs: null, actor: '' }
  const event: EventOf<'reading'> = {
    ...stamp,
    kind: 'reading',
    tank: state.tank,
    bath: bath.index,
    temperature,
    confirmed,
  }
  const tried: Placed<EventOf<'reading'>> = { event, at, stands: true }
  return reckon(plan, { ...state, readings: [...state.readings, tried] }, at).readings.at(-1) ?? null
}
