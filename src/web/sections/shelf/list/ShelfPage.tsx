import { celsius } from '../../../../kernel/index.js'
import type { ThermometerRecord } from '../../../../wire/index.js'
import { say } from '../../../../words/index.js'
import { useThermometers } from '../../../shared/api/index.js'
import { Link } from '../../../shared/navigation/index.js'
import { Asked, ButtonLink, Page, useWriter, Words } from '../../../shared/ui/index.js'
import { errorWords } from '../errorWords.js'
import { kindName } from '../kinds.js'

export function ShelfPage() {
  const thermometers = useThermometers()
  const writer = useWriter()
  const unchecked = thermometers.data?.filter(({ checks }) => checks.every(({ withdrawn }) => withdrawn)) ?? []
  const any = (thermometers.data?.length ?? 0) > 0
  return (
    <Page
      title="Shelf"
      lead={
        any && (
          <Words>
            {unchecked.length === 0
              ? say('shelf.all-checked', {}, writer)
              : say('shelf.some-unchecked', { names: unchecked.map(({ name }) => name) }, writer)}
          </Words>
        )
      }
      actions={
        <>
          <ButtonLink href="/shelf/kit">Kit</ButtonLink>
          {(thermometers.data?.length ?? 0) > 1 && <ButtonLink href="/shelf/class-set">Compare several</ButtonLink>}
          <ButtonLink look="go" href="/shelf/thermometers/new">
            Add a thermometer
          </ButtonLink>
        </>
      }
    >
      <Asked query={thermometers}>
        {(all) => (all.length === 0 ? <NoThermometers /> : <Thermometers all={all} />)}
      </Asked>
    </Page>
  )
}

function NoThermometers() {
  const writer = useWriter()
  return (
    <p className="lead">
      <strong>{say('shelf.none', {}, writer)}</strong> <Words>{say('shelf.none.why', { error: 0.5 }, writer)}</Words>
    </p>
  )
}

function Thermometers({ all }: { all: readonly ThermometerRecord[] }) {
  const writer = useWriter()
  return (
    <section aria-labelledby="thermometers">
      <h2 id="thermometers">Thermometers</h2>
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
    </section>
  )
}
