import { failed, type Instant, ok, problem, type Result } from '../../kernel/index.js'
import type { RollEvent, RollRecord, RollState, Whereabouts } from './port.js'

/** The way of a roll. Steps may be left out, never gone back but by taking them back. */
const WAY: readonly RollState[] = ['taken-in', 'loaded', 'developed', 'hung', 'sleeved', 'scanned', 'handed-back']
const ENDS: readonly RollState[] = ['handed-back', 'lost', 'ruined']

/** The steps that stand, in the order given: neither taken back nor taking back. */
export function standingSteps(events: readonly RollEvent[]): RollEvent[] {
  const retracted = new Set(events.map(({ retracts }) => retracts))
  return events.filter(({ id, state }) => state !== null && !retracted.has(id))
}

/** Where a roll is, by its steps in any order: the latest that is not retracted, else taken in. */
export function whereabouts(takenInAt: Instant, events: readonly RollEvent[]): Whereabouts {
  const standing = standingSteps(events).sort((a, b) => a.at - b.at || (a.id < b.id ? -1 : 1))
  const last = standing.at(-1)
  const runId = standing.findLast((event) => event.runId !== null)?.runId ?? null
  if (last === undefined) return { state: 'taken-in', stateAt: takenInAt, runId: null, hook: '' }
  return { state: last.state as RollState, stateAt: last.at, runId, hook: last.state === 'hung' ? last.hook : '' }
}

/** Whether a roll may take a step: forwards, or lost or ruined with a reason, and nothing after its end. */
export function mayMove(roll: RollRecord, state: RollState, reason: string): Result<null> {
  const number = roll.number.text
  if (ENDS.includes(roll.state)) return failed(problem('roll.ended', { number, state: roll.state }, 'roll_ids'))
  if (state === 'lost' || state === 'ruined')
    return reason.trim() === '' ? failed(problem('roll.reason-missing', { number, state }, 'reason')) : ok(null)
  if (WAY.indexOf(state) > WAY.indexOf(roll.state)) return ok(null)
  return failed(problem('roll.not-forwards', { number, now: roll.state, state }, 'state'))
}
