import { hasFixedTime } from '../../../../score/index.js'
import { say } from '../../../../words/index.js'
import { Select, TextField, useWriter, Words } from '../../../shared/ui/index.js'
import { ORIGINS } from '../kinds.js'
import type { BathFieldsProps } from './BathFields.js'
import { TimeText } from './TimeText.js'

/** How long the bath lasts. */
export function TimeFields({ bath, set, reading }: BathFieldsProps) {
  const text = { draft: bath, set, reading }
  return (
    <>
      <Select
        label="How long"
        value={bath.law}
        options={[
          ['by-developing-time', 'as long as the developing time says'],
          ['fixed', 'one time, whatever the temperature'],
          ['by-clearing', 'by the clearing time of the film'],
        ]}
        onValue={(law) => set({ law })}
      />
      <OnlyTime bath={bath} reading={reading} />
      {bath.law !== 'by-developing-time' && (
        <div className="form-pair">
          {bath.law === 'fixed' ? (
            <TimeText label="Time" field="seconds" {...text} />
          ) : (
            <>
              <TextField
                label="So many times the clearing time"
                value={bath.multiple}
                onText={(multiple) => set({ multiple })}
                inputMode="decimal"
              />
              <TimeText label="Clearing time until it is seen" field="assumed" {...text} />
              <TimeText label="At least" field="least" {...text} />
              <TimeText label="Finished when it needs more than" field="most" {...text} />
            </>
          )}
          <Select
            label="The time is from"
            value={bath.timeOrigin}
            options={ORIGINS}
            onValue={(timeOrigin) => set({ timeOrigin })}
          />
        </div>
      )}
    </>
  )
}

/** A developer with one time at one temperature says that its time is not traded for warmth. */
function OnlyTime({ bath, reading: { step } }: Pick<BathFieldsProps, 'bath' | 'reading'>) {
  const writer = useWriter()
  if (step?.step !== 'bath' || step.time.law !== 'fixed' || !hasFixedTime(step)) return null
  return (
    <p className="note">
      <Words>{say('list.time.only', { name: bath.name, time: step.time.seconds }, writer)}</Words>
    </p>
  )
}
