import type { TankPlan } from '../../../../score/index.js'
import { say } from '../../../../words/index.js'
import { useWriter, Words } from '../../../shared/ui/index.js'
import { developingBath, pullOf } from '../names.js'
import { scoreWarning } from '../warnings.js'
import type { Around } from './around.js'
import { PlanAnswer, ScoreFigure } from './PlanAnswer.js'
import type { PlanReading } from './readPlan.js'

interface PreviewProps {
  /** What the picture is called. */
  readonly name: string
  readonly score: PlanReading['score']
  /** Which tank of the score is shown with what surrounds it. */
  readonly place: number
  readonly around: Around
}

/** What becomes of the plan: the answer first, then the score, then what is to be said against it. */
export function Preview({ name, score, place, around }: PreviewProps) {
  const writer = useWriter()
  if (score === null) return <p className="lead quiet">{say('plan.needs', {}, writer)}</p>
  if (!score.ok)
    return (
      <p className="note" role="status">
        <Words>{score.problem.sentence}</Words>
      </p>
    )
  return (
    <>
      <PlanAnswer score={score.value} />
      <ScoreFigure name={name} score={score.value} />
      <Surroundings tank={score.value.tanks[place]} around={around} />
      {score.value.warnings.map((warning) => {
        const sentence = scoreWarning(warning, writer)
        return (
          <p key={sentence} className="note">
            <Words>{sentence}</Words>
          </p>
        )
      })}
    </>
  )
}

/** What the room takes on the way, and how warm to pour into a tank that stood in it. */
function Surroundings({ tank, around: { room, pour } }: { tank: TankPlan | undefined; around: Around }) {
  const writer = useWriter()
  const bath = tank === undefined ? null : developingBath(tank)
  if (room === null || bath?.course === null || bath?.course === undefined) return null
  const sentences = [
    say('ready.room', { by: pullOf(room, bath) }, writer),
    say('plan.room', { constant: room.timeConstant, room: room.temperature }, writer),
    ...(pour?.ok && Math.abs(pour.value.change) >= LEAST ? [say('plan.pour', pour.value, writer)] : []),
    ...(pour?.ok === false ? [pour.problem.sentence] : []),
  ]
  return (
    <p className="quiet" role="status">
      <Words>{sentences.join(' ')}</Words>
    </p>
  )
}

/** Less than this no thermometer tells, °C. */
const LEAST = 0.05
