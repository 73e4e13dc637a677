import type { TimeRecord } from '../../../../wire/index.js'
import { go } from '../../../shared/navigation/index.js'
import { Words } from '../../../shared/ui/index.js'
import { Combo } from './Combo.js'
import { nearest, type Word, wordOf, wordsKept } from './nearest.js'
import type { useQuestion } from './useQuestion.js'

interface QuestionProps {
  readonly record: TimeRecord
  readonly times: readonly TimeRecord[]
  readonly question: ReturnType<typeof useQuestion>
}

/** “Corvane 400 at 400 in ascorbate 1 + 3 at 21.6 °C”: every dotted word can be typed over. */
export function Question({ record, times, question }: QuestionProps) {
  const word = (label: string, which: Word) => (
    <Combo
      label={label}
      value={wordOf(record, which)}
      options={wordsKept(times, record.film, which)}
      onChoose={(value) => {
        const next = nearest(times, record, which, value)
        if (next) go(`/times/${next.id}${window.location.search}`, { replace: true })
      }}
    />
  )
  return (
    <p className="question">
      {word('Film', 'film')}{' '}
      {record.exposure_index !== null && (
        <>
          <span>at</span> {word('Exposure index', 'index')}{' '}
        </>
      )}
      <span>in</span> {word('Developer', 'developer')} <span>at</span> <Temperature question={question} />
    </p>
  )
}

/** Typed as people write it; when they leave it, it is set as it was read, with what they wrote beside it. */
function Temperature({ question }: Pick<QuestionProps, 'question'>) {
  const { text, typed, temperature, setTyped } = question
  const said =
    typed === null ? null : temperature.kind === 'read' && temperature.echo !== typed ? temperature.echo : null
  return (
    <>
      <input
        className="ask"
        aria-label="Temperature of the developer"
        aria-describedby="temperature-read"
        aria-invalid={temperature.kind === 'read' ? undefined : true}
        autoComplete="off"
        spellCheck={false}
        size={Math.max(4, text.length)}
        value={text}
        onFocus={(event) => event.target.select()}
        onChange={(event) => setTyped(event.target.value)}
      />{' '}
      <span id="temperature-read" className="small">
        {said && <Words>{`read as ${said}`}</Words>}
      </span>
    </>
  )
}
