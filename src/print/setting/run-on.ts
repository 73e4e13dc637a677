import type { Fonts } from './fonts.js'
import { LEADING, line, type Setting } from './lines.js'
import type { Line, Words } from './page.js'
import type { Column, Piece } from './pieces.js'

/** A stretch of a paragraph in a face and an ink of its own. */
export interface Stretch {
  readonly words: string
  readonly face?: Setting['face']
  readonly ink?: Setting['ink']
}

/** One paragraph of stretches that run on in each other's lines. A word longer than a line stands alone and sticks out. */
export function runOn(
  fonts: Fonts,
  role: Words['role'],
  stretches: readonly Stretch[],
  size: number,
  { left, width }: Column,
): Piece {
  const pieces = placed(fonts, stretches, size, width)
  const rows = Math.max(0, ...pieces.map(({ row }) => row + 1))
  return {
    height: rows * LEADING * size,
    at: (top) => [
      {
        kind: 'words',
        role,
        lines: pieces.map(
          ({ row, x, words, setting }): Line => line(words, left + x, top + size + row * LEADING * size, setting),
        ),
      },
    ],
  }
}

interface Placed {
  readonly row: number
  readonly x: number
  readonly words: string
  readonly setting: Setting
}

/** Words of one stretch that stand side by side are one line, so that they are read and measured as one. */
function placed(fonts: Fonts, stretches: readonly Stretch[], size: number, width: number): Placed[] {
  const set: Placed[] = []
  const space = fonts.width(' ', 'text', size)
  let [row, end] = [0, 0]
  for (const { words, face = 'text', ink = 'ink' } of stretches) {
    const setting = { size, face, ink }
    let own = -1
    for (const word of words.split(/\s+/).filter((one) => one !== '')) {
      const last = own === -1 ? undefined : set[own]
      const longer = last === undefined ? word : `${last.words} ${word}`
      const x = last?.x ?? (end === 0 ? 0 : end + space)
      const fits = x + fonts.width(longer, face, size) <= width
      if (fits && last !== undefined) set[own] = { ...last, words: longer }
      else {
        if (!fits && end > 0) row++
        own = set.push({ row, x: fits ? x : 0, words: word, setting }) - 1
      }
      const { x: from, words: standing } = set[own] as Placed
      end = from + fonts.width(standing, face, size)
    }
  }
  return set
}
