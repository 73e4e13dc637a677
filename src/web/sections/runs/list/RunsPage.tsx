import { say } from '../../../../words/index.js'
import { type RunSummaries, useRuns } from '../../../shared/api/index.js'
import { Asked, ButtonLink, Page, useWriter, Words } from '../../../shared/ui/index.js'
import { NoRuns } from './NoRuns.js'
import { RunRow } from './RunRow.js'

/** As many runs as are shown at once. */
const SHOWN = 50

export function RunsPage() {
  const writer = useWriter()
  const runs = useRuns({ limit: SHOWN })
  const all = runs.data?.runs ?? []
  const open = all.filter(({ state }) => state === 'planned' || state === 'running').length
  return (
    <Page
      title="Runs"
      lead={all.length > 0 && <Words>{say('runs.here', { open, ended: all.length - open }, writer)}</Words>}
      actions={
        <>
          <ButtonLink href="/runs/lists">Lists of baths</ButtonLink>
          <ButtonLink href="/runs/paper">Type in a run done on paper</ButtonLink>
          <ButtonLink look="go" href="/runs/new">
            Plan a run
          </ButtonLink>
        </>
      }
    >
      <Asked query={runs}>{(found) => (found.runs.length === 0 ? <NoRuns /> : <Kept runs={found.runs} />)}</Asked>
    </Page>
  )
}

const Kept = ({ runs }: { runs: RunSummaries['runs'] }) => (
  <ul className="rows">
    {runs.map((run) => (
      <RunRow key={run.id} run={run} />
    ))}
  </ul>
)
