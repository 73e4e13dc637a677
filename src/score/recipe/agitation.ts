import { turnLength } from './defaults.js'
import type { Agitation } from './definition.js'

/** A turn of the tank after the opening: seconds from the start of the bath's clock. */
export interface LaterTurn {
  readonly at: number
  readonly length: number
}

/** The part of a continuous agitation that is told with the pour; the rest is a job of its own. */
const CONTINUOUS_OPENING = 30
/** Rest that the tank gets between the opening and the first later turn, unless the interval itself is shorter. */
const REST = 30

/** Length of the opening agitation in a bath whose draining starts `until` seconds into its clock. */
export function openingLength(agitation: Agitation, until: number): number {
  const whole = wholeOpening(agitation)
  return Math.max(0, Math.min(whole, until))
}

function wholeOpening(agitation: Agitation): number {
  if (agitation.kind === 'continuous') return CONTINUOUS_OPENING
  if (agitation.kind === 'then-continuous') return Math.min(agitation.from, wholeOpening(agitation.before))
  if (agitation.kind === 'turns' || agitation.kind === 'moments')
    return agitation.opening === null ? 0 : turnLength(agitation.opening)
  return 0
}

/**
 * The turns after the opening, all of them ended before the draining starts. Cost: linear in their number.
 * With an opening of 30 s and marks on the minute, 8:00 drained from 7:50 has seven.
 */
export function laterTurns(agitation: Agitation, until: number): LaterTurn[] {
  const opening = openingLength(agitation, until)
  if (agitation.kind === 'continuous') return until > opening ? [{ at: opening, length: until - opening }] : []
  if (agitation.kind === 'then-continuous') return thenContinuous(agitation, until)
  if (agitation.kind === 'moments')
    return agitation.moments.map(({ at, turn }) => ({ at, length: turnLength(turn) })).filter(endsBefore(until))
  if (agitation.kind !== 'turns') return []
  const first = firstTurn(agitation, opening)
  const length = turnLength(agitation.turn)
  const count = Math.max(0, Math.floor((until - length - first) / agitation.every + 1e-9) + 1)
  return Array.from({ length: count }, (_, i) => ({ at: first + i * agitation.every, length }))
}

const endsBefore =
  (until: number) =>
  ({ at, length }: LaterTurn): boolean =>
    at + length <= until

function firstTurn({ every, first }: Extract<Agitation, { kind: 'turns' }>, opening: number): number {
  if (first !== undefined) return first
  return Math.ceil((opening + Math.min(REST, every)) / every - 1e-9) * every
}

function thenContinuous({ before, from }: Extract<Agitation, { kind: 'then-continuous' }>, until: number): LaterTurn[] {
  const kept = laterTurns(before, until).filter(({ at, length }) => at + length <= from)
  return until > from ? [...kept, { at: from, length: until - from }] : kept
}
