import { boxOf, textWidth } from './boxes.js'
import {
  askedTemperature,
  askedTime,
  beyondLabel,
  doubtLabel,
  type Labelling,
  referenceLabel,
  type Style,
  type Writing,
} from './candidates.js'
import { sheetRange } from './course.js'
import type { Mark, Point, TextMark, Tone } from './drawing.js'
import { bandEdges, DIAMOND, place, pointRadius } from './places.js'
import { Placing } from './placing.js'

/** Writes a graph: its axes, what was asked, and as many of the other labels as there is room for. */
export function labelGraph(to: Labelling): Mark[] {
  const { frame } = to
  const text = (at: Point, words: string, { halo = false, ...style }: Style = {}): TextMark => {
    const mark = { kind: 'text', at, text: words, tone: 'quiet', size: frame.size, anchor: 'start' } as const
    const written: TextMark = { ...mark, strong: false, halo: null, ...style }
    return halo ? { ...written, halo: toneUnder(written, to) } : written
  }
  const placing = new Placing(frame)
  for (const edge of Object.values(bandEdges(frame))) placing.stroke(edge, { faint: true })
  for (const mark of axes(to, text)) placing.fixed(mark)
  obstruct(placing, to)
  if (to.figures !== null && to.asked !== null) {
    placing.label(askedTime(to, to.figures.time, text), { needed: true })
    placing.label(askedTemperature(to, to.figures.temperature, text), { needed: true })
  }
  placing.label(referenceLabel(to, text))
  if (frame.course.warm.length + frame.course.cold.length > 0) placing.label(beyondLabel(to, text))
  if (frame.course.inside.length > 0 || to.basis.kind === 'ordinary') placing.label(doubtLabel(to, text))
  return placing.placed
}

/** The sheet's own band is lighter than the ground around it; words across its edge go by where most of them lie. */
function toneUnder(words: TextMark, { frame, basis }: Labelling): Tone {
  const { left, right } = boxOf(words)
  const sheet = sheetRange(basis)
  const middle = (left + right) / 2
  return middle >= frame.temperature.at(sheet.from) && middle <= frame.temperature.at(sheet.to) ? 'sheet' : 'ground'
}

function axes({ frame, basis, labels, width }: Labelling, text: Writing): TextMark[] {
  const { size, left, right, bottom, top } = frame
  const sheet = sheetRange(basis)
  const middle = frame.temperature.at((sheet.from + sheet.to) / 2)
  const half = textWidth(labels.sheet, size) / 2
  return [
    ...frame.timeTicks.map(({ value, text: words }) =>
      text([left - 0.6 * size, frame.time.at(value) + 0.34 * size], words, { anchor: 'end' }),
    ),
    ...frame.temperatureTicks.map(({ value, text: words }) =>
      text([frame.temperature.at(value), bottom + 1.5 * size], words, { anchor: 'middle' }),
    ),
    ...frame.caption.map((words, i) => text([right, bottom + (2.9 + 1.3 * i) * size], words, { anchor: 'end' })),
    text([Math.max(half, Math.min(width - half, middle)), top - 0.95 * size], labels.sheet, { anchor: 'middle' }),
  ]
}

/** What labels keep clear of: the line, hairlines, guides and points. */
function obstruct(placing: Placing, { frame, basis, asked }: Labelling): void {
  const { cold, inside, warm } = frame.course
  placing.stroke([...cold, ...inside, ...warm].map(({ temperature, time }) => place(frame, temperature, time)))
  const sheet = sheetRange(basis)
  for (const end of [sheet.from, sheet.to]) {
    const x = frame.temperature.at(end)
    placing.stroke([
      [x, frame.top],
      [x, frame.bottom],
    ])
  }
  placing.stroke([
    [frame.left, frame.bottom],
    [frame.right, frame.bottom],
  ])
  const symbol = ([x, y]: Point, radius: number) =>
    placing.symbol({ left: x - radius, top: y - radius, right: x + radius, bottom: y + radius })
  for (const point of basis.points) symbol(place(frame, point.temperature, point.time), pointRadius(basis))
  if (asked === null) return
  const [x, y] = place(frame, asked.temperature, asked.time)
  symbol([x, y], DIAMOND)
  placing.stroke([
    [x, frame.bottom],
    [x, y],
    [frame.left, y],
  ])
}
