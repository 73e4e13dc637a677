import { writeTemperature } from '../../../../kernel/index.js'
import { DEVELOPER_CLASS_CHOICES } from '../../../shared/figures/index.js'
import { QuantityField, Select, TextField, useUnits } from '../../../shared/ui/index.js'
import type { TimeDraft } from './draft.js'
import type { DraftReading } from './readDraft.js'

interface MoreFieldsProps {
  readonly draft: TimeDraft
  readonly change: (part: Partial<TimeDraft>) => void
  readonly reading: DraftReading
}
type Range = keyof DraftReading['ranges']

/** For those who know more of the developer than its sheet's times. */
export function MoreFields({ draft, change, reading }: MoreFieldsProps) {
  const units = useUnits()
  const range = (label: string, field: Range, trouble?: string) => (
    <QuantityField
      label={label}
      text={draft[field]}
      onText={(text) => change({ [field]: text })}
      reading={reading.ranges[field]}
      write={(value) => writeTemperature(value, units)}
      trouble={trouble}
    />
  )
  return (
    <details>
      <summary>More: the law, the developer’s class, limits</summary>
      <div className="form-pair">
        <Select
          label="Where the time comes from"
          value={draft.sourceOrigin}
          options={[
            ['sheet', 'a printed sheet'],
            ['own-note', 'a note of one’s own'],
            ['measured', 'measured here'],
          ]}
          onValue={(sourceOrigin) => change({ sourceOrigin })}
        />
        {draft.kind === 'ordinary' && (
          <>
            <Select
              label="Law"
              value={draft.law}
              options={[
                ['exponential', 'exponential'],
                ['arrhenius', 'Arrhenius'],
              ]}
              onValue={(law) => change({ law })}
            />
            <Select
              label="What it develops with"
              hint="Says how fast it answers to temperature when the sheet gives one time only."
              value={draft.developerClass}
              options={DEVELOPER_CLASS_CHOICES}
              onValue={(developerClass) => change({ developerClass })}
            />
            <TextField
              label="Its own ten-degree coefficient"
              hint="How many times faster ten degrees (°C) warmer is, where the sheet says so."
              value={draft.coefficient}
              onText={(coefficient) => change({ coefficient })}
              inputMode="decimal"
              trouble={
                reading.coefficient?.kind === 'refused'
                  ? reading.coefficient.problem.sentence
                  : reading.troubles.coefficient
              }
            />
          </>
        )}
        {draft.kind !== 'fixed' && range('Usable from', 'usableFrom', reading.troubles.usable)}
        {draft.kind !== 'fixed' && range('Usable to', 'usableTo')}
        {draft.kind === 'fixed' && range('Held from', 'windowFrom', reading.troubles.window)}
        {draft.kind === 'fixed' && range('Held to', 'windowTo')}
      </div>
    </details>
  )
}
