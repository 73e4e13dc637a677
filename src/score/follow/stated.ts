import type { EventStamp } from '../events/definition.js'
import type { StepState, TankState } from '../events/fold.js'
import type { Laid } from '../plan/definition.js'
import { pourBefore } from '../plan/lay-out.js'
import { isBath } from '../recipe/kinds.js'

/** What is written to the minute is reckoned with the middle of it, and may be so many seconds off either way. */
export const HALF_A_MINUTE = 30

const slackOf = (stamp: EventStamp | undefined): number => (stamp?.statedTo === 'minute' ? HALF_A_MINUTE : 0)

/** How far the moments of a step may be off either way, seconds; 0 for those pressed or written to the second. */
export interface Slack {
  readonly in: number
  readonly out: number
}

/** How far those of a step that somebody confirmed may be off. */
export const slackOfStep = (step: StepState | undefined): Slack => ({
  in: slackOf(step?.pouredIn?.event),
  out: slackOf(step?.pouredOut?.event ?? step?.done?.event),
})

/** By the place of the step. A moment that is reckoned from another one is known no better than that. */
export function slacksOf({ steps }: TankState, laid: readonly Laid[]): ReadonlyMap<number, Slack> {
  const slacks = new Map<number, Slack>()
  let before = 0
  for (const { index, step, skipped, inBy, outBy } of laid) {
    if (skipped) continue
    const own = slackOfStep(steps.get(index))
    const into = inBy === 'pressed' && isBath(step) ? own.in : Math.max(before, own.out)
    const slack = { in: into, out: outBy === 'pressed' ? own.out : into }
    slacks.set(index, slack)
    if (isBath(step) || step.within === null) before = slack.out
  }
  return slacks
}

/** What is not known for sure of a developing bath, and what that leaves open. */
export interface Unsure {
  /** How far its length may be off either way, by moments written to the minute, seconds. */
  readonly length: number
  /** How much longer it may have been, where nobody wrote down its end, seconds. */
  readonly longer: number
  /** How far each of its readings may be off, summed, seconds. */
  readonly readings: number
}

const NONE: Slack = { in: 0, out: 0 }

export function unsureOf(tank: TankState, laid: readonly Laid[], bath: Laid): Unsure {
  const { in: into, out } = slacksOf(tank, laid).get(bath.index) ?? NONE
  const readings = tank.readings.filter(({ event }) => event.bath === bath.index)
  return {
    length: into + out,
    longer: bath.outBy === 'implied' ? Math.max(0, latestOut(tank, laid, bath) - bath.out) : 0,
    readings: readings.reduce((sum, { event }) => sum + slackOf(event), 0),
  }
}

/** The next moment that was confirmed, less what it takes to empty the tank before it, seconds from the tank's zero. */
function latestOut(tank: TankState, laid: readonly Laid[], bath: Laid): number {
  const drain = isBath(bath.step) ? bath.step.handling.drain.seconds : 0
  for (const one of laid.slice(bath.index + 1)) {
    const slack = slackOfStep(tank.steps.get(one.index))
    if (isBath(one.step) && one.inBy === 'pressed') return one.in - pourBefore(one.step) - drain + slack.in
    if (one.outBy === 'pressed' && (isBath(one.step) || one.step.within === null)) return one.out - drain + slack.out
  }
  return bath.out
}
