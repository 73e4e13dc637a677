import { QuantityField } from '../../../shared/ui/index.js'
import type { StepReading, TimeField } from './readStep.js'
import { writeTime } from './turns.js'

interface TimeTextProps<Field extends TimeField> {
  readonly label: string
  readonly hint?: string
  readonly field: Field
  readonly draft: Readonly<Record<Field, string>>
  readonly set: (part: Record<Field, string>) => void
  readonly reading: StepReading
}

/** A length of time of a step. */
export const TimeText = <Field extends TimeField>({
  label,
  hint,
  field,
  draft,
  set,
  reading,
}: TimeTextProps<Field>) => (
  <QuantityField
    label={label}
    {...(hint === undefined ? {} : { hint })}
    text={draft[field]}
    onText={(text) => set({ [field]: text } as Record<Field, string>)}
    reading={reading.times[field] ?? null}
    write={writeTime}
  />
)
