import { say, type Writer, writeDay } from '../../../../words/index.js'
import { type RunSummary, useBench } from '../../../shared/api/index.js'
import { Link } from '../../../shared/navigation/index.js'
import { useWriter, Words } from '../../../shared/ui/index.js'
import { runName, sayOf } from '../names.js'

/** One run: what was in it, when, how it ended. */
export function RunRow({ run }: { run: RunSummary }) {
  const writer = useWriter()
  const zone = useBench().data?.zone ?? 'UTC'
  const ended = run.state === 'finished' || run.state === 'abandoned'
  return (
    <li>
      <Link className="row-link" href={ended ? `/runs/${run.id}/record` : `/runs/${run.id}`}>
        <strong>
          <Words>{runName(run, writer)}</Words>
        </strong>
        <span className="row-figure">{writeDay(Date.parse(run.started_at ?? run.planned_at), zone)}</span>
        <span className="small row-more">
          <Words>{aboutRun(run, writer)}</Words>
        </span>
      </Link>
    </li>
  )
}

/** How it stands, how far it was developed, what the negatives said. */
export function aboutRun(run: RunSummary, writer: Writer): string {
  const [first] = run.outcome
  const parts = [
    sayOf(`runs.row.${run.state}`, {}, writer),
    ...(run.practice === null ? [] : [say('runs.row.practice', { speed: run.practice }, writer)]),
    ...(first?.equivalent ? [say('runs.row.developed', first.equivalent, writer)] : []),
    ...run.verdicts
      .filter(({ stands, density }) => stands && density !== null)
      .map(({ density }) => sayOf(`run.verdict.${density}`, {}, writer)),
  ]
  return parts.join('; ')
}
