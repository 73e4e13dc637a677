import { say, type Writer, writeDay, writeTimeOfDay } from '../../../../words/index.js'
import { type RollEvent, type RollRecord, useBench, useNames } from '../../../shared/api/index.js'
import { Button, sentenceOf, useTell, useWriter, Words } from '../../../shared/ui/index.js'
import { useBatch } from '../steps/useBatch.js'
import { correctionsOf } from './corrections.js'

interface Entry {
  readonly key: string
  readonly at: string
  readonly by: string
  readonly words: string
  readonly event: RollEvent | null
}

/** All that happened to a roll, oldest first: its steps, also those taken back, and every correction. */
export function History({ roll }: { roll: RollRecord }) {
  const writer = useWriter()
  const zone = useBench().data?.zone ?? 'UTC'
  const nameOf = useNames()
  const last = roll.history.findLast(({ retracted }) => !retracted)
  return (
    <ol className="told roll-history">
      {entriesOf(roll, writer).map(({ key, at, by, words, event }) => (
        <li key={key}>
          <p>
            {event?.retracted ? <s>{words}</s> : <Words>{words}</Words>}
            {event?.retracted && ` (${say('roll.event-back', {}, writer)})`}
          </p>
          <p className="small">
            {`${writeDay(Date.parse(at), zone)}, ${writeTimeOfDay(Date.parse(at), zone).slice(0, 5)}, ${nameOf(by)}`}
          </p>
          {event !== null && event === last && event.batch_id !== null && <TakeBack batchId={event.batch_id} />}
        </li>
      ))}
    </ol>
  )
}

function entriesOf(roll: RollRecord, writer: Writer): Entry[] {
  const steps = roll.history.map((event): Entry => {
    const { id, at, by, state, hook, reason } = event
    return { key: id, at, by, words: say('roll.event', { state, hook, reason }, writer), event }
  })
  const corrections = correctionsOf(roll, writer).map(({ revision, at, by, changes }): Entry => {
    const words = revision === 1 ? 'taken in' : say('roll.correction', { changes }, writer)
    return { key: `revision ${revision}`, at, by, words, event: null }
  })
  return [...corrections, ...steps].sort((one, other) => (one.at < other.at ? -1 : one.at > other.at ? 1 : 0))
}

/** The last step taken back, with those of the rolls that took it together with this one. */
function TakeBack({ batchId }: { batchId: string }) {
  const tell = useTell()
  const { takeBack, waits } = useBatch()
  return (
    <Button
      waits={waits}
      onClick={() =>
        void takeBack(batchId).then(
          (sentence) => tell({ sentence }),
          (fault: unknown) => tell({ sentence: sentenceOf(fault) }),
        )
      }
    >
      Take this step back
    </Button>
  )
}
