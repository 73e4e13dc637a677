import { useState } from 'react'
import { readDuration, type Seconds, writeDuration } from '../../../../kernel/index.js'
import type { Bath, Laid, TankFollowing } from '../../../../score/index.js'
import { say } from '../../../../words/index.js'
import { Button, Dialog, QuantityField, useWriter } from '../../../shared/ui/index.js'
import { Hold } from './Hold.js'
import type { ScreenPart } from './screen.js'

/** While a fixer is in whose time hangs on it: that the film has cleared, after as long as it took or as is typed. */
export function FilmClear({ running, tank, tell }: ScreenPart) {
  const writer = useWriter()
  const [text, setText] = useState<string | null>(null)
  const fixer = fixerIn(tank)
  if (fixer === null) return null
  const { laid, bath, multiple } = fixer
  const open = () => {
    const sinceFull = Math.max(1, Math.round((running.now - tank.zero) / 1000 - laid.in))
    setText(writeDuration(sinceFull as Seconds))
  }
  const close = () => setText(null)
  const keep = (clearing: Seconds) => {
    running.write(tank.tank, lookOf(tank, laid), { kind: 'step-done', clearing })
    tell(say('tank.done.clearing', { time: clearing }, writer))
    close()
  }
  const reading = text === null || text.trim() === '' ? null : readDuration(text)
  return (
    <>
      <Button onClick={open}>{say('tank.clear', {}, writer)}</Button>
      {text !== null && (
        <Dialog title={say('tank.clear', {}, writer)} onClose={close}>
          <div className="stack">
            <p>{say('tank.clear.means', { name: bath.name, multiple }, writer)}</p>
            <QuantityField label="It cleared in" text={text} onText={setText} reading={reading} write={writeDuration} />
            {reading?.kind === 'read' && (
              <Hold
                label={say('tank.clear.hold', { time: reading.value }, writer)}
                onHeld={() => keep(reading.value)}
              />
            )}
            <Button onClick={close}>Not yet</Button>
          </div>
        </Dialog>
      )}
    </>
  )
}

/** The bath that is in the tank, if it stays in by how fast film clears. */
function fixerIn({ plan, index }: TankFollowing): { laid: Laid; bath: Bath; multiple: number } | null {
  const laid = plan.laid.find((one) => one.index === index)
  if (laid === undefined || laid.step.step !== 'bath' || laid.outBy === 'pressed') return null
  const { time } = laid.step
  return time.law === 'by-clearing' ? { laid, bath: laid.step, multiple: time.multiple } : null
}

/** The step that is the looking, where the list has one for this bath; else the bath itself. */
function lookOf({ plan }: TankFollowing, fixer: Laid): number {
  const next = plan.laid.find(({ index, step }) => index > fixer.index && step.step === 'bath')
  const look = plan.laid.find(
    ({ index, step }) =>
      index > fixer.index && index < (next?.index ?? plan.laid.length) && step.step === 'act' && step.kind === 'look',
  )
  return look?.index ?? fixer.index
}
