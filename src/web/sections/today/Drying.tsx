import { useState } from 'react'
import type { TodayView } from '../../../wire/index.js'
import { say, writeMinuteOfDay } from '../../../words/index.js'
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
            <ToHang key={roll.id} roll={roll} />
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

function ToHang({ roll }: { roll: Roll }) {
  const writer = useWriter()
  const { step, waits } = useStep()
  const [hook, setHook] = useState('')
  return (
    <li>
      <div>
        <p>
          <Words>{say('drying.to-hang', { number: roll.number, film: roll.film }, writer)}</Words>
        </p>
        <TextField label={`Hook or clip of ${roll.number}`} value={hook} onText={setHook} maxLength={60} />
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
  const facts = { number, film, hook, at: writeMinuteOfDay(ready, zone) }
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
