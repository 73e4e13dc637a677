import { say, writerFor } from '../../words/index.js'
import { type Fonts, measuringFonts } from '../setting/fonts.js'
import { broken, fittingSize, line } from '../setting/lines.js'
import { type Block, type Line, PAPERS, type Page, type Pages, type PaperName } from '../setting/page.js'
import { paintPages } from '../setting/paint-page.js'
import { qrDrawing } from '../setting/qr.js'
import { type PaperRoll, rollAddress, type StickersInput } from './definition.js'

const MM = 72 / 25.4
/**
 * Grids of sticker sheets in common use, forty to a sheet; an even number of columns, so that a pair is never parted.
 * Lengths in points.
 */
export const GRIDS = {
  A4: { columns: 4, rows: 10, width: 48.5 * MM, height: 25.4 * MM, left: 8 * MM, top: 21.5 * MM },
  Letter: { columns: 4, rows: 10, width: 144, height: 72, left: 18, top: 36 },
} as const satisfies Record<PaperName, object>
/** Places of one sheet. */
export const PLACES = 40

/** Paired stickers: for each roll one for the roll and, at its right, one for what it goes into. Tagged PDF. */
export const stickerSheet = (input: StickersInput): Promise<Uint8Array> =>
  paintPages(stickerPages(input, measuringFonts()), input.printedAt)

interface Sticker {
  readonly roll: PaperRoll
  readonly on: 'roll' | 'cover'
}

/** The stickers laid out, not yet painted. */
export function stickerPages({ rolls, base, paper, used }: StickersInput, fonts: Fonts): Pages {
  const stickers = rolls.flatMap((roll): Sticker[] => [
    { roll, on: 'roll' },
    { roll, on: 'cover' },
  ])
  // A pair stands side by side: it begins at an even place.
  const first = Math.ceil(used / 2) * 2
  const boxes = rolls.some(({ film, number }) => fonts.lacks(film, 'text') || fonts.lacks(number, 'strong'))
  const count = Math.max(1, Math.ceil((first + stickers.length) / PLACES))
  const pages = Array.from({ length: count }, (_, sheet): Page => {
    const blocks = stickers.flatMap((sticker, i) => {
      const place = first + i - sheet * PLACES
      return place < 0 || place >= PLACES ? [] : stickerBlocks(fonts, sticker, base, placeOf(paper, place))
    })
    const { width, height } = PAPERS[paper]
    const note = boxes && sheet === 0 ? [boxesNote(fonts, paper)] : []
    return {
      title: say('sticker.title', {}, 'metric'),
      width,
      height,
      margin: GRIDS[paper].left,
      blocks: [...note, ...blocks],
    }
  })
  return pages as unknown as Pages
}

/** In the margin above the first row: that a box on a sticker stands for a letter. */
function boxesNote(fonts: Fonts, paper: PaperName): Block {
  const { left, top, width, columns } = GRIDS[paper]
  const said = broken(fonts, say('paper.boxes', {}, 'metric'), { size: SMALL }, columns * width - 2 * EDGE, 2)
  const lines = said.map((part, i) => line(part, left + EDGE, top - (said.length - i) * SMALL * 1.3, { size: SMALL }))
  return { kind: 'words', role: 'P', lines }
}

function placeOf(paper: PaperName, place: number): { x: number; y: number; width: number; height: number } {
  const { columns, left, top, width, height } = GRIDS[paper]
  return { x: left + (place % columns) * width, y: top + Math.floor(place / columns) * height, width, height }
}

/** The code is as high as the sticker but for an edge that printers and cutters may miss by. */
const EDGE = 5
const NUMBER = { size: 13, least: 7 } as const
const SMALL = 8.5

function stickerBlocks(
  fonts: Fonts,
  { roll, on }: Sticker,
  base: string,
  { x, y, width, height }: ReturnType<typeof placeOf>,
): Block[] {
  const side = height - 2 * EDGE
  const left = x + EDGE + side
  const room = width - 2 * EDGE - side
  const w = writerFor('metric')
  const code = qrDrawing(rollAddress(base, roll.number), side, say('sticker.code', { number: roll.number }, w))
  const size = fittingSize(fonts, roll.number, 'strong', NUMBER.size, NUMBER.least, room)
  const number = broken(fonts, roll.number, { size, face: 'strong' }, room, 2)
  const small = (text: string, at: number): Line =>
    line(broken(fonts, text, { size: SMALL }, room, 1)[0] ?? '', left, at, { size: SMALL })
  const top = y + EDGE + 6
  const under = top + number.length * size + 0.25 * size + SMALL
  return [
    { kind: 'figure', drawing: code, x: x + EDGE, y: y + EDGE },
    {
      kind: 'words',
      role: 'P',
      lines: number.map((part, i) => line(part, left, top + (i + 1) * size, { size, face: 'strong' })),
    },
    {
      kind: 'words',
      role: 'P',
      lines: [
        ...(roll.twin === null ? [] : [say('sticker.twin', { twin: roll.twin }, w)]),
        roll.film,
        say(`sticker.on.${on}`, {}, w),
      ].map((text, i) => small(text, under + i * SMALL * 1.3)),
    },
  ]
}
