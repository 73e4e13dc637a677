import type { Fonts } from '../setting/fonts.js'
import { beside, box, type Column, gap, type Piece, stacked, text } from '../setting/pieces.js'

/** A small column of two: what it is about, and under it a text, or an empty box where there is none. */
export interface Cell {
  readonly head: string
  readonly under: string | null
}

const HEAD = { size: 14, face: 'strong' } as const
const UNDER = { size: 14 } as const
const CELL = { least: 46, box: 19, gap: 10, row: 7 } as const

/** Cells side by side, on as many rows as they take. */
export function cells(fonts: Fonts, all: readonly Cell[], { left, width }: Column): Piece {
  const widest = Math.max(
    CELL.least,
    ...all.map(({ head, under }) =>
      Math.max(fonts.width(head, 'strong', HEAD.size), fonts.width(under ?? '', 'text', UNDER.size)),
    ),
  )
  const pitch = Math.ceil(widest) + CELL.gap
  const perRow = Math.max(1, Math.floor((width + CELL.gap) / pitch))
  const rows = Array.from({ length: Math.ceil(all.length / perRow) }, (_, i) => all.slice(i * perRow, (i + 1) * perRow))
  const cell = ({ head, under }: Cell, i: number): Piece => {
    const column = { left: left + i * pitch, width: pitch - CELL.gap }
    // Measured for the widest: a line must not be broken by a rounding.
    const open = { ...column, width: column.width + 1 }
    return stacked([
      text(fonts, 'P', head, HEAD, open),
      under === null ? box(column, CELL.box) : text(fonts, 'P', under, UNDER, open),
    ])
  }
  return stacked(rows.flatMap((row, i) => [...(i === 0 ? [] : [gap(CELL.row)]), beside(row.map(cell))]))
}
