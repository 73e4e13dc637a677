import type { TimeRecord } from '../../../../wire/index.js'
import { Words } from '../../../shared/ui/index.js'

/** What stands beside the figure on the sheet: it holds for this agitation only. */
export function Beside({ record }: { record: TimeRecord }) {
  const noted = [
    ['Agitation', record.agitation],
    ['Note', record.note],
  ].filter(([, words]) => words !== '')
  if (noted.length === 0) return null
  return (
    <dl className="beside">
      {noted.map(([name = '', words = '']) => (
        <Noted key={name} name={name} words={words} />
      ))}
    </dl>
  )
}

function Noted({ name, words }: { name: string; words: string }) {
  return (
    <>
      <dt>{name}</dt>
      <dd>
        <Words>{words}</Words>
      </dd>
    </>
  )
}
