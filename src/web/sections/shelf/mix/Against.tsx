import type { Millilitres } from '../../../../kernel/index.js'
import { say } from '../../../../words/index.js'
import type { OnShelf, ProductRecord } from '../../../shared/api/index.js'
import { Button, ButtonLink, useWriter, Words } from '../../../shared/ui/index.js'
import { against } from './against-words.js'
import type { MixPlan } from './plan.js'

interface AgainstProps {
  readonly plan: MixPlan
  readonly product: ProductRecord
  readonly volume: Millilitres
  readonly from: ReadonlyMap<string, OnShelf | null>
  readonly chosen: readonly OnShelf[]
  readonly empty: readonly OnShelf[]
  readonly onStart: () => void
}

/** What goes in at a glance, what stands against it, and the way to begin. */
export function Against({ onStart, ...asked }: AgainstProps) {
  const writer = useWriter()
  const { stops, warns } = against(asked, writer)
  const { plan } = asked
  return (
    <>
      <h2>{say('mix.title', { name: asked.product.name, volume: asked.volume }, writer)}</h2>
      <ul className="rows goes-in">
        {plan.water !== null && (
          <li>
            <Words>{say('mix.step.water', plan.water, writer)}</Words>
          </li>
        )}
        {plan.lines.map((line) => (
          <li key={line.key}>
            <Words>
              {line.amount === 0
                ? say('mix.step.whole', { name: line.name }, writer)
                : say('mix.step.add', { ...line, called: line.swap?.wanted ?? null }, writer)}
            </Words>
          </li>
        ))}
      </ul>
      {stops.length + warns.length > 0 ? (
        <div className="note" role="status">
          {[...stops, ...warns].map((words) => (
            <p key={words}>
              <Words>{words}</Words>
            </p>
          ))}
        </div>
      ) : (
        <p role="status">{say('mix.clear', {}, writer)}</p>
      )}
      <div className="row">
        {stops.length === 0 && (
          <Button look="go" onClick={onStart}>
            Begin the sheet
          </Button>
        )}
        {asked.empty.length === 0 && <ButtonLink href="/shelf/things/new?kind=bottle">Add a bottle</ButtonLink>}
      </div>
    </>
  )
}
