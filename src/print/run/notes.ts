import { say, type Writer } from '../../words/index.js'
import type { Flow } from '../setting/flow.js'
import type { Fonts } from '../setting/fonts.js'
import { type Column, gap, pencilLines, rule, stacked, text } from '../setting/pieces.js'

const PITCH = 27
/** Kept free over the foot. */
const OVER_FOOT = 8

/** Lines to write on, from where the paper ends down to the foot; none where not one has room. */
export function notes(fonts: Fonts, column: Column, w: Writer): Flow['last'] {
  const heading = stacked([
    gap(8),
    rule(column, 8),
    text(fonts, 'H2', say('sheet.notes', {}, w), { size: 15, face: 'strong' }, column),
  ])
  const of = (room: number) => {
    const lines = Math.floor((room - heading.height - OVER_FOOT) / PITCH)
    return lines < 1 ? stacked([]) : stacked([heading, pencilLines(column, lines, PITCH)])
  }
  return { least: 0, of }
}
