import type { Fonts } from '../setting/fonts.js'
import { broken } from '../setting/lines.js'
import type { Block } from '../setting/page.js'
import { hairline, paragraph } from '../setting/paragraph.js'
import type { CardTexts } from './texts.js'

/** Headings hang in the left column, texts in the right one; `body` is the size of the texts. */
export interface Columns {
  readonly left: number
  readonly text: number
  readonly right: number
  readonly body: number
}

export interface Sections {
  readonly height: number
  readonly at: (top: number) => { blocks: Block[]; bottom: number }
}

const HEADING = { size: 12.5, face: 'strong' } as const
/** Between hairline and text, between paragraphs, after the last one. */
const SPACE = { before: 10, between: 2, after: 8 } as const

/** What stands behind the number and what to take care of; the source's own words in at most so many lines. */
export function sectionsOf(fonts: Fonts, { behind, care }: CardTexts, columns: Columns, sourceLines: number): Sections {
  const set = (text: string, most?: number) =>
    broken(fonts, text, { size: columns.body }, columns.right - columns.text, most)
  const sections = [
    {
      heading: behind.heading,
      paragraphs: [set(behind.source, sourceLines), ...behind.others.map((text) => set(text))],
    },
    { heading: care.heading, paragraphs: care.sentences.map((text) => set(text)) },
  ].filter(({ paragraphs }) => paragraphs.length > 0)
  const at = (top: number) => {
    let y = top
    const blocks = sections.flatMap(({ heading, paragraphs }) => {
      const section = laid(heading, paragraphs, columns, y)
      y = section.bottom
      return section.blocks
    })
    return { blocks, bottom: y }
  }
  return { height: at(0).bottom, at }
}

function laid(
  heading: string,
  paragraphs: readonly string[][],
  { left, text, right, body: size }: Columns,
  top: number,
) {
  let y = top + SPACE.before
  const title = paragraph('H2', [heading], left, y, HEADING).block
  const body = paragraphs.map((lines) => {
    const { block, bottom } = paragraph('P', lines, text, y, { size })
    y = bottom + SPACE.between
    return block
  })
  return { blocks: [hairline(left, right, top), title, ...body], bottom: y + SPACE.after }
}

/** Distance of the pencil lines. */
export const NOTE_LINE = 27
/** Kept free under the last pencil line for the foot. */
const FOOT = 30

/** Pencil lines from `top` down to the foot, and the foot itself on the baseline `bottom`. */
export function layNotes(texts: CardTexts, { left, text, right }: Columns, top: number, bottom: number): Block[] {
  const lines = Math.max(0, Math.floor((bottom - FOOT - top) / NOTE_LINE))
  const rules = Array.from({ length: lines }, (_, i) => ({
    from: text,
    to: right,
    y: top + (i + 1) * NOTE_LINE,
    dotted: true,
  }))
  const heading = paragraph('H2', [texts.notes], left, top + SPACE.before, HEADING).block
  const foot = paragraph('P', [texts.foot], left, bottom - 12, { size: 12, ink: 'quiet' }).block
  return lines === 0 ? [foot] : [hairline(left, right, top), heading, { kind: 'rules', rules }, foot]
}
