import type { Fonts } from './fonts.js'
import { broken, line } from './lines.js'
import { type Block, PAPERS, type Page, type Pages, type PaperName } from './page.js'
import { hairline } from './paragraph.js'
import { type Piece, running } from './pieces.js'

/** Edge of every page, points. */
export const MARGIN = 36
/** Kept for the head of every page after the first, and for the foot of each. */
const HEAD = 26
const FOOT = 24
const SIZE = 12

export interface Flow {
  readonly title: string
  readonly paper: PaperName
  /** Stands at the left of every foot. */
  readonly foot: string
  /** `page 2 of 4` */
  readonly pageOf: (page: number, pages: number) => string
  /** What is made of the height that is left on the last page; with less than `least` it begins another one. */
  readonly last: { readonly least: number; readonly of: (room: number) => Piece }
}

/** The column between the margins. */
export const columnOf = (paper: PaperName) => ({ left: MARGIN, width: PAPERS[paper].width - 2 * MARGIN })

/** Height for pieces on the first page. */
export const firstPageRoom = (paper: PaperName): number => PAPERS[paper].height - 2 * MARGIN - FOOT

/** Sets pieces one under the other on as many pages as they take; head and foot repeat, no piece is parted. */
export function flow(fonts: Fonts, pieces: readonly Piece[], { title, paper, foot, pageOf, last }: Flow): Pages {
  const parted = partedIntoPages(pieces, firstPageRoom(paper), last)
  const { width, height } = PAPERS[paper]
  const right = width - MARGIN
  const heading = { size: SIZE, face: 'strong' } as const
  const [short = ''] = broken(fonts, title, heading, right - MARGIN, 1)
  const pages = parted.map((blocks, i): Page => {
    const number = line(pageOf(i + 1, parted.length), right, height - MARGIN, { size: SIZE, anchor: 'end' })
    const end = running([line(foot, MARGIN, height - MARGIN, { size: SIZE, ink: 'quiet' }), number])
    const head = running([line(short, MARGIN, MARGIN + SIZE - 6, heading)])
    const start = i === 0 ? [] : [head, hairline(MARGIN, right, MARGIN + SIZE + 2)]
    return { title, width, height, margin: MARGIN, blocks: [...start, ...blocks, end] }
  })
  const [first, ...others] = pages
  if (first === undefined) throw new Error('A paper without a page was asked for.')
  return [first, ...others]
}

/** Blocks of each page. A piece higher than a page runs over the foot: callers keep theirs far below that. */
function partedIntoPages(pieces: readonly Piece[], room: number, last: Flow['last']): Block[][] {
  const pages: Block[][] = [[]]
  const bottom = MARGIN + room
  let top = MARGIN
  pieces.forEach((piece, i) => {
    if (top + heightWithNext(pieces, i) > bottom && top > MARGIN + HEAD) {
      pages.push([])
      top = MARGIN + HEAD
      if (piece.above !== undefined) {
        pages.at(-1)?.push(...piece.above.at(top))
        top += piece.above.height
      }
    }
    pages.at(-1)?.push(...piece.at(top))
    top += piece.height
  })
  if (bottom - top < last.least) {
    pages.push([])
    top = MARGIN + HEAD
  }
  pages.at(-1)?.push(...last.of(bottom - top).at(top))
  return pages
}

/** What has to find room at once: the piece, and those it must not be parted from. */
function heightWithNext(pieces: readonly Piece[], i: number): number {
  const piece = pieces[i]
  if (piece === undefined) return 0
  return piece.height + (piece.withNext === true ? heightWithNext(pieces, i + 1) : 0)
}
