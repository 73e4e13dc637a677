import { LEADING, line, type Setting } from './lines.js'
import type { Block, Words } from './page.js'

/** Lines of one paragraph from the top edge `y`; gives the block and its bottom edge. */
export function paragraph(
  role: Words['role'],
  lines: readonly string[],
  x: number,
  y: number,
  setting: Setting,
): { block: Words; bottom: number } {
  const pitch = LEADING * setting.size
  return {
    block: { kind: 'words', role, lines: lines.map((text, i) => line(text, x, y + setting.size + i * pitch, setting)) },
    bottom: y + lines.length * pitch,
  }
}

/** One hairline from edge to edge. */
export const hairline = (from: number, to: number, y: number): Block => ({
  kind: 'rules',
  rules: [{ from, to, y, dotted: false }],
})
