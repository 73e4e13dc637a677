import { turnLength } from './defaults.js'
import type { Agitation } from './definition.js'
import { isBefore } from './moments.js'

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
 * The turns after the opening, begun after `lead` seconds (tapping) and the opening, and all of them ended before
 * the draining starts `until` seconds into the bath's clock. Cost: linear in their number.
 * With an opening of 30 s and marks on the minute, 8:00 drained from 7:50 has seven.
 */
export function laterTurns(agitation: Agitation, until: number, lead = 0): LaterTurn[] {
  const free = lead + openingLength(agitation, until)
  return turnsUntil(agitation, until, free).filter(
    ({ at, length }) => !isBefore(at, free) && !isBefore(until, at + length),
  )
}

function turnsUntil(agitation: Agitation, until: number, free: number): LaterTurn[] {
  switch (agitation.kind) {
    case 'none':
    case 'rotary':
      return []
    case 'continuous':
      return until > free ? [{ at: free, length: until - free }] : []
    case 'moments':
      return agitation.moments.map(({ at, turn }) => ({ at, length: turnLength(turn) }))
    case 'then-continuous':
      return thenContinuous(agitation, until, free)
    case 'turns':
      return everySoOften(agitation, until)
  }
}

/** A bath lasts a day at most. One that is long overdue, because nobody pressed, is not turned for ever on paper. */
const LONGEST = 86_400

function everySoOften(agitation: Extract<Agitation, { kind: 'turns' }>, until: number): LaterTurn[] {
  const first = firstTurn(agitation, openingLength(agitation, until))
  const length = turnLength(agitation.turn)
  const count = Math.max(0, Math.floor((Math.min(until, LONGEST) - length - first) / agitation.every + 1e-9) + 1)
  return Array.from({ length: count }, (_, i) => ({ at: first + i * agitation.every, length }))
}

function firstTurn({ every, first }: Extract<Agitation, { kind: 'turns' }>, opening: number): number {
  if (first !== undefined) return first
  return Math.ceil((opening + Math.min(REST, every)) / every - 1e-9) * every
}

function thenContinuous(
  { before, from }: Extract<Agitation, { kind: 'then-continuous' }>,
  until: number,
  free: number,
): LaterTurn[] {
  const kept = turnsUntil(before, until, free).filter(({ at, length }) => at + length <= from)
  const start = Math.max(from, free)
  return until > start ? [...kept, { at: start, length: until - start }] : kept
}
