import type { Fonts } from '../setting/fonts.js'
import { broken, fittingSize } from '../setting/lines.js'
import type { Face, Line, Words } from '../setting/page.js'
import { paragraph } from '../setting/paragraph.js'
import type { CardTexts } from './texts.js'

interface Part {
  readonly role: Words['role']
  readonly text: string
  readonly face: Face
  readonly ink: Line['ink']
  /** The size it has where it fits its line, and the least it shrinks to before it is broken. */
  readonly size: number
  readonly least: number
  /** Above it. */
  readonly space: number
  readonly most: number
}

const parts = ({ film, developer, lead, rest, band }: CardTexts, tight: boolean): Part[] => [
  { role: 'H1', text: film, face: 'strong', ink: 'ink', size: 22, least: 16, space: 0, most: 3 },
  { role: 'P', text: developer, face: 'text', ink: 'ink', size: 15, least: 13.5, space: 2, most: tight ? 2 : 3 },
  {
    role: 'P',
    text: lead,
    face: 'strong',
    ink: 'ink',
    size: tight ? 44 : 62,
    least: 30,
    space: tight ? 0 : 8,
    most: 1,
  },
  {
    role: 'P',
    text: rest,
    face: 'text',
    ink: 'ink',
    size: tight ? 18 : 24,
    least: 18,
    space: tight ? -4 : -6,
    most: 2,
  },
  { role: 'P', text: band, face: 'text', ink: 'quiet', size: 12.5, least: 12, space: 4, most: 2 },
]

/** Film, bath and the time, large enough to be read from across a darkroom. */
export function layHead(
  fonts: Fonts,
  texts: CardTexts,
  tight: boolean,
  { left, right, top }: { left: number; right: number; top: number },
) {
  let y = top
  const blocks = parts(texts, tight).map(({ role, text, face, ink, size, least, space, most }) => {
    const setting = { face, ink, size: fittingSize(fonts, text, face, size, least, right - left) }
    const { block, bottom } = paragraph(
      role,
      broken(fonts, text, setting, right - left, most),
      left,
      y + space,
      setting,
    )
    y = bottom
    return block
  })
  return { blocks, bottom: y }
}
