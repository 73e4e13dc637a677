import type { Recipe, Score } from '../../../../score/index.js'
import { say } from '../../../../words/index.js'
import { Drawing, useWidth, useWriter, Words } from '../../../shared/ui/index.js'
import { developingBath } from '../names.js'
import { plannedStave, scoreDrawing } from '../scoreDrawing.js'
import { scoreWarning } from '../warnings.js'
import type { PlanReading } from './readPlan.js'

/** What becomes of the plan: the answer first, then the score, then what is to be said against it. */
export function Preview({ recipe, reading: { score } }: { recipe: Recipe; reading: PlanReading }) {
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

/** The plan in two sentences. */
export function PlanAnswer({ score }: { score: Score }) {
  const writer = useWriter()
  const [first] = score.tanks
  if (first === undefined) return null
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
      <Words>{say('plan.answer', { tank, length: score.length, hands: score.handsBusy }, writer)}</Words>
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
