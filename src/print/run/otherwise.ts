import { celsius, type UnitSystem } from '../../kernel/index.js'
import { lengthFrom } from '../../score/index.js'
import { say, type Writer } from '../../words/index.js'
import type { Fonts } from '../setting/fonts.js'
import { type Column, gap, type Piece, stacked, text } from '../setting/pieces.js'
import { type Cell, cells } from './cells.js'
import type { TankJob } from './timeline.js'

/** Readings beside the planned one that the sheet answers without a computer, in the bench's degrees. */
const BESIDE: Readonly<Record<UnitSystem, readonly number[]>> = {
  metric: [-1, -0.5, 0.5, 1, 1.5],
  us: [-2, -1, 1, 2, 3],
}

/**
 * For a developer that goes in: when it is poured out should it read otherwise, by the room's pull where the plan
 * reckons with one. None where the time does not move with the temperature.
 */
export function otherwiseCells(fonts: Fonts, at: TankJob, column: Column, w: Writer): Piece | null {
  const { one, job, offset } = at
  const { development } = one
  if (job.kind !== 'change' || development?.from !== 'basis' || development.basis.kind === 'fixed') return null
  const { start, room } = development.course
  const draining = one.clockEnd - one.out
  const answers = BESIDE[w.units].flatMap((by): Cell[] => {
    const temperature = celsius(start + (w.units === 'us' ? by / 1.8 : by))
    const time = lengthFrom(development, temperature)
    if (!time.ok) return []
    return [{ head: w.temperature(temperature), under: w.time(offset + one.in + time.value - draining) }]
  })
  if (answers.length === 0) return null
  const heading = say(room === null ? 'sheet.otherwise' : 'sheet.otherwise.room', { name: one.step.name }, w)
  return stacked([text(fonts, 'P', heading, { size: 12 }, column), gap(1), cells(fonts, answers, column), gap(4)])
}
