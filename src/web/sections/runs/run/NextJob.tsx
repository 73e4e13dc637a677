import type { FollowedJob, TankFollowing } from '../../../../score/index.js'
import { say } from '../../../../words/index.js'
import { useWriter, Words } from '../../../shared/ui/index.js'
import type { Running } from '../engine/useRunning.js'
import { writeCount } from './BathLead.js'
import { jobWords, partAt, partWords } from './jobWords.js'

/** The job that hands are at, or the next one, with its count. */
export function NextJob({ running: { now }, tank }: { running: Running; tank: TankFollowing }) {
  const writer = useWriter()
  const job = tank.jobs.find(({ state }) => state === 'now') ?? tank.next
  if (job === null) return null
  const part = job.state === 'now' && job.job.kind === 'change' ? partAt(job, (now - tank.zero) / 1000) : null
  const words = part === null ? jobWords(tank, job, writer) : partWords(tank, job, part, writer)
  const coming = job.state === 'to-come'
  const until = part === null ? job.until : tank.zero + part.end * 1000
  const seconds = coming ? job.at - now : job.state === 'now' ? until - now : now - job.at
  const below =
    job.state === 'now'
      ? say('job.still-for', {}, writer)
      : job.state === 'waiting'
        ? say('job.waits', {}, writer)
        : atWords(tank, job)
  return (
    <section className="next-job" aria-label="Next job">
      <h2>
        <Words>{say(coming ? 'job.in' : 'job.now', { job: words }, writer)}</Words>
      </h2>
      <div className="lead-row">
        <p className="quiet">
          <Words>{typeof below === 'string' ? below : say('job.at', { at: below }, writer)}</Words>
        </p>
        <p className="count" role="timer" aria-label={words}>
          {writeCount(seconds / 1000)}
        </p>
      </div>
    </section>
  )
}

/** Seconds into the bath's clock at which a turn begins; nothing for a bath change. */
function atWords({ plan: { laid } }: TankFollowing, { job }: FollowedJob): number | string {
  const own = laid[job.index]
  return job.kind === 'turn' && own !== undefined ? Math.round(job.start - own.in) : ''
}
