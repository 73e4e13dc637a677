import { say } from '../../../../words/index.js'
import { useBench } from '../../../shared/api/index.js'
import { OpenDemo, useWriter } from '../../../shared/ui/index.js'

/** Before there is a time: what to look for, and where a look at a full bench can be had. */
export function NoTimes() {
  const writer = useWriter()
  const own = useBench().data?.kind === 'own'
  return (
    <div className="teach">
      <p className="lead">
        <strong>{say('times.none', {}, writer)}</strong> {say('times.none.how', {}, writer)}
      </p>
      {own && (
        <div className="row">
          <p>{say('times.none.look', {}, writer)}</p>
          <OpenDemo />
        </div>
      )}
    </div>
  )
}
