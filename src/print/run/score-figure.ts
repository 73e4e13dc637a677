import type { Score, StaveInput, TankPlan } from '../../score/index.js'
import { scorePicture } from '../../score/index.js'
import { say, type Writer } from '../../words/index.js'
import type { Column, Piece } from '../setting/pieces.js'

/**
 * Height of the picture: least for one tank and for each more, and what more it takes where there is room, with a band of
 * development in it and without. */
const HEIGHT = { one: 150, more: 55, room: 120, plain: 60 } as const
const TEXT = 12

/** The picture of a score, across the whole column; of the height that is left it takes what becomes it. */
export function scoreFigure(
  name: string,
  score: Score,
  staves: readonly StaveInput[],
  column: Column & { readonly height: number },
  w: Writer,
): Piece {
  const least = HEIGHT.one + (staves.length - 1) * HEIGHT.more
  const room = staves.some(({ plan }) => plan.laid.some(({ course }) => course !== null)) ? HEIGHT.room : HEIGHT.plain
  const height = Math.max(least, Math.min(least + room, column.height))
  const [first] = score.tanks
  const drawing = scorePicture({
    staves,
    form: 'page',
    size: { width: column.width, height },
    labels: {
      title: say('score.title', { name }, w),
      description: say(
        'score.description',
        { baths: first?.baths.length ?? 0, length: score.length, hands: score.handsBusy },
        w,
      ),
      hands: say('score.hands', {}, w),
      legend: {
        change: say('score.legend.change', {}, w),
        turn: say('score.legend.turn', {}, w),
        area: say('score.legend.area', {}, w),
      },
    },
    minTextSize: TEXT,
  })
  return { height, at: (top) => [{ kind: 'figure', drawing, x: column.left, y: top }] }
}

/** A tank as it is planned. */
export const plannedStave = (plan: TankPlan, w: Writer): StaveInput => ({
  plan,
  began: null,
  states: new Map(),
  next: null,
  now: null,
  label: plan.tank.tank,
  note: '',
  band: bandOf(plan, w),
})

/** The developing bath in two lines. */
export function bandOf({ laid, tank }: TankPlan, w: Writer): string[] {
  const bath = laid.find(({ development }) => development?.from === 'basis')
  if (bath === undefined || tank.development?.from !== 'basis') return []
  const at = { time: bath.clockEnd - bath.in, temperature: tank.development.course.start }
  return [bath.step.name, say('score.band', at, w)]
}
