import { say, type Writer, writeDay } from '../../../../words/index.js'
import { type RunSummaries, useBench, useRuns } from '../../../shared/api/index.js'
import { Link } from '../../../shared/navigation/index.js'
import { Asked, ButtonLink, Page, useWriter, Words } from '../../../shared/ui/index.js'
import { runName } from '../names.js'

const SHOWN = 100

/** Which run it was: one that waits as a plan or stopped half-way, or one that is planned now. */
export function WhichPage() {
  const writer = useWriter()
  const runs = useRuns({ ended: 'false', limit: SHOWN })
  return (
    <Page
      title={say('paper.title', {}, writer)}
      lead={say('paper.which', {}, writer)}
      actions={<ButtonLink href="/runs/new">Plan the run now</ButtonLink>}
    >
      <Asked query={runs}>
        {(found) =>
          found.runs.length === 0 ? (
            <p className="teach">{say('paper.which.none', {}, writer)}</p>
          ) : (
            <Waiting runs={found.runs} writer={writer} />
          )
        }
      </Asked>
    </Page>
  )
}

function Waiting({ runs, writer }: { runs: RunSummaries['runs']; writer: Writer }) {
  const zone = useBench().data?.zone ?? 'UTC'
  return (
    <>
      <p>{say('paper.which.how', {}, writer)}</p>
      <ul className="rows">
        {runs.map((run) => (
          <li key={run.id}>
            <Link className="row-link" href={`/runs/${run.id}/paper`}>
              <strong>
                <Words>{runName(run, writer)}</Words>
              </strong>
              <span className="small row-more">
                {run.started_at === null
                  ? say('paper.planned-on', { day: writeDay(Date.parse(run.planned_at), zone) }, writer)
                  : say('paper.under-way', { day: writeDay(Date.parse(run.started_at), zone) }, writer)}
              </span>
            </Link>
          </li>
        ))}
      </ul>
    </>
  )
}
