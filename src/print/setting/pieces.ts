import type { Fonts } from './fonts.js'
import { broken, LEADING, line, type Setting } from './lines.js'
import type { Block, Line, Words } from './page.js'
import { hairline, paragraph } from './paragraph.js'

/** Something of a known height that can be set anywhere down a page; a page break never parts it. */
export interface Piece {
  readonly height: number
  readonly at: (top: number) => readonly Block[]
  /** Stands on the page of the piece after it. */
  readonly withNext?: boolean
  /** Set over it again where it is the first on a page. */
  readonly above?: Piece
}

/** From `left`, `width` wide. */
export interface Column {
  readonly left: number
  readonly width: number
}

export const gap = (height: number): Piece => ({ height, at: () => [] })

/** A hairline, and the room under it. */
export const rule = ({ left, width }: Column, under: number): Piece => ({
  height: under,
  at: (top) => [hairline(left, left + width, top)],
})

/** One paragraph, broken to its column. */
export function text(fonts: Fonts, role: Words['role'], words: string, setting: Setting, column: Column): Piece {
  const lines = broken(fonts, words, setting, column.width)
  return {
    height: lines.length * LEADING * setting.size,
    at: (top) => [paragraph(role, lines, column.left, top, setting).block],
  }
}

/** One line that ends at the right edge of its column. */
export const textAtRight = (role: Words['role'], words: string, setting: Setting, { left, width }: Column): Piece => ({
  height: LEADING * setting.size,
  at: (top) => [
    {
      kind: 'words',
      role,
      lines: [line(words, left + width, top + setting.size, { ...setting, anchor: 'end' })],
    },
  ],
})

/** An empty box to pencil into. */
export const box = ({ left, width }: Column, height: number): Piece => ({
  height,
  at: (top) => [{ kind: 'boxes', boxes: [{ x: left, y: top, width, height }] }],
})

/** Dotted lines to write on. */
export const pencilLines = ({ left, width }: Column, count: number, pitch: number): Piece => ({
  height: count * pitch,
  at: (top) => [
    {
      kind: 'rules',
      rules: Array.from({ length: count }, (_, i) => ({
        from: left,
        to: left + width,
        y: top + (i + 1) * pitch,
        dotted: true,
      })),
    },
  ],
})

/** One under the other. */
export const stacked = (pieces: readonly Piece[]): Piece => ({
  height: pieces.reduce((sum, { height }) => sum + height, 0),
  at: (top) => {
    let y = top
    return pieces.flatMap((piece) => {
      const blocks = piece.at(y)
      y += piece.height
      return blocks
    })
  },
})

/** Side by side, their tops on one line; read from the first to the last. */
export const beside = (pieces: readonly Piece[]): Piece => ({
  height: Math.max(0, ...pieces.map(({ height }) => height)),
  at: (top) => pieces.flatMap((piece) => piece.at(top)),
})

/** A line that every page repeats. */
export const running = (lines: readonly Line[]): Block => ({ kind: 'running', lines })
