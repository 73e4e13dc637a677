import { ACT_KINDS } from '../../../../score/index.js'
import { Select } from '../../../shared/ui/index.js'
import { KIND_NAMES, ORIGINS } from '../kinds.js'
import type { ActDraft } from './draft.js'
import type { StepReading } from './readStep.js'
import { TimeText } from './TimeText.js'

interface ActFieldsProps {
  readonly act: ActDraft
  readonly set: (part: Partial<ActDraft>) => void
  readonly reading: StepReading
}

/** A step that is not a bath: what is done, when, and how long it takes. */
export const ActFields = ({ act, set, reading }: ActFieldsProps) => (
  <div className="form-pair">
    <Select
      label="What is done"
      value={act.kind}
      options={ACT_KINDS.map((kind) => [kind, KIND_NAMES[kind]] as const)}
      onValue={(kind) => set({ kind })}
    />
    <TimeText
      label="So long into the bath before it"
      hint="Empty: when that bath is out."
      field="within"
      draft={act}
      set={set}
      reading={reading}
    />
    <TimeText label="It takes" field="takes" draft={act} set={set} reading={reading} />
    <Select
      label="This figure is from"
      value={act.takesOrigin}
      options={ORIGINS}
      onValue={(takesOrigin) => set({ takesOrigin })}
    />
  </div>
)
