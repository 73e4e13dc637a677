import { lazy, type ReactNode, Suspense } from 'react'
import { type Celsius, writeTemperature } from '../../../../kernel/index.js'
import { SPREAD } from '../../../../science/index.js'
import type { BathKind, TankFollowing } from '../../../../score/index.js'
import { say } from '../../../../words/index.js'
import type { Run } from '../../../shared/api/index.js'
import { useWriter, Words } from '../../../shared/ui/index.js'
import { measuredBaths } from '../names.js'
import type { FromTheTapsProps } from './FromTheTaps.js'

/** Loaded apart and only when it is wanted; a bench that is away costs no more than this advice. */
const FromTheTaps = lazy<(of: FromTheTapsProps) => ReactNode>(() =>
  import('./FromTheTaps.js').then(
    (module) => ({ default: module.FromTheTaps }),
    () => ({ default: () => null }),
  ),
)

/** Baths that are water, and may be mixed from two taps. */
const WATER: readonly BathKind[] = ['pre-wet', 'rinse', 'wash']

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
  const rows = measuredBaths(tank.plan.tank.recipe).flatMap(({ id, name, kind }) => {
    const temperature = measured[id]
    return temperature === undefined ? [] : [{ id, name, kind, temperature: temperature as Celsius }]
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
      <Suspense>
        {rows
          .filter(({ kind, temperature }) => WATER.includes(kind) && temperature <= developer - SPREAD.said)
          .map(({ id, name, temperature }) => (
            <FromTheTaps key={id} name={name} cold={temperature} wanted={developer} />
          ))}
      </Suspense>
    </section>
  )
}
