import type { DevelopingTime, TimeBasis } from '../../science/index.js'
import { textWidth, wrapped } from './boxes.js'
import { sheetRange } from './course.js'
import type { Mark, Point, TextMark } from './drawing.js'
import type { Frame } from './frame.js'
import { bandEdges, DIAMOND, place, pointRadius } from './places.js'
import { type Candidate, Placing } from './placing.js'

/** The words of the graph; they come from the catalogue of words, in the bench's units. */
export interface GraphLabels {
  readonly title: string
  readonly description: string
  /** Over the range the sheet covers. */
  readonly sheet: string
  /** Where the law goes on alone. */
  readonly beyond: string
  /** What the line and the band around it are. */
  readonly doubt: string
  /** At the sheet point that the sentence compares with. */
  readonly reference: string
  /** Under the graph. */
  readonly caption: string
}

interface Labelling {
  readonly frame: Frame
  readonly basis: TimeBasis
  readonly asked: DevelopingTime | null
  readonly figures: { readonly time: string; readonly temperature: string } | null
  readonly labels: GraphLabels
  readonly width: number
  readonly height: number
}

type Style = Partial<Pick<TextMark, 'tone' | 'size' | 'anchor' | 'strong' | 'halo'>>

/** Writes a graph: its axes, what was asked, and as many of the other labels as there is room for. */
export function labelGraph(to: Labelling): Mark[] {
  const { frame, labels } = to
  const text = (at: Point, words: string, style: Style = {}): TextMark => ({
    kind: 'text',
    at,
    text: words,
    tone: 'quiet',
    size: frame.size,
    anchor: 'start',
    strong: false,
    halo: false,
    ...style,
  })
  const placing = new Placing({ left: 0, top: 0, right: to.width, bottom: to.height })
  for (const edge of Object.values(bandEdges(frame))) placing.stroke(edge)
  for (const mark of axes(to, text)) placing.fixed(mark)
  obstruct(placing, to)
  if (to.figures !== null && to.asked !== null) {
    placing.label(askedTime(to, to.figures.time, text), { needed: true })
    placing.label(askedTemperature(to, to.figures.temperature, text), { needed: true })
  }
  placing.label(referenceLabel(to, text))
  if (frame.course.warm.length + frame.course.cold.length > 0) placing.label(beyondLabel(to, text))
  if (frame.course.inside.length > 0 || to.basis.kind === 'ordinary') placing.label(doubtLabel(frame, labels, text))
  return placing.placed
}

type Writing = (at: Point, words: string, style?: Style) => TextMark

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
    text([Math.max(half, Math.min(width - half, middle)), top - 0.6 * size], labels.sheet, { anchor: 'middle' }),
  ]
}

/** What labels keep clear of: hairlines, guides and points. */
function obstruct(placing: Placing, { frame, basis, asked }: Labelling): void {
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

/** On its guide, left of the point: inside the sheet rather than before it, above the guide rather than under it. */
function askedTime({ frame, basis, asked }: Labelling, words: string, text: Writing): Candidate[] {
  if (asked === null) return []
  const size = 1.5 * frame.size
  const [x, y] = place(frame, asked.temperature, asked.time)
  const sheetLeft = frame.temperature.at(sheetRange(basis).from)
  const style: Style = { tone: 'ink', size, strong: true, halo: true }
  const starts = [sheetLeft + 8, frame.left + 8].filter((start) => start < x)
  const rows = [y - 0.4 * size, y + 1.1 * size]
  const onGuide = rows.flatMap((row) => starts.map((start) => ({ texts: [text([start, row], words, style)] })))
  const beside = rows.map((row) => ({ texts: [text([x + 12, row], words, style)] }))
  const before = rows.map((row) => ({ texts: [text([x - 12, row], words, { ...style, anchor: 'end' as const })] }))
  return [...onGuide, ...beside, ...before]
}

/** At the foot of its guide, else further up it. */
function askedTemperature({ frame, asked }: Labelling, words: string, text: Writing): Candidate[] {
  if (asked === null) return []
  const x = frame.temperature.at(asked.temperature)
  const foot = frame.bottom - 0.7 * frame.size
  const style: Style = { tone: 'ink', halo: true }
  return [0, 1.4, 2.8, 4.2].flatMap((up) => [
    { texts: [text([x + 8, foot - up * frame.size], words, style)] },
    { texts: [text([x - 8, foot - up * frame.size], words, { ...style, anchor: 'end' })] },
  ])
}

function referenceLabel({ frame, basis, labels }: Labelling, text: Writing): Candidate[] {
  const [x, y] = place(frame, basis.reference.temperature, basis.reference.time)
  const style: Style = { tone: 'ink', halo: true }
  const [above, below] = [y - 0.6 * frame.size, y + 1.2 * frame.size]
  const lines = wrapped(labels.reference, frame.size, 0.4 * (frame.right - frame.left))
  const stacked = (left: number, top: number, anchor: TextMark['anchor']) =>
    lines.map((words, i) => text([left, top + 1.25 * i * frame.size], words, { ...style, anchor }))
  const rise = 1.25 * (lines.length - 1) * frame.size
  return [
    { texts: [text([x + 12, above], labels.reference, style)] },
    { texts: [text([x - 12, below], labels.reference, { ...style, anchor: 'end' })] },
    { texts: stacked(x + 12, above - rise, 'start') },
    { texts: stacked(x - 12, below, 'end') },
    { texts: [text([x, y - 1.2 * frame.size], labels.reference, { ...style, anchor: 'middle' })] },
    { texts: [text([x, y + 2 * frame.size], labels.reference, { ...style, anchor: 'middle' })] },
  ]
}

/** In a corner past the end of the sheet, broken into as many lines as the strip is narrow. */
function beyondLabel({ frame, basis, labels }: Labelling, text: Writing): Candidate[] {
  const sheet = sheetRange(basis)
  const [cold, warm] = [frame.temperature.at(sheet.from), frame.temperature.at(sheet.to)]
  const column = (x: number, room: number, anchor: 'start' | 'end', high: boolean): Candidate[] => {
    const lines = wrapped(labels.beyond, frame.size, room - 10)
    if (lines.some((words) => textWidth(words, frame.size) > room - 10)) return []
    const pitch = 1.25 * frame.size
    const first = high ? frame.top + 1.3 * frame.size : frame.bottom - 0.7 * frame.size - (lines.length - 1) * pitch
    return [{ texts: lines.map((words, i) => text([x, first + i * pitch], words, { anchor, halo: true })) }]
  }
  return [
    ...column(frame.right - 4, frame.right - warm, 'end', true),
    ...column(frame.left + 6, cold - frame.left, 'start', false),
    ...column(frame.right - 4, frame.right - warm, 'end', false),
    ...column(frame.left + 6, cold - frame.left, 'start', true),
  ]
}

/** Above the line, tied to it by a leader; wherever along it there is room. */
function doubtLabel(frame: Frame, labels: GraphLabels, text: Writing): Candidate[] {
  const { longest } = bandEdges(frame)
  return [0.72, 0.6, 0.82, 0.5, 0.4, 0.3].flatMap((along) =>
    [2, 3, 4].flatMap((lift) => {
      const [x, y] = longest[Math.round(along * (longest.length - 1))] as Point
      const row = y - lift * frame.size
      const words = text([x, row], labels.doubt, { tone: 'accent', anchor: 'middle', halo: true })
      if (row < frame.top + frame.size) return []
      return [
        {
          texts: [words],
          leader: { kind: 'line', from: [x, row + 0.4 * frame.size], to: [x, y], tone: 'accent', weight: 1 },
        },
      ]
    }),
  )
}
