import { say } from '../../../../words/index.js'
import { useRuns } from '../../../shared/api/index.js'
import { useWriter } from '../../../shared/ui/index.js'
import { RunRow } from '../list/RunRow.js'

const LAST = 3

/** The last runs of a film with what its negatives said. */
export function Earlier({ film }: { film: string }) {
  const writer = useWriter()
  const runs = useRuns({ film, ended: 'true', practice: 'false', limit: LAST }).data?.runs
  if (runs === undefined) return null
  if (runs.length === 0) return <p className="small">{say('plan.earlier.none', { film }, writer)}</p>
  return (
    <section>
      <h2>{say('plan.earlier', { film }, writer)}</h2>
      <ul className="rows">
        {runs.map((run) => (
          <RunRow key={run.id} run={run} />
        ))}
      </ul>
    </section>
  )
}
