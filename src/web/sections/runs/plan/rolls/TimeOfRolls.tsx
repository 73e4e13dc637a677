import { nameKey } from '../../../../../kernel/index.js'
import { say } from '../../../../../words/index.js'
import type { TimeRecord } from '../../../../shared/api/index.js'
import { nameOf } from '../../../../shared/figures/index.js'
import { Button, useWriter, Words } from '../../../../shared/ui/index.js'
import type { LoadDraft } from './load.js'
import { timesFor } from './load.js'

interface TimeOfRollsProps {
  readonly load: LoadDraft
  readonly times: readonly TimeRecord[]
  /** The kept time of the plan; null where one is typed. */
  readonly time: TimeRecord | null
  readonly onTime: (id: string) => void
}

/** Says when the kept time of the plan is one of another film or index than the rolls, and offers theirs. */
export function TimeOfRolls({ load, times, time, onTime }: TimeOfRollsProps) {
  const writer = useWriter()
  const [first] = load.rolls
  if (time === null || first === undefined || load.shared) return null
  if (nameKey(time.film) === nameKey(first.film) && time.exposure_index === first.index) return null
  return (
    <div className="note" role="status">
      <p>
        <Words>
          {say('plan.rolls.other-time', { time: nameOf(time), film: first.film, index: first.index }, writer)}
        </Words>
      </p>
      {timesFor(first, times).map((one) => (
        <Button key={one.id} onClick={() => onTime(one.id)}>
          Take {nameOf(one)}
        </Button>
      ))}
    </div>
  )
}
