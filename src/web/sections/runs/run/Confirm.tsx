import { useEffect, useState } from 'react'
import type { Awaited, Happening, TankFollowing } from '../../../../score/index.js'
import { say, type Writer, writeTimeOfDay } from '../../../../words/index.js'
import { useBench } from '../../../shared/api/index.js'
import { Button, Dialog, useWriter } from '../../../shared/ui/index.js'
import { stepName } from '../names.js'
import { Hold } from './Hold.js'
import type { ScreenPart } from './screen.js'

/** More than so much before its second it asks. */
const EARLY_MS = 20_000
/** A pedal confirms only what has been announced: from the first signal on. */
const ANNOUNCED_MS = 30_000
const PEDAL: readonly string[] = ['PageDown', ' ', 'ArrowRight', 'ArrowDown', 'ArrowLeft', 'ArrowUp']

/** The one control: confirms by a hold what the tank waits for. */
export function Confirm({ running, tank, tell }: ScreenPart) {
  const writer = useWriter()
  const zone = useBench().data?.zone ?? 'UTC'
  const [asks, setAsks] = useState(false)
  const { awaited } = tank
  const confirm = () => {
    if (awaited === null) return
    setAsks(false)
    tell(null)
    running.write(tank.tank, awaited.index, happened(awaited))
  }
  const early = awaited === null ? 0 : awaited.due - running.now
  const isEarly = awaited?.kind === 'poured-out' && early > EARLY_MS
  usePedal(awaited !== null && early <= ANNOUNCED_MS && !asks, confirm)
  if (awaited === null) return null
  // One bath's hold follows the other's at once and looks alike, so it says whose it is.
  const name = stepName(tank.plan.tank.recipe, awaited.index)
  const due = say('tank.due', { name, at: writeTimeOfDay(awaited.due, zone) }, writer)
  return (
    <>
      <Hold
        className="confirm"
        label={holdWords(tank, awaited, writer)}
        more={due}
        holding={isEarly ? say('tank.early', { by: early / 1000 }, writer) : due}
        onHeld={() => (isEarly ? setAsks(true) : confirm())}
      />
      {asks && isEarly && (
        <Dialog title={say('tank.ask-early', { by: early / 1000 }, writer)} onClose={() => setAsks(false)}>
          <p>{whyAsked(tank, awaited, writer)}</p>
          <div className="stack">
            <Hold label="Hold: I am pouring out" onHeld={confirm} />
            <Button onClick={() => setAsks(false)}>No, it stays in</Button>
          </div>
        </Dialog>
      )}
    </>
  )
}

/** What pouring early would take away. */
const whyAsked = ({ plan: { laid } }: TankFollowing, { index }: Awaited, writer: Writer): string => {
  const step = laid[index]?.step
  const develops = step?.step === 'bath' && step.time.law === 'by-developing-time'
  return develops
    ? say('tank.ask-early.why', {}, writer)
    : say('tank.ask-early.other', { name: step?.name ?? '' }, writer)
}

const happened = ({ kind }: Awaited): Happening => ({ kind })

const holdWords = ({ plan: { tank } }: TankFollowing, { kind, index }: Awaited, writer: Writer): string => {
  const name = stepName(tank.recipe, index)
  if (kind === 'poured-out') return say('tank.hold.poured-out', {}, writer)
  return kind === 'poured-in'
    ? say('tank.hold.poured-in', { name }, writer)
    : say('tank.hold.step-done', { name }, writer)
}

/** A pedal or page-turner presses keys; so does a keyboard. Keys meant for a control are left to it. */
function usePedal(wanted: boolean, confirm: () => void): void {
  useEffect(() => {
    if (!wanted) return
    const press = (event: KeyboardEvent) => {
      const inControl =
        event.target instanceof HTMLElement && event.target.matches('input, textarea, select, button, a')
      if (event.repeat || inControl || !PEDAL.includes(event.key)) return
      event.preventDefault()
      confirm()
    }
    window.addEventListener('keydown', press)
    return () => window.removeEventListener('keydown', press)
  })
}
