import { type FormEvent, useState } from 'react'
import { say } from '../../../../words/index.js'
import { type JudgeRunInput, judgeRun, type Run, useWrite } from '../../../shared/api/index.js'
import { Button, Choices, TextArea, Trouble, useTell, useWriter } from '../../../shared/ui/index.js'
import { sayOf } from '../names.js'

type Marks = NonNullable<JudgeRunInput['marks']>
type Density = NonNullable<JudgeRunInput['density']>

const DENSITIES: readonly Density[] = ['thin', 'right', 'dense']
const MARKS: Marks = ['uneven', 'streaks', 'bubbles', 'half-moons', 'scratches', 'drying-marks', 'fogged', 'milky']

/** What the dry negatives look like; a later word corrects an earlier one. */
export function VerdictForm({ run, tank }: { run: Run; tank: string }) {
  const writer = useWriter()
  const tell = useTell()
  const before = run.verdicts.find((verdict) => verdict.stands && verdict.tank === tank)
  const [density, setDensity] = useState<Density | 'unsaid'>(before?.density ?? 'unsaid')
  const [marks, setMarks] = useState<Marks>(before?.marks ?? [])
  const [note, setNote] = useState(before?.note ?? '')
  const judge = useWrite((body: JudgeRunInput) => judgeRun(run.id, body), 'runs')
  const keep = (event: FormEvent) => {
    event.preventDefault()
    if (judge.isPending) return
    judge.mutate(
      { tank, density: density === 'unsaid' ? null : density, marks, note: note.trim() },
      { onSuccess: () => tell({ sentence: say('record.said', { tank }, writer) }) },
    )
  }
  const toggle = (mark: Marks[number]) =>
    setMarks((now) => (now.includes(mark) ? now.filter((one) => one !== mark) : [...now, mark]))
  return (
    <section>
      <h2>{say('record.verdict', {}, writer)}</h2>
      {before === undefined && <p className="quiet">{say('record.no-verdict', {}, writer)}</p>}
      <form className="narrow" onSubmit={keep} noValidate>
        <Choices
          legend="They are"
          value={density}
          options={[
            ['unsaid', 'not looked at yet'],
            ...DENSITIES.map((one) => [one, sayOf(`run.verdict.${one}`, {}, writer)] as const),
          ]}
          onValue={setDensity}
        />
        <fieldset className="choices marks">
          <legend>Marks</legend>
          {MARKS.map((mark) => (
            <label key={mark}>
              <input type="checkbox" checked={marks.includes(mark)} onChange={() => toggle(mark)} />
              <span>{sayOf(`run.mark.${mark}`, {}, writer)}</span>
            </label>
          ))}
        </fieldset>
        <TextArea label="Notes" className="words" rows={3} value={note} onText={setNote} maxLength={4000} />
        {judge.isError && <Trouble fault={judge.error} />}
        <div className="row">
          <Button type="submit" look="go" waits={judge.isPending}>
            Keep the verdict
          </Button>
        </div>
      </form>
    </section>
  )
}
