import { type Seconds, writeSpan } from '../../../../kernel/index.js'
import type { MishapKind } from '../../../../score/index.js'
import { say } from '../../../../words/index.js'
import { Button, QuantityField, Select, TextField, useWriter } from '../../../shared/ui/index.js'
import { sayOf } from '../names.js'
import { type OfTank, replaced, several } from './Beside.js'
import { EMPTY_MISHAP, type GivenUpDraft, type MishapDraft, tankOf } from './draft.js'
import { MomentField } from './MomentField.js'

const KINDS: readonly MishapKind[] = [
  'fixer-first',
  'developer-short',
  'wrong-dilution',
  'lid-came-off',
  'tank-leaks',
  'stop-skipped',
  'power-or-phone-dead',
]

/** What went wrong, each with its time, from which the record reckons with it; and whether the tank was given up. */
export function WentWrong({ form, tank }: OfTank) {
  const writer = useWriter()
  const { mishaps, givenUp } = tankOf(form.draft, tank)
  const put = (all: readonly MishapDraft[]) => form.changeTank(tank, { mishaps: all })
  const title = say('paper.wrong', {}, writer)
  return (
    <section className="sheet-beside">
      <h2>{several(form) ? say('paper.wrong.tank', { tank }, writer) : title}</h2>
      {mishaps.map((mishap, i) => (
        <Mishap
          // biome-ignore lint/suspicious/noArrayIndexKey: they have no names of their own, and none is moved
          key={i}
          form={form}
          tank={tank}
          place={i}
          mishap={mishap}
          change={(part) => put(replaced(mishaps, i, part))}
          remove={() => put(mishaps.filter((_, k) => k !== i))}
        />
      ))}
      <div className="row">
        <Button onClick={() => put([...mishaps, EMPTY_MISHAP])}>{say('paper.wrong.add', {}, writer)}</Button>
      </div>
      <GivenUp form={form} tank={tank} givenUp={givenUp} />
    </section>
  )
}

interface MishapProps extends OfTank {
  readonly place: number
  readonly mishap: MishapDraft
  readonly change: (part: Partial<MishapDraft>) => void
  readonly remove: () => void
}

function Mishap({ form, tank, place, mishap, change, remove }: MishapProps) {
  const writer = useWriter()
  const name = `${tank}/mishap/${place}`
  return (
    <div className="sheet-boxes">
      <Select
        label={`What went wrong ${place + 1}`}
        value={mishap.mishap}
        options={KINDS.map((kind) => [kind, sayOf(`mishap.${kind}`, {}, writer)] as const)}
        onValue={(kind) => change({ mishap: kind })}
      />
      <MomentField
        label={`Went wrong at ${place + 1}`}
        hint={say('paper.wrong.at', {}, writer)}
        needed={say('paper.wrong.needed', {}, writer)}
        text={mishap.at}
        onText={(at) => change({ at })}
        boxed={form.reading.times[name]}
        day={form.day}
        zone={form.zone}
        strict={form.tried}
      />
      {mishap.mishap === 'wrong-dilution' && (
        <QuantityField
          label={`Time for that dilution ${place + 1}`}
          hint={say('paper.wrong.time', {}, writer)}
          text={mishap.time}
          onText={(time) => change({ time })}
          reading={form.reading.clearings[name]?.reading ?? null}
          write={(value: Seconds) => writeSpan(value)}
          strict={form.tried}
        />
      )}
      <div className="row">
        <Button look="bare" onClick={remove}>
          {say('paper.wrong.remove', { place: place + 1 }, writer)}
        </Button>
      </div>
    </div>
  )
}

function GivenUp({ form, tank, givenUp }: OfTank & { readonly givenUp: GivenUpDraft | null }) {
  const writer = useWriter()
  const change = (part: GivenUpDraft | null) => form.changeTank(tank, { givenUp: part })
  return (
    <>
      <label className="row check">
        <input
          type="checkbox"
          checked={givenUp !== null}
          onChange={(event) => change(event.target.checked ? { reason: '', at: '' } : null)}
        />
        <span>{say('paper.given-up', { tank }, writer)}</span>
      </label>
      {givenUp !== null && (
        <div className="sheet-boxes">
          <TextField
            label={say('paper.given-up.why', { tank }, writer)}
            value={givenUp.reason}
            maxLength={1000}
            onText={(reason) => change({ ...givenUp, reason })}
          />
          <MomentField
            label={say('paper.given-up.at', { tank }, writer)}
            hint={say('paper.given-up.unknown', {}, writer)}
            text={givenUp.at}
            onText={(at) => change({ ...givenUp, at })}
            boxed={form.reading.times[`${tank}/given-up`]}
            day={form.day}
            zone={form.zone}
            strict={form.tried}
          />
        </div>
      )}
    </>
  )
}
