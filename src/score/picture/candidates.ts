import type { DevelopingTime, TimeBasis } from '../../science/index.js'
import { textWidth, wrapped } from './boxes.js'
import { sheetRange } from './course.js'
import type { Point, TextMark } from './drawing.js'
import type { Frame } from './frame.js'
import { bandEdges, place } from './places.js'
import type { Candidate } from './placing.js'

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

export interface Labelling {
  readonly frame: Frame
  readonly basis: TimeBasis
  readonly asked: DevelopingTime | null
  readonly figures: { readonly time: string; readonly temperature: string } | null
  readonly labels: GraphLabels
  readonly width: number
}

export type Style = Partial<Pick<TextMark, 'tone' | 'size' | 'anchor' | 'strong'>> & {
  /** With a halo; its tone follows from where the words come to lie. */
  readonly halo?: boolean
}

export type Writing = (at: Point, words: string, style?: Style) => TextMark

/** How far each row lies above the guide, in sizes; under it when negative. */
const ROWS = [0.4, -1.1]

/**
 * On its guide, left of the point: inside the sheet rather than before it, above the guide rather than under it;
 * else beside the point, further up or down until it is clear of the band.
 */
export function askedTime({ frame, basis, asked }: Labelling, words: string, text: Writing): Candidate[] {
  if (asked === null) return []
  const size = 1.5 * frame.size
  const [x, y] = place(frame, asked.temperature, asked.time)
  const sheetLeft = frame.temperature.at(sheetRange(basis).from)
  const style: Style = { tone: 'ink', size, strong: true, halo: true }
  const at = (left: number, up: number, anchor: TextMark['anchor'] = 'start') => ({
    texts: [text([left, y - up * size], words, { ...style, anchor })],
  })
  const starts = [sheetLeft + 8, frame.left + 8].filter((start) => start < x)
  const onGuide = ROWS.flatMap((up) => starts.map((start) => at(start, up)))
  const beside = [0.4, 1.2, 2, 2.8].flatMap((up) => [at(x + 12, up), at(x - 12, -0.7 - up, 'end')])
  const other = [0.4, 1.2, 2, 2.8].flatMap((up) => [at(x + 12, -0.7 - up), at(x - 12, up, 'end')])
  return [...onGuide, ...beside, ...other]
}

/** At the foot of its guide, past a hairline that stands close; else further up. */
export function askedTemperature({ frame, basis, asked }: Labelling, words: string, text: Writing): Candidate[] {
  if (asked === null) return []
  const sheet = sheetRange(basis)
  const edges = [sheet.from, sheet.to].map((edge) => frame.temperature.at(edge))
  const x = frame.temperature.at(asked.temperature)
  const foot = frame.bottom - 0.7 * frame.size
  const style: Style = { tone: 'ink', halo: true }
  return [0, 1.4, 2.8, 4.2].flatMap((up) => {
    const y = foot - up * frame.size
    const right = [x, ...edges.filter((edge) => edge > x)].map((from) => text([from + 8, y], words, style))
    const left = [x, ...edges.filter((edge) => edge < x)].map((to) =>
      text([to - 8, y], words, { ...style, anchor: 'end' }),
    )
    return [right[0], left[0], right[1], left[1]].flatMap((mark) => (mark === undefined ? [] : [{ texts: [mark] }]))
  })
}

export function referenceLabel({ frame, basis, labels }: Labelling, text: Writing): Candidate[] {
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
export function beyondLabel({ frame, basis, labels }: Labelling, text: Writing): Candidate[] {
  const sheet = sheetRange(basis)
  const [cold, warm] = [frame.temperature.at(sheet.from), frame.temperature.at(sheet.to)]
  const column = (x: number, room: number, anchor: 'start' | 'end', high: boolean): Candidate[] => {
    const lines = wrapped(labels.beyond, frame.size, room - 7)
    if (lines.some((words) => textWidth(words, frame.size) > room - 7)) return []
    const pitch = 1.25 * frame.size
    const first = high ? frame.top + 1.3 * frame.size : frame.bottom - 0.7 * frame.size - (lines.length - 1) * pitch
    return [{ texts: lines.map((words, i) => text([x, first + i * pitch], words, { anchor, halo: true })) }]
  }
  return [
    ...column(frame.right - 3, frame.right - warm, 'end', true),
    ...column(frame.left + 4, cold - frame.left, 'start', false),
    ...column(frame.right - 3, frame.right - warm, 'end', false),
    ...column(frame.left + 4, cold - frame.left, 'start', true),
  ]
}

/** Beside the band, tied to it by a leader; wherever along it there is room, above rather than below. */
export function doubtLabel({ frame, labels }: Labelling, text: Writing): Candidate[] {
  const { longest, shortest } = bandEdges(frame)
  const tied = (edge: readonly Point[], along: number, lift: number): Candidate[] => {
    const [x, y] = edge[Math.round(along * (edge.length - 1))] as Point
    const row = y - lift * frame.size
    const end = lift > 0 ? row + 0.4 * frame.size : row - 0.9 * frame.size
    const words = text([x, row], labels.doubt, { tone: 'accent', anchor: 'middle', halo: true })
    return [{ texts: [words], leader: { kind: 'line', from: [x, end], to: [x, y], tone: 'accent', weight: 1 } }]
  }
  const alongs = [0.72, 0.78, 0.65, 0.84, 0.58, 0.9, 0.5, 0.42, 0.34, 0.26]
  return [
    ...alongs.flatMap((along) => [2, 2.7, 3.4].flatMap((lift) => tied(longest, along, lift))),
    ...alongs.flatMap((along) => [-2.5, -3.2].flatMap((lift) => tied(shortest, along, lift))),
  ]
}
