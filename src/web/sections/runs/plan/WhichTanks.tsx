import { say } from '../../../../words/index.js'
import { Button, Choices, useWriter } from '../../../shared/ui/index.js'
import type { Tanks } from './useTanks.js'

interface WhichTanksProps {
  readonly tanks: Tanks
  /** Of each tank, whether something is still wanting; empty before it has been looked at. */
  readonly wanting: readonly boolean[]
}

/** Which tanks are planned together, and whose fields stand below. */
export function WhichTanks({ tanks: { drafts, place, show, add, leaveOut }, wanting }: WhichTanksProps) {
  const writer = useWriter()
  const nameOf = (at: number) => drafts[at]?.tank.trim() || `${at + 1}`
  const words = (at: number) =>
    say(wanting[at] === true ? 'plan.tank.wants' : 'plan.tank', { tank: nameOf(at) }, writer)
  return (
    <div className="which-tanks">
      {drafts.length > 1 && (
        <Choices
          legend={say('plan.tanks', {}, writer)}
          value={`${place}`}
          options={drafts.map((_, at) => [`${at}`, words(at)] as const)}
          onValue={(at) => show(Number(at))}
        />
      )}
      <div className="row">
        {add !== null && <Button onClick={add}>{say('plan.tanks.add', {}, writer)}</Button>}
        {leaveOut !== null && (
          <Button onClick={leaveOut}>{say('plan.tanks.leave-out', { tank: nameOf(place) }, writer)}</Button>
        )}
      </div>
    </div>
  )
}
