import { turningWords } from '../../../../words/index.js'
import { QuantityField, Select, TextArea, useWriter, Words } from '../../../shared/ui/index.js'
import type { BathFieldsProps } from './BathFields.js'
import { TimeText } from './TimeText.js'
import { writeTurn } from './turns.js'

/** How the tank is moved, and how that was understood. */
export function TurningFields(props: BathFieldsProps) {
  const { bath, set, reading } = props
  const writer = useWriter()
  const turned = bath.moved === 'turns' || bath.moved === 'moments'
  return (
    <>
      <Select
        label="How it is moved"
        value={bath.moved}
        options={[
          ['turns', 'turned every so often'],
          ['moments', 'at moments of my own, or at the start only'],
          ['continuous', 'by hand without a stop'],
          ['rotary', 'by a machine'],
          ['none', 'not at all'],
        ]}
        onValue={(moved) => set({ moved })}
      />
      <div className="form-pair">
        {turned && <OpeningField {...props} />}
        {bath.moved === 'turns' && <EveryFields {...props} />}
        {bath.moved === 'moments' && <MomentsField {...props} />}
        {bath.moved !== 'continuous' && (
          <TimeText
            label="Without a stop from"
            hint="Empty: never."
            field="from"
            draft={bath}
            set={set}
            reading={reading}
          />
        )}
      </div>
      {reading.step?.step === 'bath' && (
        <p className="small">
          <Words>{turningWords(reading.step.agitation, writer)}</Words>
        </p>
      )}
    </>
  )
}

const OpeningField = ({ bath, set, reading }: BathFieldsProps) => (
  <QuantityField
    label="At the start"
    hint="30 s, or 4 times. Empty: not turned."
    text={bath.opening}
    onText={(opening) => set({ opening })}
    reading={reading.opening}
    write={writeTurn}
  />
)

const EveryFields = ({ bath, set, reading }: BathFieldsProps) => (
  <>
    <QuantityField
      label="Each later turn"
      hint="5 s, or 4 times at 2 s each."
      text={bath.turn}
      onText={(turn) => set({ turn })}
      reading={reading.turn}
      write={writeTurn}
    />
    <TimeText label="One every" field="every" draft={bath} set={set} reading={reading} />
    <TimeText
      label="The first of them at"
      hint="Empty: the first that leaves half a minute’s rest."
      field="first"
      draft={bath}
      set={set}
      reading={reading}
    />
  </>
)

const MomentsField = ({ bath, set, reading: { moments } }: BathFieldsProps) => (
  <TextArea
    label="Later, one moment a line"
    hint="10:00 5 s. Empty: left standing."
    rows={3}
    value={bath.moments}
    onText={(text) => set({ moments: text })}
    trouble={moments?.kind === 'refused' ? moments.problem.sentence : null}
  />
)
