import type { Instant } from '../../kernel/index.js'
import type { RunState, TankState } from '../events/fold.js'
import type { Score } from '../plan/definition.js'
import { zeroOf } from './facts.js'

/** Whether anything has been done to a tank. */
export const hasBegun = ({ started, steps }: TankState): boolean =>
  started !== null || [...steps.values()].some(({ pouredIn, pouredOut }) => (pouredIn ?? pouredOut) !== null)

/**
 * When each tank is expected to begin: as far after the earliest one that has begun as the plan has it. Before any has
 * begun it is now for the first of them, and the others follow it.
 */
export function beginnings({ tanks }: Score, state: RunState, now: Instant): Instant[] {
  const offset = (i: number) => (tanks[i]?.tank.offset ?? 0) * 1000
  const places = tanks.map((_, i) => i).sort((a, b) => offset(a) - offset(b))
  const first = places.find((i) => hasBegun(state.tanks[i] as TankState))
  const known = first === undefined ? undefined : tanks[first]
  const zero =
    first === undefined || known === undefined
      ? now - offset(places[0] ?? 0)
      : zeroOf(known, state.tanks[first] as TankState, now) - offset(first)
  return tanks.map((_, i) => zero + offset(i))
}
