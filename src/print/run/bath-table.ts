import { writeVolume } from '../../kernel/index.js'
import { isBath, type Laid, type Tank, type TankPlan } from '../../score/index.js'
import { say, type Writer } from '../../words/index.js'
import type { Fonts } from '../setting/fonts.js'
import { broken, line } from '../setting/lines.js'
import type { Line } from '../setting/page.js'
import type { Column, Piece } from '../setting/pieces.js'
import { type Fills, fillsName, fillsOf } from './fills.js'

const SIZE = 12
const HEAD = 12
const ROW = 18.5
const BOX = { width: 58, height: 15 } as const
/** Width of the names, right edge of the times, left edges of what follows, from the left of the column. */
const AT = { name: 184, time: 232, planned: 250, measured: 372, goes: 442 } as const

/** The baths of a tank: how long, how warm, a box for what each reads, and where it goes. */
export function bathTable(fonts: Fonts, plan: TankPlan, { left }: Column, w: Writer): Piece {
  const rows = fillsOf(plan.laid)
  const quiet = { size: HEAD, ink: 'quiet' } as const
  const head = (top: number): Line[] => {
    const y = top + HEAD
    return [
      line(say('sheet.column.bath', {}, w), left, y, quiet),
      line(say('sheet.column.time', {}, w), left + AT.time, y, { ...quiet, anchor: 'end' }),
      line(say('sheet.column.planned', {}, w), left + AT.planned, y, quiet),
      line(say('sheet.column.measured', {}, w), left + AT.measured, y, quiet),
      line(say('sheet.column.goes', {}, w), left + AT.goes, y, quiet),
    ]
  }
  const cellsOf = ({ first, bath, time, count }: Fills, y: number): Line[] => [
    line(broken(fonts, fillsName(bath.name, count, w), { size: SIZE }, AT.name, 1)[0] ?? '', left, y, { size: SIZE }),
    line(w.time(time), left + AT.time, y, { size: SIZE, face: 'strong', anchor: 'end' }),
    line(temperatureCell(plan, first, w), left + AT.planned, y, { size: SIZE }),
    line(say(`sheet.goes.${bath.goesTo}`, {}, w), left + AT.goes, y, { size: SIZE }),
  ]
  const baseline = (top: number, i: number) => top + HEAD + (i + 1) * ROW - 2
  return {
    height: HEAD + rows.length * ROW + 5,
    at: (top) => [
      { kind: 'table', head: head(top), rows: rows.map((row, i) => cellsOf(row, baseline(top, i))) },
      {
        kind: 'boxes',
        boxes: rows.map((_, i) => ({ x: left + AT.measured, y: baseline(top, i) - 11.5, ...BOX })),
      },
    ],
  }
}

/** What the thermometer should read: as the plan has it, else the bath's own window; null where neither is known. */
export function plannedTemperature(tank: Tank, { development, step }: Laid, w: Writer): string | null {
  if (development?.from === 'basis') return w.temperature(development.course.start)
  const measured = development?.temperature ?? tank.temperatures[step.id]
  if (measured !== undefined) return w.temperature(measured)
  return isBath(step) && step.window !== null ? say('sheet.window', step.window, w) : null
}

/** In the table a bath without a temperature of its own goes by the developer's. */
function temperatureCell({ tank }: TankPlan, one: Laid, w: Writer): string {
  return (
    plannedTemperature(tank, one, w) ?? say(tank.development === null ? 'sheet.alike' : 'sheet.as-developer', {}, w)
  )
}

export const volumeOf = ({ tank }: TankPlan, w: Writer): string | null =>
  tank.volume === null ? null : writeVolume(tank.volume, w.units)
