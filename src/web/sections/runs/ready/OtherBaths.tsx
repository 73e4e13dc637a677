import { type Celsius, writeTemperature } from '../../../../kernel/index.js'
import { SPREAD } from '../../../../science/index.js'
import type { TankFollowing } from '../../../../score/index.js'
import { say } from '../../../../words/index.js'
import type { Run } from '../../../shared/api/index.js'
import { useWriter, Words } from '../../../shared/ui/index.js'
import { measuredBaths } from '../names.js'

interface OtherBathsProps {
  readonly run: Run
  readonly tank: TankFollowing
  /** What the developer reads; null where baths are judged by windows of their own. */
  readonly developer: Celsius | null
}

/** The measured temperatures of the other baths against the developer’s. */
export function OtherBaths({ run, tank, developer }: OtherBathsProps) {
  const writer = useWriter()
  const measured = run.plan.tanks.find(({ conditions }) => conditions.tank === tank.tank)?.conditions.temperatures ?? {}
  const rows = measuredBaths(tank.plan.tank.recipe).flatMap(({ id, name }) => {
    const temperature = measured[id]
    return temperature === undefined ? [] : [{ id, name, temperature: temperature as Celsius }]
  })
  if (developer === null || rows.length === 0) return null
  return (
    <section>
      <p className="quiet">
        <Words>{say('ready.against', { limit: SPREAD.refused }, writer)}</Words>
      </p>
      <dl className="against">
        {rows.map(({ id, name, temperature }) => {
          const apart = { by: temperature - developer, limit: SPREAD.refused, said: SPREAD.said }
          return (
            <div key={id}>
              <dt>{name}</dt>
              <dd>
                <Words>{writeTemperature(temperature, writer.units)}</Words>
              </dd>
              <dd className="apart">
                <Words>{say('ready.bath', apart, writer)}</Words>
              </dd>
            </div>
          )
        })}
      </dl>
    </section>
  )
}
