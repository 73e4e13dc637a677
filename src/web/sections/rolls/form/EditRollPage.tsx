import { type FormEvent, useState } from 'react'
import { say } from '../../../../words/index.js'
import {
  correctRoll,
  type RollRecord,
  type RollStatementInput,
  undoRoll,
  useRoll,
  useWrite,
} from '../../../shared/api/index.js'
import { go } from '../../../shared/navigation/index.js'
import {
  Asked,
  Button,
  ButtonLink,
  Page,
  TextField,
  Trouble,
  useDraft,
  useTell,
  useWriter,
} from '../../../shared/ui/index.js'
import { draftOf, readDraft } from './draft.js'
import { RollFields } from './RollFields.js'
import { useKnown } from './useKnown.js'

export function EditRollPage({ params }: { params: Record<string, string> }) {
  return <Asked query={useRoll(params.id ?? '')}>{(roll) => <Correction roll={roll} />}</Asked>
}

/** What is said of a roll is corrected; the old words stay on record, and Undo goes back to them. */
function Correction({ roll }: { roll: RollRecord }) {
  const writer = useWriter()
  const tell = useTell()
  const known = useKnown()
  const { draft, change, clear } = useDraft(`roll-${roll.id}-${roll.revision}`, draftOf(roll))
  const [tried, setTried] = useState(false)
  const reading = readDraft(draft, known)
  const correct = useWrite(
    (statement: RollStatementInput) => correctRoll(roll.id, { seen_revision: roll.revision, statement }),
    'rolls',
  )
  const back = useWrite((revision: number) => undoRoll(roll.id, { seen_revision: revision }), 'rolls')
  const submit = (event: FormEvent) => {
    event.preventDefault()
    setTried(true)
    if (reading.roll === null || correct.isPending) return
    correct.mutate(reading.roll, {
      onSuccess: (kept) => {
        clear()
        const undo = async () => {
          await back.mutateAsync(kept.revision)
          return say('rolls.taken-back', { count: 1, number: roll.number }, writer)
        }
        go(`/rolls/${roll.id}`)
        tell({ sentence: say('rolls.corrected', { number: roll.number }, writer), undo })
      },
    })
  }
  return (
    <Page
      title={`Correct roll ${roll.number}`}
      lead={say('times.form.edit', {}, writer)}
      actions={<ButtonLink href={`/rolls/${roll.id}`}>Leave it as it was</ButtonLink>}
    >
      <form onSubmit={submit} noValidate>
        <RollFields draft={draft} change={change} reading={reading} tried={tried} films={known.films} />
        <TextField
          label="Whose"
          hint="Empty for film of one’s own."
          value={draft.whose}
          onText={(whose) => change({ whose })}
          maxLength={120}
        />
        {correct.isError && <Trouble fault={correct.error} />}
        <div className="row">
          <Button type="submit" look="go" waits={correct.isPending}>
            Keep the correction
          </Button>
        </div>
        <p role="alert" className="form-said">
          {tried &&
            reading.roll === null &&
            say('times.form.wants', { count: Object.keys(reading.troubles).length }, writer)}
        </p>
      </form>
    </Page>
  )
}
