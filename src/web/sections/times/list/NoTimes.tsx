import { say } from '../../../../words/index.js'
import { LookAtDemo, useWriter } from '../../../shared/ui/index.js'

/** Before there is a time: what to look for, and where a look at a full bench can be had. */
export function NoTimes() {
  const writer = useWriter()
  return (
    <div className="teach">
      <p className="lead">
        <strong>{say('times.none', {}, writer)}</strong> {say('times.none.how', {}, writer)}
      </p>
      <LookAtDemo words={say('times.none.look', {}, writer)} />
    </div>
  )
}
