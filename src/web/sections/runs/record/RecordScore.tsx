import type { Following, Score } from '../../../../score/index.js'
import { Drawing, useWidth, useWriter } from '../../../shared/ui/index.js'
import { scoreDrawing } from '../scoreDrawing.js'

interface RecordScoreProps {
  readonly score: Score
  readonly following: Following
  readonly until: number
  readonly name: string
}

/** The score as it was played: real instants, real rates, the plan dashed over them. */
export function RecordScore({ score, following, until, name }: RecordScoreProps) {
  const writer = useWriter()
  const [frame, width] = useWidth<HTMLElement>()
  const staves = following.tanks.map((tank, i) => ({
    plan: tank.plan,
    began: score.tanks[i] ?? null,
    states: new Map(tank.jobs.map(({ job, state }) => [job.id, state])),
    next: null,
    now: (until - tank.zero) / 1000,
    label: tank.tank,
    note: '',
    band: [],
  }))
  return (
    <figure ref={frame} className="score-figure">
      {width >= 280 && staves.length > 0 && <Drawing picture={scoreDrawing(name, score, staves, width, writer)} />}
    </figure>
  )
}
