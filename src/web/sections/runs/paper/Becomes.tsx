import { fold, follow, paperEvents, type RunEvent, type Score } from '../../../../score/index.js'
import { say } from '../../../../words/index.js'
import { useWriter } from '../../../shared/ui/index.js'
import { Developed, Deviations } from '../record/Told.js'
import type { PaperReading } from './readDraft.js'

interface BecomesProps {
  readonly score: Score
  readonly known: readonly RunEvent[]
  readonly reading: PaperReading
  readonly zone: string
}

/** What the record will say of the sheet as far as it is typed. */
export function Becomes({ score, known, reading, zone }: BecomesProps) {
  const writer = useWriter()
  const { happened } = reading.sheet
  const last = Math.max(...happened.map(({ at }) => at))
  let number = 0
  const nextId = () => `read-${number++}`
  const events = paperEvents(happened, { entry: 'read', now: last, actor: '', nextId })
  const { tanks } = follow(score, fold(score, [...known, ...events]), last)
  return (
    <section className="sheet-becomes" aria-live="polite">
      <h2>{say('paper.becomes', {}, writer)}</h2>
      {happened.length === 0 && <p className="quiet">{say('paper.becomes.nothing', {}, writer)}</p>}
      {happened.length > 0 &&
        tanks.map((tank) => (
          <div key={tank.tank}>
            <Developed tank={tank} />
            <Deviations tank={tank} zone={zone} />
          </div>
        ))}
    </section>
  )
}
