import type { TankFollowing } from '../../../../score/index.js'
import { say } from '../../../../words/index.js'
import { Button, useWriter, Words } from '../../../shared/ui/index.js'
import type { Running } from '../engine/useRunning.js'
import { writeCount } from './BathLead.js'
import { jobWords } from './jobWords.js'
import { openTanks } from './shownTank.js'

interface OtherTanksProps {
  readonly running: Running
  readonly tank: TankFollowing
  readonly choose: (tank: string) => void
}

/** The tanks beside the one that is shown, each with what it needs next; a press shows it until the next job. */
export function OtherTanks({ running, tank, choose }: OtherTanksProps) {
  const others = openTanks(running.following).filter((one) => one !== tank)
  if (others.length === 0) return null
  return (
    <section className="other-tanks" aria-label="Other tanks">
      {others.map((other) => (
        <Button key={other.tank} onClick={() => choose(other.tank)}>
          <OtherTank now={running.now} other={other} />
        </Button>
      ))}
    </section>
  )
}

function OtherTank({ now, other }: { now: number; other: TankFollowing }) {
  const writer = useWriter()
  const job = other.jobs.find(({ state }) => state === 'now') ?? other.next
  if (job === null) return <Words>{say('tank.other', { tank: other.tank }, writer)}</Words>
  const what = { tank: other.tank, job: jobWords(other, job, writer) }
  return (
    <>
      <Words>
        {job.state === 'to-come' ? say('tank.other.in', what, writer) : say('tank.other.now', what, writer)}
      </Words>{' '}
      {job.state === 'to-come' && <span>{writeCount((job.at - now) / 1000)}</span>}
    </>
  )
}
