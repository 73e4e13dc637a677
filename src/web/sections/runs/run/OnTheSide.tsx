import { useState } from 'react'
import { say } from '../../../../words/index.js'
import { type Run, runSheetAddress } from '../../../shared/api/index.js'
import { Button, useWriter } from '../../../shared/ui/index.js'
import { stepName } from '../names.js'
import { AskReason } from './AskReason.js'
import { FilmClear } from './FilmClear.js'
import { MishapDialog } from './MishapDialog.js'
import type { ScreenPart } from './screen.js'
import { newestOf } from './undoable.js'

/** Everything but the next job: what went wrong, undo, clearing, a note, leaving out, giving up. */
export function OnTheSide({ running, tank, tell, run }: ScreenPart & { run: Run }) {
  const writer = useWriter()
  const [open, setOpen] = useState<'wrong' | 'note' | 'skip' | 'abandon' | null>(null)
  const [backId, setBackId] = useState<string | null>(null)
  const newest = newestOf(running, tank, writer)
  const { awaited } = tank
  const undo = () => {
    if (newest === null) return
    setBackId(running.write(tank.tank, null, { kind: 'retracted', of: newest.id }))
    tell(say('tank.taken-back', newest, writer))
  }
  const putBack = () => {
    if (backId !== null) running.write(tank.tank, null, { kind: 'retracted', of: backId })
    setBackId(null)
    tell(null)
  }
  const close = () => setOpen(null)
  const name = awaited === null ? '' : stepName(tank.plan.tank.recipe, awaited.index)
  return (
    <div className="side">
      <Button onClick={() => setOpen('wrong')}>Something went wrong</Button>
      {newest !== null && <Button onClick={undo}>{say('tank.undo', newest, writer)}</Button>}
      <FilmClear running={running} tank={tank} tell={tell} />
      {backId !== null && <Button onClick={putBack}>Put it back</Button>}
      {awaited !== null && <Button onClick={() => setOpen('skip')}>{say('tank.sure-skip', { name }, writer)}</Button>}
      <Button onClick={() => setOpen('note')}>{say('tank.note', {}, writer)}</Button>
      <Button onClick={() => setOpen('abandon')}>{say('tank.sure-abandon', tank, writer)}</Button>
      <a className="btn" href={runSheetAddress(run.id)} target="_blank" rel="noreferrer">
        Bench sheet
      </a>
      {open === 'wrong' && <MishapDialog running={running} tank={tank} tell={tell} onClose={close} />}
      {open === 'note' && (
        <AskReason
          title={say('tank.note', {}, writer)}
          hold="Hold: keep the note"
          label="Note"
          wanted="Nothing is written yet."
          onClose={close}
          onReason={(text) => {
            running.write(tank.tank, tank.index, { kind: 'noted', text })
            tell(say('tank.noted', { text }, writer))
          }}
        />
      )}
      {open === 'skip' && awaited !== null && (
        <AskReason
          title={say('tank.sure-skip', { name }, writer)}
          hold="Hold: leave it out"
          onClose={close}
          onReason={(reason) => running.write(tank.tank, awaited.index, { kind: 'skipped', reason })}
        />
      )}
      {open === 'abandon' && (
        <AskReason
          title={say('tank.sure-abandon', tank, writer)}
          hold="Hold: give it up"
          onClose={close}
          onReason={(reason) => running.write(tank.tank, null, { kind: 'abandoned', reason })}
        />
      )}
    </div>
  )
}
