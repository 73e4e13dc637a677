import {
  type Agitation,
  type Bath,
  bathBefore,
  isBath,
  isRefillOf,
  type Job,
  type Laid,
  type Score,
  type TankPlan,
  type Turn,
} from '../../score/index.js'

/** A job of one tank, at its moment of the whole run. */
export interface TankJob {
  readonly plan: TankPlan
  readonly one: Laid
  readonly job: Job
  /** Seconds from the run's zero to the tank's own. */
  readonly offset: number
}

/**
 * What one row of the bench sheet is about: one job, a turning that goes on without a stop, turns that follow one
 * another, or a bath that is poured out and filled again several times.
 */
export type Entry = { readonly kind: 'job' | 'turned-on'; readonly job: TankJob } | ManyJobs

/** Turns of one kind, or fills of the same. */
interface ManyJobs {
  readonly kind: 'turns' | 'refills'
  readonly jobs: readonly TankJob[]
}

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
    const refills = refilled(last, job)
    if (refills !== null) entries[entries.length - 1] = refills
    else if (job.job.kind !== 'turn') entries.push({ kind: 'job', job })
    else if (turnOf(job) === null) entries.push({ kind: 'turned-on', job })
    else if (last?.kind === 'turns' && joins(last.jobs, job)) entries[entries.length - 1] = joined(last, job)
    else entries.push({ kind: 'turns', jobs: [job] })
  }
  return entries
}

/** Fills of the same that follow one another, so far; null where a job is no further one of them. */
function refilled(last: Entry | undefined, job: TankJob): ManyJobs | null {
  if (last === undefined || !isRefill(job)) return null
  const before = 'jobs' in last ? last.jobs : [last.job]
  const joins = last.kind !== 'turns' && before.every((one) => one.plan === job.plan && isRefill(one))
  return joins ? { kind: 'refills', jobs: [...before, job] } : null
}

/** Whether a change pours in what was poured out: fresh water after water. */
function isRefill({ plan, one, job }: TankJob): boolean {
  const before = bathBefore(plan.laid, one.index)
  return job.kind === 'change' && before !== null && isBath(one.step) && isRefillOf(before.step, one.step)
}

export const momentOf = ({ offset, job }: TankJob): number => offset + job.start

const joined = ({ jobs }: ManyJobs, job: TankJob): Entry => ({
  kind: 'turns',
  jobs: [...jobs, job],
})

/** Turns share an entry as long as each tank in it is turned in one way. */
function joins(jobs: readonly TankJob[], job: TankJob): boolean {
  const own = jobs.findLast(({ plan }) => plan === job.plan)
  return own === undefined || (own.one === job.one && JSON.stringify(turnOf(own)) === JSON.stringify(turnOf(job)))
}

/** What is done at a job of turning; null where the tank is turned on and on. */
export function turnOf({ one, job }: TankJob): Turn | null {
  return turnAt(one.agitation ?? (one.step as Bath).agitation, job.start - one.in)
}

function turnAt(agitation: Agitation, at: number): Turn | null {
  switch (agitation.kind) {
    case 'turns':
      return agitation.turn
    case 'moments':
      return agitation.moments.find((moment) => Math.abs(moment.at - at) < 0.5)?.turn ?? null
    case 'then-continuous':
      return at < agitation.from ? turnAt(agitation.before, at) : null
    default:
      return null
  }
}
