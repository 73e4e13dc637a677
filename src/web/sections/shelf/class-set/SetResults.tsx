import { celsius, writeTemperature } from '../../../../kernel/index.js'
import type { ClassSetResult, ThermometerRecord } from '../../../../wire/index.js'
import { say } from '../../../../words/index.js'
import { Link } from '../../../shared/navigation/index.js'
import { Button, useWriter, Words } from '../../../shared/ui/index.js'

interface SetResultsProps {
  readonly result: ClassSetResult
  readonly all: readonly ThermometerRecord[]
  readonly again: () => void
}

export function SetResults({ result, all, again }: SetResultsProps) {
  const writer = useWriter()
  const at = celsius(result.true_c)
  const nameOf = (id: string) => all.find((one) => one.id === id)?.name ?? ''
  return (
    <section aria-labelledby="set-results">
      <h2 id="set-results">
        <Words>{say('class-set.truth', { at }, writer)}</Words>
      </h2>
      <p role="status">
        <Words>
          {result.by === 'median'
            ? say('thermometer.set-by-median', { spread: result.spread_c }, writer)
            : say('thermometer.set-by-trusted', { name: nameOf(result.trusted_id ?? '') }, writer)}
        </Words>
      </p>
      <ul className="rows">
        {result.offsets.map(({ thermometer_id, read_c, offset_c }) => (
          <li key={thermometer_id}>
            <Link className="row-link" href={`/shelf/thermometers/${thermometer_id}`}>
              <strong>{nameOf(thermometer_id)}</strong>
              <span className="row-figure">
                <Words>{say('thermometer.offset', { offset: offset_c, at }, writer)}</Words>
              </span>
              <span className="small row-more">
                <Words>
                  {say('class-set.read', { read: writeTemperature(celsius(read_c), writer.units) }, writer)}
                </Words>
              </span>
            </Link>
          </li>
        ))}
      </ul>
      <Button onClick={again}>Compare again</Button>
    </section>
  )
}
