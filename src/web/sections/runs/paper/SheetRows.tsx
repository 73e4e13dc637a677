import { type Seconds, writeSpan } from '../../../../kernel/index.js'
import type { Finding, Score } from '../../../../score/index.js'
import { say, writeTimeOfDay } from '../../../../words/index.js'
import { QuantityField, TextField, useWriter, Words } from '../../../shared/ui/index.js'
import { type RowDraft, rowKey } from './draft.js'
import { MomentField } from './MomentField.js'
import { rowOf } from './readDraft.js'
import type { SheetForm } from './sheetForm.js'
import { type SheetRow, sheetRows } from './sheetRows.js'

/** Every row of the sheet with its boxes, in the sheet's order. */
export function SheetRows({ form }: { form: SheetForm }) {
  const writer = useWriter()
  return (
    <ol className="sheet-rows">
      {sheetRows(form.score, writer).map((row) => (
        <li key={row.id} className="sheet-row">
          <p className="sheet-row-head">
            <strong>
              <Words>{row.heading}</Words>
            </strong>
            <span className="small">{writer.time(row.moment)}</span>
          </p>
          <Boxes form={form} row={row} />
        </li>
      ))}
    </ol>
  )
}

function Boxes({ form, row }: { form: SheetForm; row: SheetRow }) {
  const own = row.in ?? row.done
  const name = nameOf(form.score, row.tank, own ?? row.out ?? 0)
  const typed = own === null ? null : rowOf(form.draft, row.tank, own)
  return (
    <>
      <div className="sheet-boxes">
        {row.out !== null && <Box form={form} row={row} step={row.out} side="out" />}
        {typed?.leftOut !== true && row.in !== null && <Box form={form} row={row} step={row.in} side="in" />}
        {typed?.leftOut !== true && row.done !== null && <Box form={form} row={row} step={row.done} side="done" />}
        {typed?.leftOut !== true && row.done !== null && row.clears && (
          <Clearing form={form} row={row} step={row.done} />
        )}
      </div>
      {own !== null && typed !== null && (
        <LeftOut name={name} row={typed} change={(part) => form.changeRow(row.tank, own, part)} />
      )}
    </>
  )
}

const nameOf = ({ tanks }: Score, tank: string, step: number): string =>
  tanks.find((plan) => plan.tank.tank === tank)?.laid[step]?.step.name ?? ''

const LABELS = { in: 'in at', out: 'out at', done: 'done at' } as const
const WRITTEN = { in: 'pouredIn', out: 'pouredOut', done: 'done' } as const

interface BoxProps {
  readonly form: SheetForm
  readonly row: SheetRow
  readonly step: number
  readonly side: 'in' | 'out' | 'done'
}

/** One box for a time; one that a screen has filled in already only shows it. */
function Box({ form, row, step, side }: BoxProps) {
  const writer = useWriter()
  const label = `${nameOf(form.score, row.tank, step)} ${LABELS[side]}`
  const known = form.byScreen.find(({ tank }) => tank === row.tank)?.steps.get(step)?.[WRITTEN[side]] ?? null
  if (known !== null)
    return (
      <p className="small">
        <strong>{label}</strong>{' '}
        <Words>{say('paper.by-screen', { at: writeTimeOfDay(known.at, form.zone) }, writer)}</Words>
      </p>
    )
  const boxed = form.reading.times[`${rowKey(row.tank, step)}/${side}`]
  const { sure, [side]: text } = rowOf(form.draft, row.tank, step)
  return (
    <div className="sheet-box">
      <MomentField
        label={label}
        hint={hintOf(form, row, side)}
        text={text}
        onText={(typed) => form.changeRow(row.tank, step, { [side]: typed, sure: false })}
        boxed={boxed}
        day={form.day}
        zone={form.zone}
        strict={form.tried}
      />
      <Sure
        finding={boxed?.finding ?? null}
        sure={sure}
        onSure={(said) => form.changeRow(row.tank, step, { sure: said })}
      />
    </div>
  )

  function hintOf({ draft }: SheetForm, { out, moment }: SheetRow, which: BoxProps['side']): string {
    if (which === 'in' && moment === 0 && draft.zero.trim() !== '') return say('paper.from-zero', {}, writer)
    return which === 'in' && out !== null ? say('paper.straight-after', {}, writer) : say('paper.unknown', {}, writer)
  }
}

/** Asked where a time is odd and yet can be: whether the sheet really has it so. */
export function Sure(props: { finding: Finding | null; sure: boolean; onSure: (sure: boolean) => void }) {
  const { finding, sure, onSure } = props
  const writer = useWriter()
  const asks = finding?.stands === 'by-saying-so' || (finding?.stands === 'told' && sure) || isFar(finding)
  if (!asks) return null
  return (
    <>
      {finding?.stands === 'told' && (
        <p className="small">
          <Words>{finding.problem.sentence}</Words>
        </p>
      )}
      <label className="row check">
        <input type="checkbox" checked={sure} onChange={(event) => onSure(event.target.checked)} />
        <Words>{say('paper.sure', {}, writer)}</Words>
      </label>
    </>
  )
}

const isFar = (finding: Finding | null): boolean => finding?.problem.code === 'paper.reading-far'

function Clearing({ form, row, step }: Omit<BoxProps, 'side'>) {
  const boxed = form.reading.clearings[`${rowKey(row.tank, step)}/clearing`]
  return (
    <QuantityField
      label="Clear in"
      hint="As 1:30, or 90 s."
      text={rowOf(form.draft, row.tank, step).clearing}
      onText={(clearing) => form.changeRow(row.tank, step, { clearing })}
      reading={boxed?.reading ?? null}
      write={(value: Seconds) => writeSpan(value)}
      strict={form.tried}
    />
  )
}

interface LeftOutProps {
  readonly name: string
  readonly row: RowDraft
  readonly change: (part: Partial<RowDraft>) => void
}

function LeftOut({ name, row, change }: LeftOutProps) {
  const writer = useWriter()
  return (
    <>
      <label className="row check">
        <input type="checkbox" checked={row.leftOut} onChange={(event) => change({ leftOut: event.target.checked })} />
        <span>
          {name} {say('paper.leave-out', {}, writer)}
        </span>
      </label>
      {row.leftOut && (
        <TextField
          label={`Why ${name} was left out`}
          value={row.reason}
          maxLength={1000}
          onText={(reason) => change({ reason })}
        />
      )}
    </>
  )
}
