import type { Laid, TankFollowing, TankPlan } from '../../../../score/index.js'
import { say, type Writer, writeMinuteOfDay, writeTimeOfDay } from '../../../../words/index.js'
import { useWriter, Words } from '../../../shared/ui/index.js'

interface StepTableProps {
  readonly tank: TankFollowing
  readonly began: TankPlan
  readonly zone: string
}

const COLUMNS = ['step', 'in', 'out', 'lasted', 'planned', 'off'] as const

/** Every step with its instants; those in brackets nobody confirmed. */
export function StepTable({ tank, began, zone }: StepTableProps) {
  const writer = useWriter()
  const steps = tank.plan.laid.filter(({ step }) => step.step === 'bath' || step.within === null)
  return (
    <section>
      <h2>Steps</h2>
      {/* Wider than a phone: it can be scrolled by keys too. */}
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by keyboard */}
      <section className="wide-table" aria-label="Steps" tabIndex={0}>
        <table>
          <thead>
            <tr>
              {COLUMNS.map((column) => (
                <th key={column} scope="col">
                  {say(`record.column.${column}`, {}, writer)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {steps.map((laid) => (
              <StepRow
                key={laid.step.id}
                laid={laid}
                planned={began.laid[laid.index] ?? laid}
                {...{ tank, zone, writer }}
              />
            ))}
          </tbody>
        </table>
      </section>
      <p className="small">{say('record.reckoned-why', {}, writer)}</p>
    </section>
  )
}

interface StepRowProps {
  readonly laid: Laid
  readonly planned: Laid
  readonly tank: TankFollowing
  readonly zone: string
  readonly writer: Writer
}

function StepRow({ laid, planned, tank, zone, writer }: StepRowProps) {
  const at = (side: 'in' | 'out') => {
    const instant = Math.round(tank.zero + laid[side] * 1000)
    const toTheMinute = tank.toTheMinute[side].includes(laid.index)
    const written = toTheMinute ? writeMinuteOfDay(instant, zone) : writeTimeOfDay(instant, zone)
    return laid[`${side}By`] === 'pressed' ? written : say('record.reckoned', { at: written }, writer)
  }
  if (laid.skipped)
    return (
      <tr>
        <th scope="row">{laid.step.name}</th>
        <td colSpan={5}>{say('record.left-out', {}, writer)}</td>
      </tr>
    )
  const [lasted, plan] = [laid.out - laid.in, planned.out - planned.in]
  return (
    <tr>
      <th scope="row">{laid.step.name}</th>
      <td>{at('in')}</td>
      <td>{at('out')}</td>
      <td>{writer.time(lasted)}</td>
      <td>{writer.time(plan)}</td>
      <td>
        <Words>{say('record.off', { by: lasted - plan }, writer)}</Words>
      </td>
    </tr>
  )
}
