import { type Score, type StaveInput, scorePicture, type TankPlan } from '../../../score/index.js'
import { say, type Writer } from '../../../words/index.js'
import { developingBath } from './names.js'

/** Least text of a picture that is read at a desk, px. */
const TEXT = 14

/** The score on a page: every tank a stave, the hands below. With larger text everything is higher too. */
export function scoreDrawing(
  name: string,
  score: Score,
  staves: readonly StaveInput[],
  width: number,
  writer: Writer,
  text = TEXT,
) {
  const height = ((190 + 100 * staves.length) * text) / TEXT
  const baths = score.tanks.reduce((sum, tank) => sum + tank.baths.length, 0)
  return scorePicture({
    staves,
    form: 'page',
    size: { width, height },
    labels: {
      title: say('score.title', { name }, writer),
      description: say('score.description', { baths, length: score.length, hands: score.handsBusy }, writer),
      hands: say('score.hands', {}, writer),
      legend: {
        change: say('score.legend.change', {}, writer),
        turn: say('score.legend.turn', {}, writer),
        area: say('score.legend.area', {}, writer),
      },
    },
    minTextSize: text,
  })
}

/** A tank as it is planned. */
export const plannedStave = (plan: TankPlan, writer: Writer): StaveInput => ({
  plan,
  began: null,
  states: new Map(),
  next: null,
  now: null,
  label: plan.tank.tank,
  note: '',
  band: bandOf(plan, writer),
})

/** The developing bath in two lines: its name, and how long at what temperature. */
function bandOf(plan: TankPlan, writer: Writer): string[] {
  const bath = developingBath(plan)
  const { development } = plan.tank
  if (bath === null || development?.from !== 'basis') return []
  const at = { time: bath.clockEnd - bath.in, temperature: development.course.start }
  return [bath.step.name, say('score.band', at, writer)]
}
