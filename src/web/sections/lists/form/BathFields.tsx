import { writeTemperature } from '../../../../kernel/index.js'
import { BATH_KINDS } from '../../../../score/index.js'
import { QuantityField, Select, useUnits } from '../../../shared/ui/index.js'
import { KIND_NAMES, ORIGINS } from '../kinds.js'
import { ChangeFields } from './ChangeFields.js'
import type { BathDraft } from './draft.js'
import type { StepReading } from './readStep.js'
import { TimeFields } from './TimeFields.js'
import { TurningFields } from './TurningFields.js'

export interface BathFieldsProps {
  readonly bath: BathDraft
  readonly set: (part: Partial<BathDraft>) => void
  readonly reading: StepReading
}

/** Everything about a bath, in the order of its line on the list. */
export function BathFields(props: BathFieldsProps) {
  const { bath, set } = props
  return (
    <>
      <Select
        label="What it does"
        value={bath.kind}
        options={BATH_KINDS.map((kind) => [kind, KIND_NAMES[kind]] as const)}
        onValue={(kind) => set({ kind })}
      />
      <TimeFields {...props} />
      <TurningFields {...props} />
      <WindowFields {...props} />
      <Select
        label="Afterwards it goes"
        value={bath.goesTo}
        options={[
          ['bottle', 'back into its own bottle'],
          ['away', 'down the drain'],
          ['waste-jug', 'into the waste jug'],
        ]}
        onValue={(goesTo) => set({ goesTo })}
      />
      <ChangeFields {...props} />
    </>
  )
}

function WindowFields({ bath, set, reading }: BathFieldsProps) {
  const units = useUnits()
  const end = (label: string, field: 'low' | 'high') => (
    <QuantityField
      label={label}
      hint="Both empty: judged by the developer."
      text={bath[field]}
      onText={(text) => set({ [field]: text })}
      reading={reading[field]}
      write={(value) => writeTemperature(value, units)}
    />
  )
  return (
    <div className="form-pair">
      {end('No colder than', 'low')}
      {end('No warmer than', 'high')}
      {bath.low !== '' && (
        <Select
          label="The window is from"
          value={bath.windowOrigin}
          options={ORIGINS}
          onValue={(windowOrigin) => set({ windowOrigin })}
        />
      )}
    </div>
  )
}
