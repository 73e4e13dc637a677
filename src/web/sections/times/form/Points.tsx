import { writeDuration, writeTemperature } from '../../../../kernel/index.js'
import { say } from '../../../../words/index.js'
import { Button, QuantityField, useUnits, Words } from '../../../shared/ui/index.js'
import type { PointText, TimeDraft } from './draft.js'
import type { DraftReading, PointReading } from './readDraft.js'

interface PointsProps {
  readonly draft: TimeDraft
  readonly change: (part: Partial<TimeDraft>) => void
  readonly reading: DraftReading
  readonly tried: boolean
}

/** The sheet's times, each with its temperature; rows are added as the sheet has them. */
export function Points({ draft, change, reading, tried }: PointsProps) {
  const units = useUnits()
  const { points } = draft
  const set = (key: number, part: Partial<PointText>) =>
    change({ points: points.map((point) => (point.key === key ? { ...point, ...part } : point)) })
  const add = () =>
    change({ points: [...points, { key: Math.max(...points.map(({ key }) => key)) + 1, temperature: '', time: '' }] })
  const settled = points.every((_, place) => reading.points[place]?.time?.kind === 'read')
  const trouble = tried || settled ? reading.troubles.points : null
  return (
    <fieldset className="points">
      <legend>Times on the sheet</legend>
      <p className="hint small">{say('times.form.points-hint', {}, units)}</p>
      {points.map((point, place) => (
        <PointRow
          key={point.key}
          place={place + 1}
          point={point}
          reading={reading.points[place]}
          tried={tried}
          set={(part) => set(point.key, part)}
          remove={points.length > 1 ? () => change({ points: points.filter(({ key }) => key !== point.key) }) : null}
        />
      ))}
      {trouble && (
        <p className="trouble" role="status">
          <Words>{trouble}</Words>
        </p>
      )}
      {draft.kind !== 'fixed' && <Button onClick={add}>Add another temperature</Button>}
    </fieldset>
  )
}

interface PointRowProps {
  readonly place: number
  readonly point: PointText
  readonly reading: PointReading | undefined
  readonly tried: boolean
  readonly set: (part: Partial<PointText>) => void
  readonly remove: (() => void) | null
}

function PointRow({ place, point, reading, tried, set, remove }: PointRowProps) {
  const units = useUnits()
  const missing = tried ? reading?.trouble : null
  return (
    <div className="point">
      <QuantityField
        label={`Temperature ${place}`}
        text={point.temperature}
        onText={(temperature) => set({ temperature })}
        reading={reading?.temperature ?? null}
        write={(value) => writeTemperature(value, units)}
        trouble={reading?.temperature ? null : missing}
        strict={tried}
      />
      <QuantityField
        label={`Time ${place}`}
        text={point.time}
        onText={(time) => set({ time })}
        reading={reading?.time ?? null}
        write={writeDuration}
        trouble={reading?.time ? null : missing}
        strict={tried}
      />
      {remove && (
        <Button look="bare" onClick={remove} aria-label={`Take out temperature ${place}`}>
          Take out
        </Button>
      )}
    </div>
  )
}
