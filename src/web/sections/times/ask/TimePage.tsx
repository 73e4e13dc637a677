import type { TimeBasis } from '../../../../science/index.js'
import type { ThermometerRecord, TimeRecord } from '../../../../wire/index.js'
import { say } from '../../../../words/index.js'
import { useThermometers, useTime, useTimes } from '../../../shared/api/index.js'
import { basisOf, nameOf } from '../../../shared/figures/index.js'
import { Asked, ButtonLink, Page, useWriter, Words } from '../../../shared/ui/index.js'
import { RemovedTime } from '../RemovedTime.js'
import { About } from './About.js'
import { Answer } from './Answer.js'
import { Beside } from './Beside.js'
import { Graph } from './Graph.js'
import { Grounds } from './Grounds.js'
import { PrintLink } from './PrintLink.js'
import { Question } from './Question.js'
import { ReadWith } from './ReadWith.js'
import { reckon } from './reckon.js'
import { useQuestion } from './useQuestion.js'

/** One film in one developer: the question, its answer, and what the answer rests on. */
export function TimePage({ params }: { params: Record<string, string> }) {
  const time = useTime(params.id ?? '')
  const times = useTimes()
  const thermometers = useThermometers()
  return (
    <Asked query={time}>
      {(record) =>
        record.removed ? (
          <RemovedTime record={record} />
        ) : (
          <Checked
            key={record.id}
            record={record}
            times={times.data ?? [record]}
            thermometers={thermometers.data ?? []}
          />
        )
      }
    </Asked>
  )
}

interface KeptProps {
  readonly record: TimeRecord
  readonly times: readonly TimeRecord[]
  readonly thermometers: readonly ThermometerRecord[]
}

function Checked(props: KeptProps) {
  const basis = basisOf(props.record)
  if (basis.ok) return <Asking {...props} basis={basis.value} />
  return (
    <Page title={nameOf(props.record)} lead={<Words>{basis.problem.sentence}</Words>}>
      <ButtonLink href={`/times/${props.record.id}/edit`} look="go">
        Correct it
      </ButtonLink>
    </Page>
  )
}

function Asking({ record, times, thermometers, basis }: KeptProps & { basis: TimeBasis }) {
  const question = useQuestion(basis)
  const writer = useWriter()
  const thermometer = thermometers.find(({ id }) => id === question.thermometerId) ?? null
  const outcome = reckon({ basis, temperature: question.temperature, thermometer, factor: question.factor })
  const answer = outcome.kind === 'answer' ? outcome.answer : null
  return (
    <div className="time">
      <div className="time-top">
        <Question record={record} times={times} question={question} />
        <PrintLink record={record} question={question} ready={answer !== null} place="top" />
      </div>
      <Answer name={nameOf(record)} outcome={outcome} onChoose={question.setTyped} />
      <div className="time-body">
        <Graph film={nameOf(record)} basis={basis} asked={answer} />
        <div className="time-side">
          <ReadWith
            thermometers={thermometers}
            question={question}
            corrected={outcome.kind === 'answer' ? outcome.corrected : null}
          />
          <Beside record={record} />
          {record.points.length === 1 && record.kind === 'ordinary' && (
            <p className="small">
              {say('web.one-point', {}, writer)}{' '}
              <ButtonLink href={`/times/${record.id}/edit`} look="bare">
                Add a second time
              </ButtonLink>
            </p>
          )}
        </div>
      </div>
      <Grounds record={record} basis={basis} answer={answer} />
      <About record={record}>
        <PrintLink record={record} question={question} ready={answer !== null} place="end" />
      </About>
    </div>
  )
}
