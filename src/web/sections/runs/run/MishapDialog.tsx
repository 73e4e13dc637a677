import { useState } from 'react'
import { readDuration, type Seconds, writeDuration } from '../../../../kernel/index.js'
import { type MishapKind, mishapCard, stageOf } from '../../../../score/index.js'
import { Button, Dialog, QuantityField, useWriter } from '../../../shared/ui/index.js'
import { sayOf } from '../names.js'
import { Hold } from './Hold.js'
import type { ScreenPart } from './screen.js'

const MISHAPS: readonly MishapKind[] = [
  'fixer-first',
  'developer-short',
  'wrong-dilution',
  'lid-came-off',
  'tank-leaks',
  'stop-skipped',
  'power-or-phone-dead',
]

/** What went wrong, in one press; then what to do this second. The entry stands at once and can be taken back. */
export function MishapDialog({ running, tank, tell, onClose }: ScreenPart & { onClose: () => void }) {
  const writer = useWriter()
  const [happened, setHappened] = useState<{ kind: MishapKind; id: string } | null>(null)
  const { index } = tank
  const choose = (kind: MishapKind) =>
    setHappened({ kind, id: running.write(tank.tank, index, { kind: 'mishap', mishap: kind }) })
  const takeBack = () => {
    if (happened !== null) running.write(tank.tank, null, { kind: 'retracted', of: happened.id })
    onClose()
  }
  if (happened === null)
    return (
      <Dialog title="What went wrong?" onClose={onClose}>
        <div className="stack">
          {MISHAPS.map((kind) => (
            <Button key={kind} onClick={() => choose(kind)}>
              {sayOf(`mishap.${kind}`, {}, writer)}
            </Button>
          ))}
          <Button look="bare" onClick={onClose}>
            Nothing, go back
          </Button>
        </div>
      </Dialog>
    )
  const card = mishapCard(happened.kind, stageOf(tank.plan.tank.recipe, index))
  const retime = (referenceTime: Seconds) => {
    running.write(tank.tank, null, { kind: 'retracted', of: happened.id })
    running.write(tank.tank, index, { kind: 'mishap', mishap: happened.kind, referenceTime })
    tell(null)
    onClose()
  }
  return (
    <Dialog title={sayOf(`mishap.${happened.kind}`, {}, writer)} onClose={onClose}>
      <ol className="todo">
        {card.todo.map((code) => (
          <li key={code}>{sayOf(code, {}, writer)}</li>
        ))}
      </ol>
      <p className="quiet">{sayOf(card.means, {}, writer)}</p>
      {card.becomes !== null && <p>{sayOf(card.becomes, {}, writer)}</p>}
      <div className="stack">
        {happened.kind === 'wrong-dilution' && <OtherTime onTime={retime} />}
        <Button look="go" onClick={onClose}>
          Go on
        </Button>
        <Button onClick={takeBack}>It did not happen</Button>
      </div>
    </Dialog>
  )
}

/** The sheet's time for the dilution that is really in the tank. */
function OtherTime({ onTime }: { onTime: (time: Seconds) => void }) {
  const [text, setText] = useState('')
  const reading = text.trim() === '' ? null : readDuration(text)
  return (
    <>
      <QuantityField
        label="Time for this dilution, at the sheet’s temperature"
        text={text}
        onText={setText}
        reading={reading}
        write={(value) => writeDuration(value)}
      />
      {reading?.kind === 'read' && (
        <Hold label={`Hold: develop as for ${reading.echo}`} onHeld={() => onTime(reading.value)} />
      )}
    </>
  )
}
