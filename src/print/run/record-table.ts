import { isBath, type Laid, type TankFollowing, type TankPlan } from '../../score/index.js'
import { say, type Writer, writeMinuteOfDay, writeTimeOfDay } from '../../words/index.js'
import type { Fonts } from '../setting/fonts.js'
import { broken, line } from '../setting/lines.js'
import type { Line } from '../setting/page.js'
import type { Column, Piece } from '../setting/pieces.js'
import { type Fills, fillsName, fillsOf } from './fills.js'

const SIZE = 13
const HEAD = 12
const ROW = 20
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
  const rows = rowsOf(tank.plan.laid, began.laid, { tank, zone, w })
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

interface Clock {
  readonly tank: TankFollowing
  readonly zone: string
  readonly w: Writer
}

/** Baths (fills of the same as one), acts, and what was left out, in the order of the list. */
function rowsOf(laid: readonly Laid[], planned: readonly Laid[], clock: Clock): string[][] {
  const fills = new Map(fillsOf(laid).map((each) => [each.first.index, each]))
  return laid.flatMap((one) => {
    if (one.skipped) return [[one.step.name, say('record.left-out', {}, clock.w), '', '', '', '']]
    if (!isBath(one.step)) return [[one.step.name, '', moment(one, 'out', clock), '', '', '']]
    const each = fills.get(one.index)
    return each === undefined ? [] : [bathCells(each, planned, clock)]
  })
}

function bathCells({ bath, first, last, count, time }: Fills, planned: readonly Laid[], clock: Clock): string[] {
  const { w } = clock
  const wished = planned
    .slice(first.index, last.index + 1)
    .reduce((sum, { in: start, clockEnd }) => sum + clockEnd - start, 0)
  const confirmed = first.inBy === 'pressed' || last.outBy === 'pressed'
  return [
    fillsName(bath.name, count, w),
    moment(first, 'in', clock),
    moment(last, 'out', clock),
    w.time(time),
    w.time(wished),
    confirmed ? say('record.off', { by: time - wished }, w) : '',
  ]
}

function moment(one: Laid, side: 'in' | 'out', { tank, zone, w }: Clock): string {
  const instant = Math.round(tank.zero + one[side] * 1000)
  const toTheMinute = tank.toTheMinute[side].includes(one.index)
  const at = toTheMinute ? writeMinuteOfDay(instant, zone) : writeTimeOfDay(instant, zone)
  return one[`${side}By`] === 'pressed' ? at : say('record.reckoned', { at }, w)
}
