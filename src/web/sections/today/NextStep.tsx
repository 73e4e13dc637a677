import type { TodayView } from '../../../wire/index.js'
import { say } from '../../../words/index.js'
import { ButtonLink, useWriter, Words } from '../../shared/ui/index.js'

/** The next sensible step: what to do, why, and one button that begins it. */
export function NextStep({ step }: { step: TodayView['step'] }) {
  const writer = useWriter()
  const subject = step.subject ?? ''
  const sentence =
    step.code === 'check-thermometer'
      ? say('today.check-thermometer', { name: subject }, writer)
      : step.code === 'widen-times' || step.code === 'ask-a-time'
        ? say(`today.${step.code}`, { film: subject }, writer)
        : say(`today.${step.code}`, {}, writer)
  return (
    <>
      <p className="step-words">
        <strong>
          <Words>{sentence}</Words>
        </strong>{' '}
        <Words>{say(`today.${step.code}.why`, {}, writer)}</Words>
      </p>
      <ButtonLink look="go" className="step-button" href={placeOf(step)}>
        {say(`today.${step.code}.do`, {}, writer)}
      </ButtonLink>
    </>
  )
}

function placeOf({ code, subject_id }: TodayView['step']): string {
  switch (code) {
    case 'first-time':
      return '/times/new'
    case 'first-thermometer':
      return '/shelf/thermometers/new'
    case 'check-thermometer':
      return `/shelf/thermometers/${subject_id}`
    case 'widen-times':
      return `/times/${subject_id}/edit`
    case 'ask-a-time':
      return `/times/${subject_id}`
  }
}
