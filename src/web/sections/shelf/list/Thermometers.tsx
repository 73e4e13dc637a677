import { celsius } from '../../../../kernel/index.js'
import type { ThermometerRecord } from '../../../../wire/index.js'
import { say } from '../../../../words/index.js'
import { useThermometers } from '../../../shared/api/index.js'
import { Link } from '../../../shared/navigation/index.js'
import { ButtonLink, useWriter, Words } from '../../../shared/ui/index.js'
import { errorWords } from '../errorWords.js'
import { kindName } from '../kinds.js'

/** The thermometers, at the end of the shelf. What the rest of the page is read with says whether it could be read. */
export function Thermometers() {
  const writer = useWriter()
  const all = useThermometers().data
  if (all === undefined) return null
  const unchecked = all.filter(({ checks }) => checks.every(({ withdrawn }) => withdrawn))
  return (
    <section aria-labelledby="thermometers" className="shelf-part">
      <div className="shelf-part-head">
        <h2 id="thermometers">Thermometers</h2>
        <div className="row">
          {all.length > 1 && <ButtonLink href="/shelf/class-set">Compare several</ButtonLink>}
          <ButtonLink href="/shelf/thermometers/new">Add a thermometer</ButtonLink>
        </div>
      </div>
      {all.length === 0 ? (
        <p>
          {say('shelf.none', {}, writer)} <Words>{say('shelf.none.why', { error: 0.5 }, writer)}</Words>
        </p>
      ) : (
        <p>
          {unchecked.length === 0
            ? say('shelf.all-checked', {}, writer)
            : say('shelf.some-unchecked', { names: unchecked.map(({ name }) => name) }, writer)}
        </p>
      )}
      {all.length > 0 && <Rows all={all} />}
    </section>
  )
}

function Rows({ all }: { all: readonly ThermometerRecord[] }) {
  const writer = useWriter()
  return (
    <ul className="rows">
      {all.map((one) => (
        <li key={one.id}>
          <Link className="row-link" href={`/shelf/thermometers/${one.id}`}>
            <strong>{one.name}</strong>
            <span className="row-figure">
              <Words>{errorWords(one, writer)}</Words>
            </span>
            <span className="small row-more">
              <Words>
                {say(
                  'shelf.scale',
                  { kind: kindName(one.kind), low: celsius(one.scale_low_c), high: celsius(one.scale_high_c) },
                  writer,
                )}
              </Words>
            </span>
          </Link>
        </li>
      ))}
    </ul>
  )
}
