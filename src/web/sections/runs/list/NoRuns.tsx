import { say } from '../../../../words/index.js'
import { useBench } from '../../../shared/api/index.js'
import { OpenDemo, useWriter } from '../../../shared/ui/index.js'

/** Before there is a run: what one is, and that practice costs nothing. */
export function NoRuns() {
  const writer = useWriter()
  const own = useBench().data?.kind === 'own'
  return (
    <div className="teach">
      <p className="lead">
        <strong>{say('runs.none', {}, writer)}</strong> {say('runs.none.how', {}, writer)}
      </p>
      <p>{say('runs.none.practice', {}, writer)}</p>
      {own && (
        <div className="row">
          <p>{say('times.none.look', {}, writer)}</p>
          <OpenDemo />
        </div>
      )}
    </div>
  )
}
