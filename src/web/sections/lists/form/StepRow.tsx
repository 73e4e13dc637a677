import { say, shortLength } from '../../../../words/index.js'
import { Button, useWriter, Words } from '../../../shared/ui/index.js'
import { ActFields } from './ActFields.js'
import { BathFields } from './BathFields.js'
import type { StepDraft } from './draft.js'
import type { StepReading } from './readStep.js'
import { StepTexts } from './StepTexts.js'
import { moveButton, type useSteps } from './useSteps.js'

interface StepRowProps {
  readonly step: StepDraft
  readonly place: number
  readonly of: number
  readonly reading: StepReading | undefined
  /** What does not fit about this step, in sentences. */
  readonly troubles: readonly string[]
  readonly steps: ReturnType<typeof useSteps>
}

/** One step of a list that is typed: moved about, taken out, and all its fields when it is open. */
export function StepRow({ step, place, of, reading, troubles, steps }: StepRowProps) {
  const writer = useWriter()
  const { id, name } = step
  const open = steps.open === id
  const set = (part: Partial<StepDraft>) => steps.set(id, part)
  return (
    <li>
      <div className="step-row">
        <h3>
          <span className="quiet">{place}</span> {name}
          <span className="list-length">{reading?.step && <Words>{shortLength(reading.step, writer)}</Words>}</span>
        </h3>
        <div className="row">
          <Move step={step} direction="earlier" waits={place === 1} steps={steps} />
          <Move step={step} direction="later" waits={place === of} steps={steps} />
          <Button look="bare" aria-label={`Take out ${name}`} onClick={() => steps.takeOut(id)}>
            Take out
          </Button>
          <Button
            aria-label={open ? `Close ${name}` : `Change ${name}`}
            aria-expanded={open}
            onClick={() => steps.setOpen(open ? null : id)}
          >
            {open ? 'Close' : 'Change'}
          </Button>
        </div>
      </div>
      {!reading?.step && (
        <p className="trouble" role="status">
          Something in it cannot be read yet.
        </p>
      )}
      {troubles.map((sentence) => (
        <p key={sentence} className="trouble" role="status">
          <Words>{sentence}</Words>
        </p>
      ))}
      {open && reading && (
        <fieldset className="step-fields">
          <legend className="unseen">{say('list.title', { name }, writer)}</legend>
          <StepTexts step={step} set={set} />
          {step.step === 'bath' ? (
            <BathFields bath={step} set={set} reading={reading} />
          ) : (
            <ActFields act={step} set={set} reading={reading} />
          )}
        </fieldset>
      )}
    </li>
  )
}

interface MoveProps extends Pick<StepRowProps, 'step' | 'steps'> {
  readonly direction: 'earlier' | 'later'
  readonly waits: boolean
}

const Move = ({ step: { id, name }, direction, waits, steps }: MoveProps) => (
  <Button
    id={moveButton(id, direction)}
    waits={waits}
    aria-label={`Move ${name} ${direction}`}
    onClick={() => steps.move(id, direction)}
  >
    {direction === 'earlier' ? '↑' : '↓'}
  </Button>
)
