import { type Celsius, writeTemperature } from '../../../../kernel/index.js'
import { say } from '../../../../words/index.js'
import { Button, QuantityField, TextField, useWriter } from '../../../shared/ui/index.js'
import { EMPTY_READING, EMPTY_REMARK, type ReadingDraft, type RemarkDraft, tankOf } from './draft.js'
import { MomentField } from './MomentField.js'
import { Sure } from './SheetRows.js'
import type { SheetForm } from './sheetForm.js'

export const replaced = <T,>(all: readonly T[], at: number, part: Partial<T>): T[] =>
  all.map((one, i) => (i === at ? { ...one, ...part } : one))

export interface OfTank {
  readonly form: SheetForm
  readonly tank: string
}

/** What the thermometer showed in the developer, each with its time. */
export function Temperatures({ form, tank }: OfTank) {
  const writer = useWriter()
  const { readings } = tankOf(form.draft, tank)
  const put = (all: readonly ReadingDraft[]) => form.changeTank(tank, { readings: all })
  return (
    <section className="sheet-beside">
      <h2>{several(form) ? `Tank ${tank}: temperatures` : 'Temperatures'}</h2>
      {readings.map((reading, i) => {
        const name = `${tank}/reads/${i}`
        const boxed = form.reading.temperatures[name]
        const change = (part: Partial<ReadingDraft>) => put(replaced(readings, i, part))
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: readings have no names of their own, and none is moved
          <div key={i} className="sheet-boxes">
            <QuantityField
              label={`Developer reads ${i + 1}`}
              hint="As the thermometer showed it."
              text={reading.temperature}
              onText={(temperature) => change({ temperature, sure: false })}
              reading={boxed?.reading ?? null}
              write={(value: Celsius) => writeTemperature(value, writer.units)}
              strict={form.tried}
            />
            <MomentField
              label={`Read at ${i + 1}`}
              hint={say('paper.at-pour', {}, writer)}
              text={reading.at}
              onText={(at) => change({ at })}
              boxed={form.reading.times[name]}
              day={form.day}
              zone={form.zone}
              strict={form.tried}
            />
            <Sure finding={boxed?.finding ?? null} sure={reading.sure} onSure={(sure) => change({ sure })} />
          </div>
        )
      })}
      <div className="row">
        <Button onClick={() => put([...readings, EMPTY_READING])}>Add another reading</Button>
      </div>
    </section>
  )
}

/** What else stands on the sheet, in words. */
export function Remarks({ form, tank }: OfTank) {
  const { remarks } = tankOf(form.draft, tank)
  const put = (all: readonly RemarkDraft[]) => form.changeTank(tank, { remarks: all })
  return (
    <section className="sheet-beside">
      <h2>{several(form) ? `Tank ${tank}: remarks` : 'Remarks'}</h2>
      {remarks.map((remark, i) => {
        const change = (part: Partial<RemarkDraft>) => put(replaced(remarks, i, part))
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: remarks have no names of their own, and none is moved
          <div key={i} className="sheet-boxes">
            <TextField
              label={`Remark ${i + 1}`}
              value={remark.text}
              maxLength={1000}
              onText={(text) => change({ text })}
            />
            <MomentField
              label={`Written at ${i + 1}`}
              hint="empty: no time"
              text={remark.at}
              onText={(at) => change({ at })}
              boxed={form.reading.times[`${tank}/remark/${i}`]}
              day={form.day}
              zone={form.zone}
              strict={form.tried}
            />
          </div>
        )
      })}
      <div className="row">
        <Button onClick={() => put([...remarks, EMPTY_REMARK])}>Add a remark</Button>
      </div>
    </section>
  )
}

export const several = ({ score }: SheetForm): boolean => score.tanks.length > 1
