import { type Seconds, seconds } from '../../kernel/index.js'
import type { Origin } from '../../science/index.js'
import type { Agitation, ClockConvention, Handling, Length, Turn } from './definition.js'

export const length = (value: number, origin: Origin = 'practice'): Length => ({ seconds: seconds(value), origin })

/**
 * A small tank by a military training manual (NAVEDTRA 14209): poured in 10–20 s, emptied in the last 10 s.
 * Cap and tap are our own guess until the bench's records say better.
 */
export const SMALL_TANK: Handling = {
  pour: length(15, 'sheet'),
  drain: length(10, 'sheet'),
  cap: length(3, 'assumption'),
  tap: length(2, 'assumption'),
}

/** The same source: the clock starts when the tank is full and ends when it is empty. */
export const FULL_TO_EMPTY: ClockConvention = { starts: 'end-of-pour', ends: 'end-of-drain' }

export const turnFor = (value: number): Turn => ({ by: 'seconds', seconds: seconds(value) })
export const inversions = (count: number, secondsEach = 2.5): Turn => ({ by: 'inversions', count, secondsEach })

/** `opening` seconds, then `turn` seconds each `every` seconds. */
export const turns = (opening: number, turn: number, every: number): Agitation => ({
  kind: 'turns',
  opening: turnFor(opening),
  turn: turnFor(turn),
  every: seconds(every),
})

/** How long a turn keeps the hands. */
export const turnLength = (turn: Turn): Seconds =>
  turn.by === 'seconds' ? turn.seconds : ((turn.count * turn.secondsEach) as Seconds)
