import type { Instant } from '../../kernel/index.js'
import type { Laid, TankFollowing, TankPlan } from '../../score/index.js'
import { say, type Writer, writeTimeOfDay } from '../../words/index.js'
import type { Fonts } from '../setting/fonts.js'
import { broken, line } from '../setting/lines.js'
import type { Line } from '../setting/page.js'
import type { Column, Piece } from '../setting/pieces.js'
import { isBath } from './job-texts.js'

const SIZE = 13
const HEAD = 12
const ROW = 21
const NAME = 148
/** Right edges, from the left of the column. */
const AT = [230, 318, 378, 440, 503] as const
const COLUMNS = ['in', 'out', 'lasted', 'planned', 'off'] as const

/** Every step with its instants, how long it was and how long it should have been. */
export function recordTable(
  fonts: Fonts,
  tank: TankFollowing,
  began: TankPlan,
  zone: string,
  { left }: Column,
  w: Writer,
): Piece {
  const row = (cells: readonly string[], y: number, setting: { size: number; ink?: 'quiet' }): Line[] =>
    cells.map((cell, i) => {
      if (i === 0) return line(broken(fonts, cell, setting, NAME, 1)[0] ?? '', left, y, setting)
      return line(cell, left + (AT[i - 1] ?? 0), y, { ...setting, anchor: 'end' })
    })
  const head = [say('record.column.step', {}, w), ...COLUMNS.map((column) => say(`record.column.${column}`, {}, w))]
  const rows = tank.plan.laid.map((one) => cellsOf(one, began.laid[one.index] as Laid, { zero: tank.zero, zone, w }))
  return {
    height: HEAD + rows.length * ROW + 10,
    at: (top) => [
      {
        kind: 'table',
        head: row(head, top + HEAD, { size: HEAD, ink: 'quiet' }),
        rows: rows.map((cells, i) => row(cells, top + HEAD + (i + 1) * ROW, { size: SIZE })),
      },
    ],
  }
}

/** Whether some moment of the table was reckoned and not confirmed. */
export const isReckoned = ({ plan }: TankFollowing): boolean =>
  plan.laid.some(({ skipped, inBy, outBy }) => !skipped && (inBy !== 'pressed' || outBy !== 'pressed'))

function cellsOf(one: Laid, planned: Laid, { zero, zone, w }: { zero: Instant; zone: string; w: Writer }): string[] {
  const { name } = one.step
  if (one.skipped) return [name, say('record.left-out', {}, w), '', '', w.time(planned.clockEnd - planned.in), '']
  const moment = (second: number, by: Laid['inBy']): string => {
    const at = writeTimeOfDay(Math.round(zero + second * 1000), zone)
    return by === 'pressed' ? at : say('record.reckoned', { at }, w)
  }
  if (!isBath(one.step)) return [name, '', moment(one.out, one.outBy), '', '', '']
  const [lasted, wished] = [one.clockEnd - one.in, planned.clockEnd - planned.in]
  const confirmed = one.inBy === 'pressed' || one.outBy === 'pressed'
  const off = confirmed ? say('record.off', { by: lasted - wished }, w) : ''
  return [name, moment(one.in, one.inBy), moment(one.out, one.outBy), w.time(lasted), w.time(wished), off]
}
