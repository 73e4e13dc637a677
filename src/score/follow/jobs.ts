import type { Instant } from '../../kernel/index.js'
import { bathBefore } from '../plan/change.js'
import type { Job, Laid } from '../plan/definition.js'
import { isBath } from '../recipe/kinds.js'
import { isBefore } from '../recipe/moments.js'
import type { Awaited, FollowedJob, JobState } from './definition.js'

/** Every job with where it stands at `now`, seconds from the tank's zero. */
export function followJobs(jobs: readonly Job[], laid: readonly Laid[], zeroMs: Instant, now: number): FollowedJob[] {
  return jobs.map((job) => ({
    job,
    state: stateOf(job, laid, now),
    at: instant(zeroMs, job.start),
    until: instant(zeroMs, job.end),
  }))
}

const instant = (zeroMs: Instant, second: number): Instant => Math.round(zeroMs + second * 1000)

function stateOf(job: Job, laid: readonly Laid[], now: number): JobState {
  if (waits(job, laid)) return 'waiting'
  if (isBefore(now, job.start)) return 'to-come'
  if (isBefore(now, job.end)) return 'now'
  const { step, outBy } = laid[job.index] as Laid
  const unconfirmed = !isBath(step) && step.within !== null && outBy === 'expected'
  return unconfirmed ? 'missed' : 'done'
}

/** A job hangs on a confirmation that is due and has not come. */
function waits({ kind, index }: Job, laid: readonly Laid[]): boolean {
  if (kind === 'turn' || kind === 'check') return false
  const own = laid[index] as Laid
  if (kind !== 'change') return own.outBy === 'waiting'
  return own.inBy === 'waiting' || bathBefore(laid, index)?.outBy === 'waiting'
}

/** The confirmation that comes next in the order of the list. */
export function awaitedOf(laid: readonly Laid[], zeroMs: Instant): Awaited | null {
  for (const { index, step, skipped, in: start, inBy, outBy, due } of laid) {
    if (skipped || (!isBath(step) && step.within !== null)) continue
    if (isBath(step) && isOpen(inBy)) return { kind: 'poured-in', index, due: instant(zeroMs, start) }
    if (isOpen(outBy)) return { kind: isBath(step) ? 'poured-out' : 'step-done', index, due: instant(zeroMs, due) }
  }
  return null
}

const isOpen = (by: Laid['inBy']): boolean => by === 'expected' || by === 'waiting'
