import { say } from '../../../../words/index.js'
import { LookAtDemo, useWriter } from '../../../shared/ui/index.js'

/** Before there is a run: what one is, and that practice costs nothing. */
export function NoRuns() {
  const writer = useWriter()
  return (
    <div className="teach">
      <p className="lead">
        <strong>{say('runs.none', {}, writer)}</strong> {say('runs.none.how', {}, writer)}
      </p>
      <p>{say('runs.none.practice', {}, writer)}</p>
      <LookAtDemo words={say('times.none.look', {}, writer)} />
    </div>
  )
}
