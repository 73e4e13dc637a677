import type { Instant } from '../../kernel/index.js'
import type { RunState, TankState } from '../events/fold.js'
import type { Laid, Score, TankPlan } from '../plan/definition.js'
import { tankPlan } from '../plan/plan.js'
import { isBath } from '../recipe/kinds.js'
import { isBefore } from '../recipe/moments.js'
import { beginnings, hasBegun } from './begins.js'
import type { FollowedJob, Following, Phase, TankFollowing } from './definition.js'
import { changedBy, developedBy } from './developed.js'
import { deviationsOf } from './deviations.js'
import { type Reckoned, reckon } from './facts.js'
import { awaitedOf, followJobs } from './jobs.js'
import { slackOfStep } from './stated.js'

/**
 * What to do next: a score, what has happened, and the instant. Pure: the same three give the same answer on
 * every device. While a clock is in doubt there is no answer, only the doubt.
 *
 * Cost: linear in steps and readings (each reading is judged against the dose so far).
 */
export function follow(score: Score, state: RunState, now: Instant): Following {
  if (state.doubts.length > 0) return { tanks: [], doubts: state.doubts, next: null }
  const begins = beginnings(score, state, now)
  const tanks = score.tanks.map((plan, i) =>
    followTank(plan, state, state.tanks[i] as TankState, now, begins[i] ?? now),
  )
  return { tanks, doubts: [], next: soonest(tanks) }
}

function followTank(plan: TankPlan, state: RunState, tank: TankState, now: Instant, begins: Instant): TankFollowing {
  const reckoned = reckon(plan, tank, now, begins)
  const { zeroMs, laid } = reckoned
  const second = lookedAt(tank, reckoned, now)
  const become = tankPlan(plan.tank, laid)
  const phase = phaseOf(tank, laid)
  const over = phase === 'done' || phase === 'abandoned'
  const jobs = followJobs(become.jobs, laid, zeroMs, second)
  const current = over || phase === 'not-started' ? null : currentOf(laid, second)
  return {
    tank: tank.tank,
    phase,
    zero: zeroMs,
    plan: become,
    index: current?.index ?? null,
    timeLeft: current === null || !isBath(current.step) ? null : current.due - second,
    awaited: over ? null : awaitedOf(laid, zeroMs),
    jobs,
    next: over ? null : (jobs.find(({ state: at }) => at === 'waiting' || at === 'to-come') ?? null),
    pourOut: pourOutOf(plan, reckoned),
    developed: developedBy(tank, laid, second),
    readings: reckoned.readings,
    toTheMinute: toTheMinute(tank),
    changed: over ? null : changedBy(plan, reckoned, second),
    deviations: deviationsOf(state, tank, reckoned, phase),
  }
}

/** A tank that was said to be over is looked at from its end, whenever that was; seconds from its zero. */
function lookedAt({ finished }: TankState, { laid, zeroMs }: Reckoned, now: Instant): number {
  const second = (now - zeroMs) / 1000
  return finished === null ? second : Math.max(second, ...laid.map(({ free }) => free))
}

function toTheMinute({ steps }: TankState): TankFollowing['toTheMinute'] {
  const having = (side: 'in' | 'out') =>
    [...steps].flatMap(([index, step]) => (slackOfStep(step)[side] > 0 ? [index] : [])).sort((a, b) => a - b)
  return { in: having('in'), out: having('out') }
}

function phaseOf(tank: TankState, laid: readonly Laid[]): Phase {
  const { abandoned, finished } = tank
  if (abandoned !== null) return 'abandoned'
  const over = laid.every(({ step, skipped, outBy }) => {
    const asks = isBath(step) || step.within === null
    return skipped || !asks || outBy === 'pressed' || outBy === 'implied'
  })
  if (finished !== null || over) return 'done'
  return hasBegun(tank) ? 'running' : 'not-started'
}

/** The step whose bath is in the tank, or whose act is under way. */
function currentOf(laid: readonly Laid[], now: number): Laid | null {
  const asks = laid.filter(({ step, skipped }) => !skipped && (isBath(step) || step.within === null))
  return asks.findLast((one) => !isBefore(now, one.in) && one.inBy !== 'waiting') ?? null
}

function pourOutOf(plan: TankPlan, { laid, zeroMs }: Reckoned): TankFollowing['pourOut'] {
  const bath = laid.find(({ step, skipped }) => isBath(step) && !skipped && step.time.law === 'by-developing-time')
  if (bath === undefined) return null
  const planned = plan.laid[bath.index] as Laid
  const at = (second: number): Instant => Math.round(zeroMs + second * 1000)
  return { at: at(bath.due), planned: at(bath.in + planned.out - planned.in) }
}

function soonest(tanks: readonly TankFollowing[]): Following['next'] {
  const nexts = tanks.flatMap(({ tank, next }) => (next === null ? [] : [{ tank, job: next }]))
  const first = (best: { tank: string; job: FollowedJob }, one: { tank: string; job: FollowedJob }) =>
    one.job.at < best.job.at ? one : best
  return nexts.length === 0 ? null : nexts.reduce(first)
}
