import type { LabelFacts } from '../../wire/index.js'
import { say, writeDay, writerFor } from '../../words/index.js'
import { type Fonts, measuringFonts } from '../setting/fonts.js'
import { broken, fittingSize, line } from '../setting/lines.js'
import { type Block, PAPERS, type Page, type Pages } from '../setting/page.js'
import { paintPages } from '../setting/paint-page.js'
import { qrDrawing } from '../setting/qr.js'
import { type LabelLayout, type LabelsInput, lotAddress } from './definition.js'

const MM = 72 / 25.4
/** Grids of label sheets in common use, and a small label of a roll, which is a page of its own. Lengths in points. */
export const LABEL_GRIDS = {
  A4: { columns: 2, rows: 7, width: 99.1 * MM, height: 38.1 * MM, left: 4.65 * MM, top: 15.15 * MM, gap: 2.5 * MM },
  Letter: { columns: 2, rows: 5, width: 288, height: 144, left: 11.25, top: 36, gap: 13.5 },
  roll: { columns: 1, rows: 1, width: 62 * MM, height: 29 * MM, left: 0, top: 0, gap: 0 },
} as const satisfies Record<LabelLayout, object>

/** Labels of bottles, one a lot: name, lot, mixed by, dates, dilution, hazards, and a code with the address. Tagged PDF. */
export const labelSheet = (input: LabelsInput): Promise<Uint8Array> =>
  paintPages(labelPages(input, measuringFonts()), input.printedAt)

/** The labels laid out, not yet painted. */
export function labelPages({ lots, base, layout, used, zone }: LabelsInput, fonts: Fonts): Pages {
  const grid = LABEL_GRIDS[layout]
  const places = grid.columns * grid.rows
  const first = layout === 'roll' ? 0 : used
  const count = Math.max(1, Math.ceil((first + lots.length) / places))
  const { width, height } = layout === 'roll' ? grid : PAPERS[layout]
  const pages = Array.from({ length: count }, (_, sheet): Page => {
    const blocks = lots.flatMap((lot, i) => {
      const place = first + i - sheet * places
      return place < 0 || place >= places ? [] : labelBlocks(fonts, lot, base, zone, placeOf(layout, place))
    })
    return { title: say('label.title', {}, 'metric'), width, height, margin: grid.left, blocks }
  })
  return pages as unknown as Pages
}

interface Place {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

function placeOf(layout: LabelLayout, place: number): Place {
  const { columns, left, top, width, height, gap } = LABEL_GRIDS[layout]
  const [column, row] = [place % columns, Math.floor(place / columns)]
  return { x: left + column * (width + gap), y: top + row * height, width, height }
}

/** `edge` is what printers and cutters may miss by; a small label has less of everything. */
const SHEET = { edge: 6, name: 14, least: 9, small: 9.5, code: 96 } as const
const ROLL = { edge: 4, name: 10, least: 7.6, small: 7.6, code: 58 } as const
const LEADING = 1.22

type Told = { readonly text: string; readonly face: 'text' | 'strong' }

/** What a label says under its name, in the order in which it is left out where there is no room for all of it. */
function toldOf(fonts: Fonts, lot: LabelFacts, zone: string, size: number, room: number): Told[] {
  const w = writerFor('metric')
  const day = (at: string) => writeDay(Date.parse(at), zone)
  const fact = (text: string): Told => ({ text: broken(fonts, text, { size }, room, 1)[0] ?? '', face: 'text' })
  const strong = { size, face: 'strong' } as const
  const hazards = lot.hazards.length === 0 ? [] : broken(fonts, say('label.hazards', lot, w), strong, room, 2)
  return [
    fact(say('label.lot', { code: lot.code, parts: lot.parts?.join(' + ') ?? null }, w)),
    ...hazards.map((text): Told => ({ text, face: 'strong' })),
    fact(say('label.mixed', { day: day(lot.mixed_at) }, w)),
    ...(lot.use_by === null ? [] : [fact(say('label.use-by', { day: day(lot.use_by) }, w))]),
    ...(lot.mixed_by === '' ? [] : [fact(say('label.by', { by: lot.mixed_by }, w))]),
  ]
}

function labelBlocks(
  fonts: Fonts,
  lot: LabelFacts,
  base: string,
  zone: string,
  { x, y, width, height }: Place,
): Block[] {
  const { edge, name: most, least, small, code: widest } = height < 100 ? ROLL : SHEET
  const side = Math.min(height - 2 * edge, widest)
  const left = x + edge + side + 4
  const room = x + width - edge - left
  const size = fittingSize(fonts, lot.name, 'strong', most, least, room)
  const name = broken(fonts, lot.name, { size, face: 'strong' }, room, 2)
  const under = y + edge + name.length * size * LEADING + 2
  const fits = Math.floor((y + height - edge - under) / (small * LEADING))
  const told = toldOf(fonts, lot, zone, small, room).slice(0, fits)
  const code = qrDrawing(lotAddress(base, lot.code), side, say('label.code', { code: lot.code }, 'metric'))
  const top = y + edge - 2
  return [
    { kind: 'figure', drawing: code, x: x + edge, y: y + edge },
    {
      kind: 'words',
      role: 'P',
      lines: name.map((part, i) => line(part, left, top + (i + 1) * size * LEADING, { size, face: 'strong' })),
    },
    {
      kind: 'words',
      role: 'P',
      lines: told.map(({ text, face }, i) =>
        line(text, left, under + (i + 1) * small * LEADING, { size: small, face }),
      ),
    },
  ]
}
