import { writeDuration, writeTemperature } from '../../../../kernel/index.js'
import type { TimeRecord } from '../../../../wire/index.js'
import { say } from '../../../../words/index.js'
import { basisOf, developerOf } from '../../../shared/figures/index.js'
import { Link } from '../../../shared/navigation/index.js'
import { useWriter, Words } from '../../../shared/ui/index.js'

/** One kept time as a sentence: what it is, and from where its answers start. */
export function TimeRow({ time }: { time: TimeRecord }) {
  const writer = useWriter()
  const basis = basisOf(time)
  const points = basis.ok ? basis.value.points : []
  const [from, to] = [points[0]?.temperature, points.at(-1)?.temperature]
  return (
    <li>
      <Link className="row-link" href={`/times/${time.id}`}>
        <span>
          <strong>{time.film}</strong>
          {time.exposure_index !== null && ` at ${time.exposure_index}`} <span className="quiet">in</span>{' '}
          {developerOf(time)}
        </span>
        <span className="row-figure">
          {basis.ok && (
            <>
              <strong>{writeDuration(basis.value.reference.time)}</strong>{' '}
              <span className="quiet">
                at <Words>{writeTemperature(basis.value.reference.temperature, writer.units)}</Words>
              </span>
            </>
          )}
        </span>
        <span className="small row-more">
          {from !== undefined && to !== undefined && (
            <Words>
              {say(
                'times.rests-on',
                { count: points.length, from, to, words: time.source_words, kind: time.kind },
                writer,
              )}
            </Words>
          )}
        </span>
      </Link>
    </li>
  )
}
