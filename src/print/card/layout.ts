import type { Drawing } from '../../score/index.js'
import type { Fonts } from '../setting/fonts.js'
import type { Page } from '../setting/page.js'
import { hairline } from '../setting/paragraph.js'
import { layHead } from './head.js'
import { type Columns, layNotes, NOTE_LINE, type Sections, sectionsOf } from './sections.js'
import { layTable } from './table.js'
import type { CardTexts } from './texts.js'

/** Measures of the card, in points. Two columns hang on one line from the table down to the notes. */
const CARD = {
  margin: 46,
  left: 178,
  gap: 22,
  /** Height of the graph; it takes what the rest leaves. */
  graph: { least: 170, most: 330 },
  /** Between the hairline and the graph, and between the graph and the next hairline. */
  space: { above: 18, below: 10 },
  /** Pencil lines kept where the graph still gets its height; the last is kept before any of the source's words. */
  notes: [
    { lines: 3, height: 240 },
    { lines: 2, height: 200 },
    { lines: 1, height: 170 },
  ],
  /** The source's own words may take so many lines before they are cut; fewer when the page is crowded. */
  sourceLines: [12, 6, 3, 1],
} as const

interface ToLay {
  readonly texts: CardTexts
  readonly paper: { readonly width: number; readonly height: number }
  readonly fonts: Fonts
  readonly graph: (size: { width: number; height: number }) => Drawing
}

/**
 * Lays the card out from the top: film, time, then table beside graph, what stands behind the number, cautions,
 * and pencil lines in whatever room is left. When it is crowded the source's words give way first, then the graph.
 */
export function layOut({ texts, paper, fonts, graph }: ToLay): Page {
  const { margin, left, gap, space } = CARD
  const columns = { left: margin, text: margin + left + gap, right: paper.width - margin }
  const head = layHead(fonts, texts, { left: margin, right: columns.right, top: margin - 6 })
  const top = head.bottom + 10 + space.above
  const foot = paper.height - margin
  const { sections, height } = shared(fonts, texts, columns, foot - top - space.below)
  const table = layTable(fonts, texts, { left: margin, top, bottom: top + height })
  const placed = sections.at(top + height + space.below)
  return {
    title: texts.title,
    ...paper,
    margin,
    blocks: [
      ...head.blocks,
      hairline(columns.left, columns.right, head.bottom + 10),
      table,
      { kind: 'figure', drawing: graph({ width: columns.right - columns.text, height }), x: columns.text, y: top },
      ...placed.blocks,
      ...layNotes(texts, columns, placed.bottom, foot),
    ],
  }
}

/** How the room under the head is shared between the graph and the sections. */
function shared(
  fonts: Fonts,
  texts: CardTexts,
  columns: Columns,
  room: number,
): { sections: Sections; height: number } {
  const [whole, ...shorter] = CARD.sourceLines.map((most) => sectionsOf(fonts, texts, columns, most))
  const heightBeside = (sections: Sections, notes: number) => room - sections.height - notes * NOTE_LINE - 30
  const chosen = [whole, ...shorter].find((each) => each !== undefined && heightBeside(each, 1) >= CARD.graph.least)
  const sections = chosen ?? shorter.at(-1) ?? (whole as Sections)
  const kept = CARD.notes.find(({ lines, height }) => heightBeside(sections, lines) >= height)
  const height = heightBeside(sections, kept?.lines ?? 0)
  return { sections, height: Math.max(CARD.graph.least, Math.min(CARD.graph.most, height)) }
}
