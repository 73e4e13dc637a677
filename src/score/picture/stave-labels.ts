import { seriesOf } from '../recipe/kinds.js'
import { developing } from './band.js'
import { type Box, textWidth } from './boxes.js'
import type { Point, TextMark } from './drawing.js'
import { type Candidate, Placing } from './placing.js'
import type { StaveFrame, StaveInput } from './score-definition.js'

/** The texts of a stave, none over another; a bath too short for its name goes without. */
export function staveLabels(frame: StaveFrame, stave: StaveInput, width: number): TextMark[] {
  const room: Box = { left: 0, top: frame.top, right: width, bottom: frame.base }
  const placing = new Placing(room)
  const bath = developing(stave.plan)
  if (bath !== null) {
    placing.symbol(bandBox(frame, bath.in, bath.clockEnd))
    bandLines(frame, stave, bath.in, bath.clockEnd).forEach((text) => {
      placing.fixed(text)
    })
  }
  for (const [i, span] of stave.plan.baths.entries()) {
    if (span.index === bath?.index && stave.band.length > 0) continue
    // Five fills of water are one wash to the eye.
    const name = seriesOf(span.name)
    const before = stave.plan.baths[i - 1]
    if (before !== undefined && seriesOf(before.name) === name) continue
    placing.label(bathPlaces(frame, name, span.clockStart, span.drainEnd))
  }
  return placing.placed.filter((mark): mark is TextMark => mark.kind === 'text')
}

const text = (frame: StaveFrame, at: Point, words: string, strong = false): TextMark => ({
  kind: 'text',
  at,
  text: words,
  tone: 'ink',
  size: frame.size,
  anchor: 'start',
  strong,
  halo: 'ground',
})

const bandBox = (frame: StaveFrame, from: number, to: number): Box => ({
  left: Math.max(frame.left, frame.x.at(from)),
  right: Math.min(frame.right, frame.x.at(to)),
  top: frame.base - frame.unit,
  bottom: frame.base,
})

/** The lines inside the developer's band, from the top; those that it is too narrow or low for are left out. */
function bandLines(frame: StaveFrame, { band }: StaveInput, from: number, to: number): TextMark[] {
  const box = bandBox(frame, from, to)
  const rows = Math.max(0, Math.floor((box.bottom - box.top - 0.4 * frame.size) / (1.3 * frame.size)))
  return band.slice(0, rows).flatMap((words, i) => {
    if (textWidth(words, frame.size) + 12 > box.right - box.left) return []
    return [text(frame, [box.left + 6, box.top + (1.2 + 1.3 * i) * frame.size], words, i === 0)]
  })
}

/** In the bath where it fits, else over it, from its start to a little after, in one of two rows. */
function bathPlaces(frame: StaveFrame, name: string, from: number, to: number): Candidate[] {
  const [left, right] = [frame.x.at(from), frame.x.at(to)]
  if (right < frame.left || left > frame.right) return []
  const fits = textWidth(name, frame.size) + 10 <= Math.min(right, frame.right) - Math.max(left, frame.left)
  const start = Math.max(left, frame.left)
  const row = (up: number) => frame.base - frame.low - (0.45 + up) * frame.size
  const over = [0, 1.3].flatMap((up) =>
    [0, 0.5, -0.5].map((along) => start + along * frame.size).map((x) => [x, row(up)] as const),
  )
  return [
    ...(fits ? [{ texts: [text(frame, [start + 5, frame.base - frame.low / 2 + 0.35 * frame.size], name)] }] : []),
    ...over.map((at) => ({ texts: [text(frame, at, name)] })),
  ]
}
