import { say, writeDay } from '../../../../words/index.js'
import { type Shelf, useBench } from '../../../shared/api/index.js'
import { Link } from '../../../shared/navigation/index.js'
import { useWriter, Words } from '../../../shared/ui/index.js'
import { Bar } from './Bar.js'

export type Jug = Shelf['jugs'][number]

/** Jugs of waste: they fill up, so what counts is the room that is left. */
export function Jugs({ jugs }: { jugs: readonly Jug[] }) {
  const writer = useWriter()
  return (
    <>
      <Columns names={['Jug of waste', 'What is in it', 'volume', 'room left', 'Next']} jugs />
      <ul className="bottles">
        {jugs.map((jug) => (
          <li key={jug.id}>
            <Link className="bottle" href="/shelf/waste">
              <span className="bottle-name">
                <strong>{jug.name}</strong>
                <span className="small">
                  <JugSince jug={jug} />
                </span>
              </span>
              <span className="bottle-left">
                <Bar part={jug.held_ml / jug.holds_ml} waste />
                <span className="small">
                  <Words>{say('jug.silver', jug.silver_g, writer)}</Words>
                </span>
              </span>
              <span className="bottle-figures two">
                <span className="figure">
                  <span className="figure-name">volume</span>
                  <span>
                    <Words>{say('bottle.amount', { held: jug.held_ml, unit: 'ml' }, writer)}</Words>
                  </span>
                </span>
                <span className="figure">
                  <span className="figure-name">room left</span>
                  <span className="decides">
                    <Words>{say('bottle.amount', { held: jug.holds_ml - jug.held_ml, unit: 'ml' }, writer)}</Words>
                  </span>
                </span>
              </span>
              <span className={jug.full ? 'bottle-next asks' : 'bottle-next quiet'}>
                {say('jug.next', { full: jug.full, held: jug.held_ml }, writer)}
              </span>
            </Link>
          </li>
        ))}
      </ul>
    </>
  )
}

/** When a jug's filling was begun, and when it will be full. */
export function JugSince({ jug }: { jug: Jug }) {
  const writer = useWriter()
  const zone = useBench().data?.zone ?? 'UTC'
  const day = (at: string | null) => (at === null ? null : writeDay(Date.parse(at), zone))
  return <>{say('jug.since', { opened: day(jug.opened_at), fullOn: day(jug.full_on) }, writer)}</>
}

/** Names of the columns, for eyes only: each figure has its own for those who hear it, and on a phone. */
export function Columns({ names, jugs = false }: { names: readonly string[]; jugs?: boolean }) {
  const [one, left, ...rest] = names
  const next = rest.at(-1)
  return (
    <div className="bottle bottle-columns" aria-hidden="true">
      <span>{one}</span>
      <span>{left}</span>
      <span className={jugs ? 'bottle-figures two' : 'bottle-figures'}>
        {rest.slice(0, -1).map((name) => (
          <span key={name}>{name}</span>
        ))}
      </span>
      <span>{next}</span>
    </div>
  )
}
