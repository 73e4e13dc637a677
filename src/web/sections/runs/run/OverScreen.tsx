import type { Run } from '../../../shared/api/index.js'
import { ButtonLink, Heading } from '../../../shared/ui/index.js'
import type { Running } from '../engine/useRunning.js'
import { Said } from './Said.js'

/** Every tank is done or given up. */
export function OverScreen({ running, run }: { running: Running; run: Run }) {
  const [tank] = running.following.tanks
  const given = running.following.tanks.every(({ phase }) => phase === 'abandoned')
  return (
    <div className="run-screen">
      <Heading title={given ? 'This run was given up' : 'The film hangs up'} />
      {tank && <Said running={running} tank={tank} said={null} />}
      <div className="row">
        <ButtonLink look="go" href={`/runs/${run.id}/record`}>
          Read the record
        </ButtonLink>
        <ButtonLink href="/runs">All runs</ButtonLink>
      </div>
    </div>
  )
}
