import { useState } from 'react'
import { say } from '../../../../words/index.js'
import type { RollSummary } from '../../../shared/api/index.js'
import { Button, useWriter } from '../../../shared/ui/index.js'
import { StickersLink } from '../paper/PaperLink.js'
import { ChangeForm } from '../steps/ChangeForm.js'
import { StepForm } from '../steps/StepForm.js'
import { RollRow } from './RollRow.js'
import { RollTable } from './RollTable.js'

/** One page of rolls, to be opened one by one or chosen for a step or a change of all of them. */
export function RollList({ rolls, table }: { rolls: readonly RollSummary[]; table: boolean }) {
  const [picked, setPicked] = useState<ReadonlySet<string>>(new Set())
  // What has left the list meanwhile is not chosen any more.
  const chosen = rolls.filter(({ id }) => picked.has(id))
  const pick = (id: string) =>
    setPicked((now) => {
      const next = new Set(now)
      if (!next.delete(id)) next.add(id)
      return next
    })
  const all = chosen.length === rolls.length
  const Shape = table ? RollTable : Rows
  return (
    <>
      <label className="check pick-all">
        <input
          type="checkbox"
          checked={all}
          onChange={() => setPicked(all ? new Set() : new Set(rolls.map(({ id }) => id)))}
        />
        <span>Choose all on this page</span>
      </label>
      <Shape rolls={rolls} picked={picked} pick={pick} />
      {chosen.length > 0 && <Chosen rolls={chosen} clear={() => setPicked(new Set())} />}
    </>
  )
}

export interface RowsProps {
  readonly rolls: readonly RollSummary[]
  readonly picked: ReadonlySet<string>
  readonly pick: (id: string) => void
}

const Rows = ({ rolls, picked, pick }: RowsProps) => (
  <ul className="rows roll-rows">
    {rolls.map((roll) => (
      <RollRow key={roll.id} roll={roll} picked={picked.has(roll.id)} pick={pick} />
    ))}
  </ul>
)

/** What can be done with all rolls that are chosen. */
function Chosen({ rolls, clear }: { rolls: readonly RollSummary[]; clear: () => void }) {
  const writer = useWriter()
  return (
    <section className="chosen" aria-label="Chosen rolls">
      <div className="row">
        <h2 role="status">{say('rolls.chosen', { count: rolls.length }, writer)}</h2>
        <StickersLink of={{ roll_ids: rolls.map(({ id }) => id) }} />
        <Button look="bare" onClick={clear}>
          Choose none
        </Button>
      </div>
      <StepForm rolls={rolls} onDone={clear} />
      <ChangeForm rolls={rolls} onDone={clear} />
    </section>
  )
}
