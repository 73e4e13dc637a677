import { useState } from 'react'
import { nameKey } from '../../../kernel/index.js'
import type { TodayView } from '../../../wire/index.js'
import { say, writeDay, writeMinuteOfDay } from '../../../words/index.js'
import { moveRolls, type RollBatch, undoRollBatch, useWrite } from '../../shared/api/index.js'
import { Button, sentenceOf, TextField, useTell, useWriter, Words } from '../../shared/ui/index.js'

type Roll = TodayView['drying'][number]

/** Rolls that hang and from when they are dry, and rolls that wait for a hook. */
export function Drying({ drying, zone }: { drying: readonly Roll[]; zone: string }) {
  if (drying.length === 0) return null
  return (
    <section aria-labelledby="drying">
      <h2 id="drying">Drying</h2>
      <ul className="rows drying">
        {drying.map((roll) =>
          roll.ready_at === null ? (
            <ToHang key={roll.id} roll={roll} hanging={drying} />
          ) : (
            <Hung key={roll.id} roll={roll} zone={zone} />
          ),
        )}
      </ul>
    </section>
  )
}

/** A step of one roll, with the way back. */
function useStep() {
  const writer = useWriter()
  const tell = useTell()
  const back = useWrite((batch: string) => undoRollBatch(batch, {}), 'rolls')
  const move = useWrite(moveRolls, 'rolls')
  const step = (roll: Roll, state: 'hung' | 'sleeved', hook = '') => {
    const done = ({ batch_id }: RollBatch) => {
      const undo = async () => {
        await back.mutateAsync(batch_id)
        return say('web.undone', { name: roll.number }, writer)
      }
      tell({ sentence: say(`drying.${state}`, { number: roll.number, hook }, writer), undo })
    }
    move.mutate(
      { roll_ids: [roll.id], state, hook },
      { onSuccess: done, onError: (fault) => tell({ sentence: sentenceOf(fault) }) },
    )
  }
  return { step, waits: move.isPending }
}

function ToHang({ roll, hanging }: { roll: Roll; hanging: readonly Roll[] }) {
  const writer = useWriter()
  const { step, waits } = useStep()
  const [hook, setHook] = useState('')
  const there = hanging.find((one) => hook.trim() !== '' && nameKey(one.hook) === nameKey(hook))
  return (
    <li className="to-hang">
      <div>
        <p>
          <Words>{say('drying.to-hang', { number: roll.number, film: roll.film }, writer)}</Words>
        </p>
        <TextField
          label={`Hook or clip of ${roll.number}`}
          hint={there && say('drying.taken', there, writer)}
          value={hook}
          onText={setHook}
          maxLength={60}
        />
      </div>
      <Button waits={waits} aria-label={`Hang up ${roll.number}`} onClick={() => step(roll, 'hung', hook.trim())}>
        Hang it up
      </Button>
    </li>
  )
}

function Hung({ roll, zone }: { roll: Roll; zone: string }) {
  const writer = useWriter()
  const { step, waits } = useStep()
  const ready = Date.parse(roll.ready_at ?? roll.since)
  const { number, film, hook } = roll
  const today = writeDay(Date.now(), zone) === writeDay(ready, zone)
  const at = `${writeMinuteOfDay(ready, zone)}${today ? '' : ` on ${writeDay(ready, zone)}`}`
  const facts = { number, film, hook, at, by: roll.dry_by ?? 'usual' }
  return (
    <li>
      <p>
        <Words>{say(ready <= Date.now() ? 'drying.ready' : 'drying.hangs', facts, writer)}</Words>
      </p>
      <Button waits={waits} aria-label={`${number} is sleeved`} onClick={() => step(roll, 'sleeved')}>
        It is sleeved
      </Button>
    </li>
  )
}
