import type { Recipe, Score } from '../../../../score/index.js'
import { say } from '../../../../words/index.js'
import { useWriter, Words } from '../../../shared/ui/index.js'
import { developingBath, pullOf } from '../names.js'
import { scoreWarning } from '../warnings.js'
import type { Around } from './around.js'
import { PlanAnswer, ScoreFigure } from './PlanAnswer.js'
import type { PlanReading } from './readPlan.js'

/** What becomes of the plan: the answer first, then the score, then what is to be said against it. */
export function Preview({ recipe, reading: { score, around } }: { recipe: Recipe; reading: PlanReading }) {
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
      <ScoreFigure name={recipe.name} score={score.value} />
      <Surroundings score={score.value} around={around} />
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
function Surroundings({ score, around: { room, pour } }: { score: Score; around: Around }) {
  const writer = useWriter()
  const [first] = score.tanks
  const bath = first === undefined ? null : developingBath(first)
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
