import { type KeyboardEvent, useEffect, useState } from 'react'
import { rollNumberIn, writeFormat } from '../../../../../planning/index.js'
import { say } from '../../../../../words/index.js'
import { type RollSummary, useWaitingRolls } from '../../../../shared/api/index.js'
import { Button, TextField, useWriter, Words } from '../../../../shared/ui/index.js'

const SHOWN = 8

/** Rolls that wait, found by any word of theirs or by the code on their sticker; Enter takes the only one. */
export function FindRolls({ taken, onRoll }: { taken: readonly string[]; onRoll: (roll: RollSummary) => void }) {
  const writer = useWriter()
  const [typed, setTyped] = useState('')
  const wanted = rollNumberIn(typed)
  const found = useWaitingRolls(wanted)
  // What was found for the words before is shown until the answer comes, and never taken.
  const settled = found.isSuccess && !found.isPlaceholderData
  const waiting = (found.data?.rolls ?? []).filter(({ id }) => !taken.includes(id))
  const exact = waiting.find(({ number }) => number.toLowerCase() === wanted.toLowerCase())
  const only = exact ?? (waiting.length === 1 ? waiting[0] : undefined)
  const [entered, setEntered] = useState('')
  const take = (roll: RollSummary) => {
    setTyped('')
    setEntered('')
    onRoll(roll)
  }
  // A scanner is quicker than the bench: its Enter counts once the answer is here.
  useEffect(() => {
    if (!settled || wanted === '' || entered !== wanted) return
    if (only === undefined) setEntered('')
    else take(only)
  })
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key !== 'Enter') return
    // The form is not to be sent by the key that a scanner ends every code with.
    event.preventDefault()
    setEntered(wanted)
  }
  return (
    <div className="find-rolls">
      <TextField
        label="Rolls of the register"
        hint={say('plan.rolls.find', {}, writer)}
        value={typed}
        onText={setTyped}
        onKeyDown={onKeyDown}
        maxLength={200}
        enterKeyHint="done"
      />
      {wanted !== '' && (
        <>
          <ul className="rows">
            {waiting.slice(0, SHOWN).map((roll) => (
              <li key={roll.id} className="found-roll">
                <span>
                  <Words>{say('plan.rolls.roll', rollFacts(roll), writer)}</Words>
                </span>
                <Button aria-label={`Take ${roll.number}`} onClick={() => take(roll)}>
                  Take it
                </Button>
              </li>
            ))}
          </ul>
          <p role="status" className="small">
            {settled && <Words>{say('plan.rolls.found', { count: waiting.length, wanted }, writer)}</Words>}
          </p>
        </>
      )}
    </div>
  )
}

const rollFacts = (roll: RollSummary) => {
  const { number, film, exposure_index, treatment, whose } = roll
  const pushed = treatment.as === 'index'
  return { number, film, whose, format: writeFormat(roll), index: pushed ? treatment.index : exposure_index, pushed }
}
