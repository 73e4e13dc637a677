import type { UseQueryResult } from '@tanstack/react-query'
import type { PastedReading } from '../../../../wire/index.js'
import { say } from '../../../../words/index.js'
import { Trouble, useWriter, Words } from '../../../shared/ui/index.js'

type Line = PastedReading['lines'][number]

interface ReadBackProps {
  readonly reading: Pick<UseQueryResult<PastedReading>, 'data' | 'error' | 'isFetching'>
  readonly text: string
}

/** “Read as”: every line of the text in words, and what is wrong with a cell beside what would be right. */
export function ReadBack({ reading, text }: ReadBackProps) {
  const writer = useWriter()
  if (reading.error && text.trim() !== '') return <Trouble fault={reading.error} />
  const lines = reading.data?.lines.filter((line) => line.read_as !== null || line.trouble.length > 0) ?? []
  return (
    <section aria-labelledby="read-as" className="read-back" aria-busy={reading.isFetching}>
      <h2 id="read-as">Read as</h2>
      {text.trim() === '' && <p className="quiet">{say('times.paste.nothing', {}, writer)}</p>}
      {reading.data?.count === 0 && <p className="quiet">{say('times.paste.no-times', {}, writer)}</p>}
      <ol>
        {lines.map((line) => (
          <ReadLine key={line.number} line={line} />
        ))}
      </ol>
    </section>
  )
}

function ReadLine({ line }: { line: Line }) {
  return (
    <li>
      <span className="quiet line-number">line {line.number}</span>
      <span>
        {line.read_as !== null && <Words>{line.read_as}</Words>}{' '}
        {line.trouble.map((trouble) => (
          <span key={trouble.cell + trouble.sentence} className="care">
            <Words>{`${trouble.sentence} `}</Words>
          </span>
        ))}
      </span>
    </li>
  )
}
