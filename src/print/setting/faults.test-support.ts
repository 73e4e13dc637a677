import type { Fonts } from './fonts.js'
import type { Block, Line, Page } from './page.js'

/** Every line of text in a block, as it is read. */
export function linesOf(block: Block): readonly Line[] {
  if (block.kind === 'words' || block.kind === 'running') return block.lines
  return block.kind === 'table' ? [...block.head, ...block.rows.flat()] : []
}

/** Sizes of all text on a page, that of its figures among them. */
export function textSizes({ blocks }: Page): number[] {
  const figures = blocks.flatMap((block) => (block.kind === 'figure' ? block.drawing.marks : []))
  return [...blocks.flatMap(linesOf), ...figures].flatMap((mark) => ('text' in mark ? [mark.size] : []))
}

interface Extent {
  readonly what: string
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

const extent = (what: string, left: number, top: number, width: number, height: number): Extent => ({
  what,
  left,
  right: left + width,
  top,
  bottom: top + height,
})

/** The room that lines, figures and boxes take; a line from capitals and figures down to the tails of letters. */
function extents(fonts: Fonts, { blocks }: Page): Extent[] {
  return blocks.flatMap((block): Extent[] => {
    if (block.kind === 'figure')
      return [extent('the figure', block.x, block.y, block.drawing.width, block.drawing.height)]
    if (block.kind === 'boxes')
      return block.boxes.map(({ x, y, width, height }) => extent('a box', x, y, width, height))
    return linesOf(block).map(({ text, x, y, size, face, anchor }) => {
      const width = fonts.width(text, face, size)
      return extent(text, anchor === 'start' ? x : x - width, y - 0.72 * size, width, 0.96 * size)
    })
  })
}

/** What is wrong with a page: over the margins, or on one another. Cost: the square of what stands on it. */
export function faults(fonts: Fonts, page: Page): string[] {
  const all = extents(fonts, page)
  const { margin, width, height } = page
  const inside = (each: Extent) =>
    each.left >= margin - 0.1 &&
    each.right <= width - margin + 0.1 &&
    each.top >= margin - 6 &&
    each.bottom <= height - margin + 4
  const apart = (a: Extent, b: Extent) =>
    a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top
  return all.flatMap((each, i) => [
    ...(inside(each) ? [] : [`“${each.what}” over the margin`]),
    ...all.slice(i + 1).flatMap((other) => (apart(each, other) ? [] : [`“${each.what}” on “${other.what}”`])),
  ])
}
