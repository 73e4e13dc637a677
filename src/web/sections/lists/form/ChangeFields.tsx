import { Fragment } from 'react'
import { Select } from '../../../shared/ui/index.js'
import { ORIGINS } from '../kinds.js'
import type { BathFieldsProps } from './BathFields.js'
import { TimeText } from './TimeText.js'

const PARTS = [
  ['pour', 'Pouring in takes'],
  ['drain', 'Draining takes'],
  ['cap', 'Cap and funnel take'],
  ['tap', 'Knocking bubbles off takes'],
] as const

/** When its clock runs, how long a change takes, and what may come after it. */
export function ChangeFields({ bath, set, reading }: BathFieldsProps) {
  const text = { draft: bath, set, reading }
  return (
    <details>
      <summary>Clock and change of baths</summary>
      <div className="form-pair">
        <Select
          label="Its clock starts"
          value={bath.starts}
          options={[
            ['end-of-pour', 'when the tank is full'],
            ['start-of-pour', 'with the first drop'],
          ]}
          onValue={(starts) => set({ starts })}
        />
        <Select
          label="Its clock ends"
          value={bath.ends}
          options={[
            ['end-of-drain', 'when the tank is empty'],
            ['start-of-drain', 'when draining begins'],
          ]}
          onValue={(ends) => set({ ends })}
        />
        {PARTS.map(([part, label]) => (
          <Fragment key={part}>
            <TimeText
              label={label}
              {...(part === 'tap' ? { hint: 'Empty: not knocked.' } : {})}
              field={part}
              {...text}
            />
            <Select
              label={`${label.replace(/ takes?$/, '')}: the figure is from`}
              value={bath[`${part}Origin`]}
              options={ORIGINS}
              onValue={(origin) => set({ [`${part}Origin`]: origin })}
            />
          </Fragment>
        ))}
        <TimeText label="May stay longer by" hint="0 s where it may not." field="mayStay" {...text} />
      </div>
      <label className="row check">
        <input
          type="checkbox"
          checked={bath.neverPart}
          onChange={(event) => set({ neverPart: event.target.checked })}
        />
        The next bath follows at once
      </label>
    </details>
  )
}
