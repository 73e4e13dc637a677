import type { Seconds } from '../../../../kernel/index.js'
import type { Score, TankPlan } from '../../../../score/index.js'
import { say } from '../../../../words/index.js'
import { Drawing, useWidth, useWriter, Words } from '../../../shared/ui/index.js'
import { developingBath } from '../names.js'
import { plannedStave, scoreDrawing } from '../scoreDrawing.js'

/** The plan of each tank in two sentences. */
export function PlanAnswer({ score }: { score: Score }) {
  return score.tanks.map((tank) => <TankAnswer key={tank.tank.tank} plan={tank} score={score} />)
}

function TankAnswer({ plan: first, score }: { plan: TankPlan; score: Score }) {
  const writer = useWriter()
  const bath = developingBath(first)
  const { development, tank } = first.tank
  const temperature = development?.from === 'basis' ? development.course.start : (development?.temperature ?? null)
  return (
    <p className="lead" role="status">
      {bath !== null && temperature !== null && (
        <strong>
          <Words>{say('plan.develop', { time: bath.clockEnd - bath.in, temperature }, writer)}</Words>
        </strong>
      )}{' '}
      <Words>
        {say(
          'plan.answer',
          { tank, length: (first.tank.offset + first.length) as Seconds, hands: score.handsBusy },
          writer,
        )}
      </Words>
    </p>
  )
}

/** The score across the column. */
export function ScoreFigure({ name, score }: { name: string; score: Score }) {
  const writer = useWriter()
  const [frame, width] = useWidth<HTMLElement>()
  const staves = score.tanks.map((tank) => plannedStave(tank, writer))
  return (
    <figure ref={frame} className="score-figure">
      {width >= 280 && <Drawing picture={scoreDrawing(name, score, staves, width, writer)} />}
    </figure>
  )
}
