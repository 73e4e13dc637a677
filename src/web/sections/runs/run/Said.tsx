import type { TankFollowing } from '../../../../score/index.js'
import { say } from '../../../../words/index.js'
import { useWriter, Words } from '../../../shared/ui/index.js'
import type { Running } from '../engine/useRunning.js'
import { sayOf } from '../names.js'

interface SaidProps {
  readonly running: Running
  readonly tank: TankFollowing
  /** What was just said by something on the screen; it comes first. */
  readonly said: string | null
}

/** One line above the hold: what has just changed, what was taken back, that the bench is away. */
export function Said({ running: { written }, tank, said }: SaidProps) {
  const writer = useWriter()
  const under = tank.plan.laid.find(({ index }) => index === tank.index)
  const changed = tank.changed !== null && under?.course && under.outBy !== 'pressed' ? tank.changed : null
  const away = written.away
    ? written.unsent > 0
      ? say('tank.unsent', { count: written.unsent }, writer)
      : say('tank.away', {}, writer)
    : null
  const refused = written.refused === null ? null : say('tank.refused', { sentence: written.refused }, writer)
  const line = said ?? (changed === null ? null : sayOf(`run.changed.${changed.code}`, changed, writer))
  return (
    <div role="status" className="said">
      {line !== null && (
        <p>
          <Words>{line}</Words>
        </p>
      )}
      {(refused ?? away) && (
        <p className="care">
          <Words>{refused ?? away ?? ''}</Words>
        </p>
      )}
    </div>
  )
}
