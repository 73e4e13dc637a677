import { type Seconds, writeDuration } from '../../../../kernel/index.js'
import type { Laid, TankFollowing } from '../../../../score/index.js'
import { say } from '../../../../words/index.js'
import { useWriter } from '../../../shared/ui/index.js'
import type { Running } from '../engine/useRunning.js'

/** Whole seconds, so that 0:00 is the moment itself. */
export const writeCount = (seconds: number): string => writeDuration(Math.ceil(Math.abs(seconds) - 0.05) as Seconds)

/** The bath under way and how long it still is; while one is out and the next not in, when that goes in. */
export function BathLead({ running, tank }: { running: Running; tank: TankFollowing }) {
  const writer = useWriter()
  const second = (running.now - tank.zero) / 1000
  const { name, left, goesIn } = leadOf(tank, second)
  const about = left < -1 ? (goesIn ? 'tank.late' : 'tank.over') : goesIn ? 'tank.goes-in' : 'tank.time-left'
  return (
    <div className="lead-row">
      <p className="lead-name">
        <strong>{name}</strong>
        <span className="quiet">{say(about, {}, writer)}</span>
      </p>
      <p className={`count ${left < -1 ? 'care' : ''}`} role="timer" aria-label={`${name}, time left`}>
        {writeCount(left)}
      </p>
    </div>
  )
}

interface Lead {
  readonly name: string
  readonly left: number
  /** The bath before is out, and this one is not in yet. */
  readonly goesIn: boolean
}

function leadOf({ plan: { laid }, index }: TankFollowing, second: number): Lead {
  const current = laid.find((one) => one.index === index)
  const asked = (one: Laid) => !one.skipped && (one.step.step === 'bath' || one.step.within === null)
  const next = laid.find((one) => asked(one) && (current === undefined || one.index > current.index))
  if (current === undefined || (current.outBy === 'pressed' && next !== undefined)) {
    const coming = next ?? laid[0]
    if (coming?.step.step === 'bath') return { name: coming.step.name, left: coming.in - second, goesIn: true }
    if (coming !== undefined) return { name: coming.step.name, left: coming.due - second, goesIn: false }
  }
  return { name: current?.step.name ?? '', left: (current?.due ?? second) - second, goesIn: false }
}
