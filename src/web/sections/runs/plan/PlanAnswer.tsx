import type { Seconds } from '../../../../kernel/index.js'
import type { Score, TankPlan } from '../../../../score/index.js'
import { say, type Writer } from '../../../../words/index.js'
import { Drawing, useWidth, useWriter, Words } from '../../../shared/ui/index.js'
import { developingBath } from '../names.js'
import { plannedStave, scoreDrawing } from '../scoreDrawing.js'

/** The plan of each tank in two sentences. */
export function PlanAnswer({ score }: { score: Score }) {
  const writer = useWriter()
  return (
    <>
      {score.tanks.map((tank) => (
        <TankAnswer key={tank.tank.tank} plan={tank} score={score} />
      ))}
      {score.tanks.length > 1 && (
        <p className="lead">
          <Words>{say('plan.hands', { hands: score.handsBusy }, writer)}</Words>
        </p>
      )}
    </>
  )
}

function TankAnswer({ plan: first, score }: { plan: TankPlan; score: Score }) {
  const writer = useWriter()
  const bath = developingBath(first)
  const { development, tank } = first.tank
  const length = (first.tank.offset + first.length) as Seconds
  const several = score.tanks.length > 1
  const temperature = development?.from === 'basis' ? development.course.start : (development?.temperature ?? null)
  return (
    <p className="lead" role="status">
      {bath !== null && temperature !== null && (
        <strong>
          <Words>{say('plan.develop', { time: bath.clockEnd - bath.in, temperature }, writer)}</Words>
        </strong>
      )}{' '}
      <Words>{say(several ? 'plan.done' : 'plan.answer', { tank, length, hands: score.handsBusy }, writer)}</Words>
      {first.tank.offset > 0 && (
        <>
          {' '}
          <Words>{beginsWords(first, score, writer)}</Words>
        </>
      )}
    </p>
  )
}

/** When a tank that is not the first begins, and why no sooner. */
function beginsWords({ tank: { tank, offset } }: TankPlan, { tanks }: Score, writer: Writer): string {
  const lastJob = ({ jobs }: TankPlan) => Math.max(...jobs.map(({ start }) => start))
  const over = tanks.findLast((one) => one.tank.offset < offset && offset >= one.tank.offset + lastJob(one))
  return over === undefined
    ? say('plan.begins', { tank, at: offset }, writer)
    : say('plan.begins.over', { tank, at: offset, after: over.tank.tank }, writer)
}

interface ScoreFigureProps {
  readonly name: string
  readonly score: Score
  /** Of its least text, px; larger where it is read at the sink. */
  readonly text?: number
}

/** The score across the column. */
export function ScoreFigure({ name, score, text }: ScoreFigureProps) {
  const writer = useWriter()
  const [frame, width] = useWidth<HTMLElement>()
  const staves = score.tanks.map((tank) => plannedStave(tank, writer))
  return (
    <figure ref={frame} className="score-figure">
      {width >= 280 && <Drawing picture={scoreDrawing(name, score, staves, width, writer, text)} />}
    </figure>
  )
}
