import type { Agitation, Bath, Job, Laid, Score, TankPlan, Turn } from '../../score/index.js'

/** A job of one tank, at its moment of the whole run. */
export interface TankJob {
  readonly plan: TankPlan
  readonly one: Laid
  readonly job: Job
  /** Seconds from the run's zero to the tank's own. */
  readonly offset: number
}

/** What one row of the bench sheet is about: one job, or turns that follow one another. */
export type Entry =
  | { readonly kind: 'job'; readonly job: TankJob }
  | { readonly kind: 'turns'; readonly jobs: readonly TankJob[] }

/** How a tank is turned at a moment: a turn, or on and on until a second of its bath's clock. */
export type Turning = { readonly turn: Turn } | { readonly until: number }

/** All jobs of a score in order of time, each in one entry; turns that follow one another share theirs. */
export function entriesOf(score: Score): Entry[] {
  const jobs = score.tanks
    .flatMap((plan) =>
      plan.jobs.map((job): TankJob => ({ plan, one: plan.laid[job.index] as Laid, job, offset: plan.tank.offset })),
    )
    .sort((a, b) => momentOf(a) - momentOf(b))
  const entries: Entry[] = []
  for (const job of jobs) {
    const last = entries.at(-1)
    if (job.job.kind !== 'turn') entries.push({ kind: 'job', job })
    else if (last?.kind === 'turns' && joins(last.jobs, job)) entries[entries.length - 1] = joined(last, job)
    else entries.push({ kind: 'turns', jobs: [job] })
  }
  return entries
}

export const momentOf = ({ offset, job }: TankJob): number => offset + job.start

const joined = ({ jobs }: Extract<Entry, { kind: 'turns' }>, job: TankJob): Entry => ({
  kind: 'turns',
  jobs: [...jobs, job],
})

/** Turns share an entry as long as each tank in it is turned in one way. */
function joins(jobs: readonly TankJob[], job: TankJob): boolean {
  const own = jobs.findLast(({ plan }) => plan === job.plan)
  return own === undefined || sameTurning(turningOf(own), turningOf(job))
}

const sameTurning = (a: Turning, b: Turning): boolean => JSON.stringify(a) === JSON.stringify(b)

export function turningOf({ one, job }: TankJob): Turning {
  return turningIn(one.agitation ?? (one.step as Bath).agitation, job.start - one.in, job.end - one.in)
}

function turningIn(agitation: Agitation, from: number, to: number): Turning {
  switch (agitation.kind) {
    case 'turns':
      return { turn: agitation.turn }
    case 'moments': {
      const own = agitation.moments.find(({ at }) => Math.abs(at - from) < 0.5)
      return own === undefined ? { until: to } : { turn: own.turn }
    }
    case 'then-continuous':
      return from < agitation.from ? turningIn(agitation.before, from, to) : { until: to }
    default:
      return { until: to }
  }
}
