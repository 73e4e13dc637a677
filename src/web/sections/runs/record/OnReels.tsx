import { say } from '../../../../words/index.js'
import type { Run } from '../../../shared/api/index.js'
import { useWriter, Words } from '../../../shared/ui/index.js'

/** What was on the reels of a tank, each from the middle outwards, and what mixed films got against what they want. */
export function OnReels({ run, tank }: { run: Run; tank: string }) {
  const writer = useWriter()
  const planned = run.plan.tanks.find(({ conditions }) => conditions.tank === tank)
  if (planned === undefined) return null
  const { on_reels, crosses_because } = planned
  return (
    <section>
      <h2>{say('record.rolls', {}, writer)}</h2>
      <p>
        <Words>{say('run.on-reels', { films: on_reels }, writer)}</Words>
      </p>
      {on_reels.map(({ film, roll, wants_s, departs }, place) =>
        wants_s === undefined || departs === undefined ? null : (
          // biome-ignore lint/suspicious/noArrayIndexKey: a plan never changes, and films may be there twice.
          <p key={place} className="small">
            <Words>{say('run.departs', { film: roll?.number ?? film, wants: wants_s, departs }, writer)}</Words>
          </p>
        ),
      )}
      {crosses_because !== undefined && (
        <p className="small">
          <Words>{say('record.crosses', { because: crosses_because }, writer)}</Words>
        </p>
      )}
    </section>
  )
}
