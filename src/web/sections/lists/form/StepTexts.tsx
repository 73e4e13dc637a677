import { CAUTIONS, type Caution, RECIPE_LIMITS } from '../../../../score/index.js'
import { say } from '../../../../words/index.js'
import { TextArea, TextField, useWriter, Words } from '../../../shared/ui/index.js'
import type { StepDraft } from './draft.js'

interface StepTextsProps {
  readonly step: StepDraft
  readonly set: (part: Partial<StepDraft>) => void
}

/** What every step has: a name, the reason behind it, and what to take care of. */
export function StepTexts({ step, set }: StepTextsProps) {
  const writer = useWriter()
  const { cautions } = step
  const toggle = (caution: Caution, on: boolean) =>
    set({ cautions: CAUTIONS.filter((one) => (one === caution ? on : cautions.includes(one))) })
  return (
    <>
      <TextField label="Name" value={step.name} onText={(name) => set({ name })} maxLength={RECIPE_LIMITS.name.most} />
      <TextArea
        label="Why it is there"
        className="words"
        rows={2}
        value={step.reason}
        onText={(reason) => set({ reason })}
        maxLength={RECIPE_LIMITS.reason.most}
      />
      <details>
        <summary>Cautions{cautions.length > 0 && `: ${cautions.length}`}</summary>
        <div className="choices">
          {CAUTIONS.map((caution) => (
            <label key={caution}>
              <input
                type="checkbox"
                checked={cautions.includes(caution)}
                onChange={(event) => toggle(caution, event.target.checked)}
              />
              <span>
                <Words>{say(`caution.${caution}`, {}, writer)}</Words>
              </span>
            </label>
          ))}
        </div>
      </details>
    </>
  )
}
