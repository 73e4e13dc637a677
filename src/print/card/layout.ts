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
  /** Before the hairline under the head, from it to the graph, and from the graph to the next hairline. */
  space: { head: 10, above: 18, below: 10 },
  /** Pencil lines kept where the graph still gets its height. */
  notes: [
    { lines: 3, height: 240 },
    { lines: 2, height: 200 },
    { lines: 1, height: 170 },
    { lines: 0, height: 0 },
  ],
} as const

/**
 * How a card gives way when it is crowded, first to last: the source's own words are cut after so many lines,
 * then the head is set smaller and the texts hang further left, so that they take fewer lines.
 */
const GIVING_WAY = [
  { sourceLines: 12, tight: false },
  { sourceLines: 6, tight: false },
  { sourceLines: 3, tight: false },
  { sourceLines: 3, tight: true },
  { sourceLines: 1, tight: true },
] as const
const TIGHT = { hang: 122, body: 12 } as const
const OPEN = { hang: CARD.left + CARD.gap, body: 12.5 } as const
/** Left free between the last pencil line and the foot. */
const FOOT = 30

interface ToLay {
  readonly texts: CardTexts
  readonly paper: { readonly width: number; readonly height: number }
  readonly fonts: Fonts
  readonly graph: (size: { width: number; height: number }) => Drawing
}

/**
 * Lays the card out from the top: film, time, then table beside graph, what stands behind the number, cautions,
 * and pencil lines in whatever room is left.
 */
export function layOut(card: ToLay): Page {
  const { texts, paper, fonts, graph } = card
  const { margin, left, gap, space } = CARD
  const tries = GIVING_WAY.map((way) => () => drafted(card, way))
  const { columns, head, sections, room } = firstFitting(tries)
  const top = head.bottom + space.head + space.above
  const { lines } = CARD.notes.find((each) => room - each.lines * NOTE_LINE >= each.height) ?? { lines: 0 }
  const height = Math.max(CARD.graph.least, Math.min(CARD.graph.most, room - lines * NOTE_LINE))
  const figure = { x: margin + left + gap, y: top }
  const placed = sections.at(top + height + space.below)
  return {
    title: texts.title,
    ...paper,
    margin,
    blocks: [
      ...head.blocks,
      hairline(columns.left, columns.right, head.bottom + space.head),
      layTable(fonts, texts, { left: margin, top, bottom: top + height }),
      { kind: 'figure', drawing: graph({ width: columns.right - figure.x, height }), ...figure },
      ...placed.blocks,
      ...layNotes(texts, columns, placed.bottom, paper.height - margin),
    ],
  }
}

interface Draft {
  readonly columns: Columns
  readonly head: ReturnType<typeof layHead>
  readonly sections: Sections
  /** Height left for the graph and the pencil lines. */
  readonly room: number
}

function drafted({ fonts, texts, paper }: ToLay, { sourceLines, tight }: (typeof GIVING_WAY)[number]): Draft {
  const { margin, space } = CARD
  const { hang, body } = tight ? TIGHT : OPEN
  const columns = { left: margin, text: margin + hang, right: paper.width - margin, body }
  const head = layHead(fonts, texts, tight, { left: margin, right: columns.right, top: margin - 6 })
  const sections = sectionsOf(fonts, texts, columns, sourceLines)
  const spaces = space.head + space.above + space.below + FOOT
  return { columns, head, sections, room: paper.height - margin - head.bottom - spaces - sections.height }
}

/** The first draft that leaves the graph its least height, else the last one. */
function firstFitting(tries: readonly (() => Draft)[]): Draft {
  const [first, ...others] = tries
  if (first === undefined) throw new Error('A card needs a way to be laid out.')
  const draft = first()
  return draft.room >= CARD.graph.least || others.length === 0 ? draft : firstFitting(others)
}
