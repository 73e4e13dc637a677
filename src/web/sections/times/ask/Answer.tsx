import { type Celsius, writeTemperature } from '../../../../kernel/index.js'
import { answerInParts, answerSentence, bandSentence, say, warningSentence } from '../../../../words/index.js'
import { Button, Heading, useUnits, useWriter, Words } from '../../../shared/ui/index.js'
import type { Outcome } from './reckon.js'
import { useCalm } from './useCalm.js'

interface AnswerProps {
  readonly name: string
  readonly outcome: Outcome
  readonly onChoose: (text: string) => void
}

/** The answer first, large; then what it may be out by, and what is to be said about it. Never a stale one. */
export function Answer({ name, outcome, onChoose }: AnswerProps) {
  const writer = useWriter()
  const spoken = useCalm(
    outcome.kind === 'answer'
      ? answerSentence(outcome.answer, writer)
      : outcome.kind === 'asked'
        ? outcome.problem.sentence
        : outcome.sentence,
  )
  return (
    <div className="answer">
      {outcome.kind === 'answer' ? <Develop name={name} answer={outcome.answer} /> : <NoTime name={name} />}
      {outcome.kind === 'refused' && (
        <p className="note">
          <Words>{outcome.sentence}</Words>
        </p>
      )}
      {outcome.kind === 'asked' && <WhichOne outcome={outcome} onChoose={onChoose} />}
      <p className="unseen" role="status">
        {spoken}
      </p>
    </div>
  )
}

function Develop({ name, answer }: { name: string; answer: Extract<Outcome, { kind: 'answer' }>['answer'] }) {
  const writer = useWriter()
  const { lead, rest } = answerInParts(answer, writer)
  return (
    <>
      <Heading title={name}>
        <Words>{lead}</Words>{' '}
        <span className="rest">
          <Words>{rest}</Words>
        </span>
      </Heading>
      <p>
        <Words>{bandSentence(answer, writer)}</Words>
      </p>
      {answer.warnings.length > 0 && (
        <div className="note">
          {answer.warnings.map((warning) => (
            <p key={warning.code}>
              <Words>{warningSentence(warning, writer)}</Words>
            </p>
          ))}
        </div>
      )}
    </>
  )
}

function NoTime({ name }: { name: string }) {
  const writer = useWriter()
  return (
    <Heading title={name}>
      <span className="rest">{say('web.no-time', {}, writer)}</span>
    </Heading>
  )
}

function WhichOne({
  outcome,
  onChoose,
}: {
  outcome: Extract<Outcome, { kind: 'asked' }>
  onChoose: (text: string) => void
}) {
  const units = useUnits()
  return (
    <div className="note">
      <p>
        <Words>{outcome.problem.sentence}</Words>
      </p>
      <div className="row">
        {outcome.choices.map((choice) => (
          <Button key={choice.label} onClick={() => onChoose(textOf(choice.value, choice.label, units))}>
            <Words>{choice.label}</Words>
          </Button>
        ))}
      </div>
    </div>
  )
}

/** The typed unit is kept where the label shows it: `100 °F = 37.8 °C` is typed as `100 °F`. */
const textOf = (value: Celsius, label: string, units: 'metric' | 'us') =>
  label.includes('=') ? (label.split('=')[0] ?? '').trim() : writeTemperature(value, units)
