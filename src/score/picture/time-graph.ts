import { type UnitSystem, writeDuration, writeTemperature } from '../../kernel/index.js'
import type { DevelopingTime, TimeBasis } from '../../science/index.js'
import type { GraphLabels } from './candidates.js'
import type { CoursePoint } from './course.js'
import { sheetRange } from './course.js'
import type { Drawing, Mark, Point } from './drawing.js'
import { type Frame, frameFor } from './frame.js'
import { labelGraph } from './graph-labels.js'
import { bandEdges, DIAMOND, place, pointRadius } from './places.js'

export interface TimeGraphInput {
  readonly basis: TimeBasis
  /** The time asked for; the graph stands without one too. */
  readonly asked: DevelopingTime | null
  readonly units: UnitSystem
  /** Of the whole drawing, texts included; drawn for 300 by 240 and up at a text of 14. */
  readonly size: { readonly width: number; readonly height: number }
  readonly labels: GraphLabels
  /** No text is smaller; most is just this size, the asked time half as large again. */
  readonly minTextSize: number
}

/**
 * Developing time against temperature, time on a logarithmic axis: the sheet's points, the law through them
 * (solid inside the sheet, dotted beyond), the band it may be out by, and the time asked for with its guides.
 * A fixed time is its point and its window, without a line.
 */
export function timeGraph(input: TimeGraphInput): Drawing {
  const { basis, asked, units, size, labels, minTextSize } = input
  const frame = frameFor({ basis, asked, units, size, caption: labels.caption, textSize: minTextSize })
  const marks = [
    ...ground(frame, basis),
    ...band(frame),
    ...line(frame),
    ...(asked === null ? [] : guides(frame, asked)),
    ...points(frame, basis),
    ...(asked === null ? [] : [diamond(frame, asked)]),
  ]
  const figures =
    asked === null ? null : { time: writeDuration(asked.time), temperature: writeTemperature(asked.temperature, units) }
  return {
    ...size,
    title: labels.title,
    description: labels.description,
    marks: [...marks, ...labelGraph({ frame, basis, asked, figures, labels, width: size.width })],
  }
}

function ground(frame: Frame, basis: TimeBasis): Mark[] {
  const { left, right, top, bottom } = frame
  const sheet = sheetRange(basis)
  const [cold, warm] = [frame.temperature.at(sheet.from), frame.temperature.at(sheet.to)]
  const corners: Point[] = [
    [cold, top],
    [warm, top],
    [warm, bottom],
    [cold, bottom],
  ]
  const ends = sheet.to > sheet.from ? [cold, warm] : [cold]
  return [
    { kind: 'area', points: corners, tone: 'sheet' },
    ...frame.timeTicks.map(({ value }): Mark => {
      const y = frame.time.at(value)
      return { kind: 'line', from: [left, y], to: [right, y], tone: 'rule', weight: 1 }
    }),
    ...ends.map((x): Mark => ({ kind: 'line', from: [x, top], to: [x, bottom], tone: 'edge', weight: 1 })),
    { kind: 'line', from: [left, bottom], to: [right, bottom], tone: 'quiet', weight: 1 },
    ...frame.temperatureTicks.map(({ value }): Mark => {
      const x = frame.temperature.at(value)
      return { kind: 'line', from: [x, bottom], to: [x, bottom + 5], tone: 'quiet', weight: 1 }
    }),
  ]
}

/** Up along the longest times the line allows, and back along the shortest. */
function band(frame: Frame): Mark[] {
  const { longest, shortest } = bandEdges(frame)
  return longest.length === 0 ? [] : [{ kind: 'area', points: [...longest, ...shortest.toReversed()], tone: 'wash' }]
}

function line(frame: Frame): Mark[] {
  const along = (course: readonly CoursePoint[]) =>
    course.map(({ temperature, time }) => place(frame, temperature, time))
  const { cold, inside, warm } = frame.course
  const beyond = [cold, warm].filter((course) => course.length > 0)
  return [
    ...beyond.map((course): Mark => ({ kind: 'path', points: along(course), tone: 'accent', weight: 2, dash: [3, 5] })),
    ...(inside.length > 0 ? [{ kind: 'path', points: along(inside), tone: 'accent', weight: 2.5 } as const] : []),
  ]
}

/** From the temperature up to the asked point and across to its time. */
function guides(frame: Frame, asked: DevelopingTime): Mark[] {
  const [x, y] = place(frame, asked.temperature, asked.time)
  const points: Point[] = [
    [x, frame.bottom],
    [x, y],
    [frame.left, y],
  ]
  return [{ kind: 'path', points, tone: 'ink', weight: 1.5, dash: [3, 3] }]
}

const points = (frame: Frame, basis: TimeBasis): Mark[] =>
  basis.points.map(({ temperature, time }) => ({
    kind: 'circle',
    at: place(frame, temperature, time),
    radius: pointRadius(basis),
    tone: 'accent',
    weight: 2,
    fill: 'sheet',
  }))

const diamond = (frame: Frame, asked: DevelopingTime): Mark => ({
  kind: 'diamond',
  at: place(frame, asked.temperature, asked.time),
  radius: DIAMOND,
  tone: 'ink',
})
