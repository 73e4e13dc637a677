import type { Fonts } from '../setting/fonts.js'
import { line } from '../setting/lines.js'
import type { Table } from '../setting/page.js'
import type { CardTexts } from './texts.js'

interface Room {
  readonly left: number
  readonly top: number
  readonly bottom: number
}

/** Sizes and the distance between rows, in points. */
const TABLE = { size: 15, note: 12, head: 12, least: 19, most: 25 } as const

/** Temperature, time and what the time was taken from; figures stand under one another. */
export function layTable(fonts: Fonts, texts: CardTexts, { left, top, bottom }: Room): Table {
  const first = top + TABLE.head
  const rows = texts.rows(Math.floor((bottom - first) / TABLE.least))
  const pitch = Math.min(TABLE.most, (bottom - first) / Math.max(1, rows.length))
  const widest = (column: 0 | 1) =>
    Math.max(
      fonts.width(texts.columns[column], 'text', TABLE.head),
      ...rows.map(({ cells }) => fonts.width(cells[column], 'strong', TABLE.size)),
    )
  const temperature = left + widest(0)
  const time = temperature + 14 + widest(1)
  const origin = time + 14
  const quiet = { size: TABLE.head, ink: 'quiet' } as const
  return {
    kind: 'table',
    head: [
      line(texts.columns[0], temperature, first, { ...quiet, anchor: 'end' }),
      line(texts.columns[1], time, first, { ...quiet, anchor: 'end' }),
      line(texts.columns[2], origin, first, quiet),
    ],
    rows: rows.map(({ cells, asked }, i) => {
      const y = first + (i + 1) * pitch
      const face = asked ? 'strong' : 'text'
      return [
        line(cells[0], temperature, y, { size: TABLE.size, face, anchor: 'end' }),
        line(cells[1], time, y, { size: TABLE.size, face, anchor: 'end' }),
        line(cells[2], origin, y, { size: TABLE.note, ink: 'quiet' }),
      ]
    }),
  }
}
