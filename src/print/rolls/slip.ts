import { say, type Writer, writeDay, writerFor } from '../../words/index.js'
import { columnOf, flow } from '../setting/flow.js'
import { type Fonts, measuringFonts } from '../setting/fonts.js'
import { broken, line } from '../setting/lines.js'
import type { Line, Pages } from '../setting/page.js'
import { paintPages } from '../setting/paint-page.js'
import { beside, type Column, gap, type Piece, pencilLines, rule, stacked, text } from '../setting/pieces.js'
import { qrDrawing } from '../setting/qr.js'
import type { PaperRoll, SlipInput } from './definition.js'

/** What somebody takes home in place of their film: what was handed over, and what was agreed. Tagged PDF. */
export const orderSlip = (input: SlipInput): Promise<Uint8Array> =>
  paintPages(slipPages(input, measuringFonts()), input.printedAt)

const BODY = { size: 12 } as const
const STRONG = { size: 12, face: 'strong' } as const
const HEADING = { size: 14, face: 'strong' } as const

/** The slip laid out, not yet painted. */
export function slipPages(input: SlipInput, fonts: Fonts): Pages {
  const { order, paper, bench, handedOver, link, printedAt } = input
  const w = writerFor('metric')
  const whole = columnOf(paper)
  const facts: readonly (readonly [string, string])[] = [
    [say('slip.taken-in', {}, w), writeDay(handedOver, bench.zone)],
    [say('slip.due', {}, w), order.due === null ? say('slip.none', {}, w) : dayOf(order.due)],
    [say('slip.deposit', {}, w), order.deposit || say('slip.none', {}, w)],
    [say('slip.loss', {}, w), order.agreed_on_loss || say('slip.none', {}, w)],
  ]
  return flow(
    fonts,
    [
      text(fonts, 'P', bench.name, BODY, whole),
      text(fonts, 'H1', say('slip.of', { person: order.person }, w), { size: 24, face: 'strong' }, whole),
      gap(4),
      text(fonts, 'P', say('slip.count', { count: order.counted_in }, w), HEADING, whole),
      gap(8),
      ...rollTables(fonts, order.rolls, whole, w),
      ...facts.map(([label, words]) => factPiece(fonts, label, words, whole)),
      ...boxesNote(input, fonts, whole, w),
      gap(6),
      ...(link === null
        ? []
        : [linkPiece(fonts, { address: link.address, until: writeDay(link.expiresAt, bench.zone) }, whole, w)]),
    ],
    {
      title: say('slip.title', { person: order.person }, w),
      paper,
      foot: say('sheet.foot', { today: writeDay(printedAt, bench.zone) }, w),
      last: signatures(fonts, whole, w),
      pageOf: (page, pages) => say('sheet.page', { page, pages }, w),
    },
  )
}

/** Where a name has letters that paper cannot set, it says so: a box must not be taken for what was written. */
function boxesNote({ order, bench }: SlipInput, fonts: Fonts, column: Column, w: Writer): Piece[] {
  const said = [bench.name, order.person, order.deposit, order.agreed_on_loss]
  const names = [...said, ...order.rolls.flatMap(({ film, number }) => [film, number])]
  if (!names.some((name) => fonts.lacks(name, 'text'))) return []
  return [gap(6), text(fonts, 'P', say('paper.boxes', {}, w), BODY, column)]
}

/** A day that is kept as text, as days are written. */
const dayOf = (day: string): string => writeDay(Date.parse(`${day}T12:00:00Z`), 'UTC')

/** Left edges, from the left of the column; the width of each reaches to the next. */
const AT = { number: 0, twin: 108, film: 146, format: 310, wanted: 420, gap: 8 } as const
const ROW = 18
const ROWS_TOGETHER = 14

/** The rolls in tables of a few rows, each with its head, so that a long order goes on over pages. */
function rollTables(fonts: Fonts, rolls: readonly PaperRoll[], column: Column, w: Writer): Piece[] {
  const chunks = Array.from({ length: Math.ceil(rolls.length / ROWS_TOGETHER) }, (_, i) =>
    rolls.slice(i * ROWS_TOGETHER, (i + 1) * ROWS_TOGETHER),
  )
  return chunks.map((chunk) => rollTable(fonts, chunk, column, w))
}

function rollTable(fonts: Fonts, rolls: readonly PaperRoll[], { left, width }: Column, w: Writer): Piece {
  const edges = [AT.number, AT.twin, AT.film, AT.format, AT.wanted, width + AT.gap]
  const row = (cells: readonly string[], y: number, setting: { size: number; ink?: 'quiet' }): Line[] =>
    cells.map((cell, i) => {
      const room = (edges[i + 1] as number) - (edges[i] as number) - AT.gap
      return line(broken(fonts, cell, setting, room, 1)[0] ?? '', left + (edges[i] as number), y, setting)
    })
  const columns = ['number', 'twin', 'film', 'format', 'wanted'] as const
  const head = columns.map((name) => say(`slip.column.${name}`, {}, w))
  return {
    height: (rolls.length + 1) * ROW + 8,
    at: (top) => [
      {
        kind: 'table',
        head: row(head, top + BODY.size, { ...BODY, ink: 'quiet' }),
        rows: rolls.map((roll, i) => row(cellsOf(roll, w), top + BODY.size + (i + 1) * ROW, BODY)),
      },
    ],
  }
}

const cellsOf = (roll: PaperRoll, w: Writer): string[] => [
  roll.number,
  roll.twin === null ? '' : String(roll.twin),
  roll.film,
  say('slip.cut', roll, w),
  say('slip.wanted', { treatment: roll.treatment }, w),
]

const HANG = 132

function factPiece(fonts: Fonts, label: string, words: string, { left, width }: Column): Piece {
  const rest = { left: left + HANG, width: width - HANG }
  return stacked([
    rule({ left, width }, 5),
    beside([text(fonts, 'H2', label, STRONG, { left, width: HANG - 10 }), text(fonts, 'P', words, BODY, rest)]),
    gap(4),
  ])
}

const CODE = 132

/** The private link: a code to point a telephone at, and the same in print. */
function linkPiece(
  fonts: Fonts,
  link: { readonly address: string; readonly until: string },
  { left, width }: Column,
  w: Writer,
): Piece {
  const drawing = qrDrawing(link.address, CODE, say('slip.code', {}, w))
  const rest = { left: left + CODE + 14, width: width - CODE - 14 }
  return stacked([
    rule({ left, width }, 8),
    beside([
      { height: CODE, at: (top) => [{ kind: 'figure', drawing, x: left, y: top }] },
      stacked([
        gap(10),
        text(fonts, 'H2', say('slip.link', {}, w), STRONG, rest),
        text(fonts, 'P', say('slip.link-shows', { until: link.until }, w), BODY, rest),
        gap(4),
        text(fonts, 'P', link.address, BODY, rest),
      ]),
    ]),
    gap(6),
  ])
}

/** Where both sign. */
function signatures(fonts: Fonts, { left, width }: Column, w: Writer) {
  const half = (width - 24) / 2
  const place = (label: string, at: number): Piece => {
    const column = { left: at, width: half }
    return stacked([pencilLines(column, 1, 30), gap(2), text(fonts, 'P', label, { ...BODY, ink: 'quiet' }, column)])
  }
  const piece = stacked([
    gap(16),
    beside([place(say('slip.sign.person', {}, w), left), place(say('slip.sign.bench', {}, w), left + half + 24)]),
  ])
  return { least: piece.height, of: () => piece }
}
