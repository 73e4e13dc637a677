import type { ReadLine } from '../../../../planning/index.js'
import { say } from '../../../../words/index.js'
import { useWriter, Words } from '../../../shared/ui/index.js'
import { aboutRoll } from '../about.js'

/** “Read as”: every line in words, and what is wrong with one beside what would be right. */
export function ReadLines({ lines, text }: { lines: readonly ReadLine[]; text: string }) {
  const writer = useWriter()
  const shown = lines.filter(
    ({ rolls, troubles, whose }) => rolls.length > 0 || troubles.length > 0 || whose !== undefined,
  )
  return (
    <section aria-labelledby="rolls-read" className="rolls-read">
      <h2 id="rolls-read">Read as</h2>
      {text.trim() === '' && <p className="quiet">{say('rolls.many.nothing', {}, writer)}</p>}
      <ol>
        {shown.map((line) => (
          <OneLine key={line.line} line={line} />
        ))}
      </ol>
    </section>
  )
}

function OneLine({ line: { line, rolls, troubles, whose } }: { line: ReadLine }) {
  const writer = useWriter()
  const [roll] = rolls
  return (
    <li>
      <span className="quiet">line {line}</span>
      <span>
        {whose !== undefined && <em>{say('rolls.many.heading', { whose }, writer)}</em>}
        {roll && (
          <Words>
            {[
              say('rolls.many.times', { count: rolls.length, film: roll.film }, writer),
              aboutRoll(roll, writer),
              ...(roll.whose === null ? [] : [say('rolls.of', { whose: roll.whose }, writer)]),
              ...(roll.due === null ? [] : [say('rolls.due', { due: roll.due }, writer)]),
              ...(roll.note === '' ? [] : [roll.note]),
            ].join('; ')}
          </Words>
        )}
        {troubles.map(({ sentence }) => (
          <span key={sentence} className="care">
            <Words>{`${sentence} `}</Words>
          </span>
        ))}
      </span>
    </li>
  )
}
