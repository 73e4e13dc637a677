import type { BathSpan, Job, Laid } from '../plan/definition.js'
import { area, developing, outline } from './band.js'
import type { Mark, Point } from './drawing.js'
import { isBlock, type StaveFrame, type StaveInput } from './score-definition.js'

/** Everything of a stave but its texts. */
export function staveMarks(frame: StaveFrame, stave: StaveInput): Mark[] {
  const bath = developing(stave.plan)
  return [
    ...stave.plan.baths.filter(({ index }) => index !== bath?.index).flatMap((span) => block(frame, span)),
    ...(bath === null ? [] : bandMarks(frame, stave, bath)),
    line([frame.left, frame.base], [frame.right, frame.base], 'quiet'),
    ...stave.plan.jobs.flatMap((job) => jobMark(frame, stave, job)),
    ...nowLine(frame, stave),
  ]
}

const line = (from: Point, to: Point, tone: 'quiet' | 'edge' | 'ink', weight = 1): Mark => ({
  kind: 'line',
  from,
  to,
  tone,
  weight,
})

/** Inside the frame, for what lies before or after the span shown. */
const inside = ({ left, right }: StaveFrame, x: number): number => Math.min(right, Math.max(left, x))

const rectangle = (left: number, top: number, right: number, bottom: number): Point[] => [
  [left, top],
  [right, top],
  [right, bottom],
  [left, bottom],
]

function block(frame: StaveFrame, { clockStart, drainEnd }: BathSpan): Mark[] {
  const [left, right] = [inside(frame, frame.x.at(clockStart)), inside(frame, frame.x.at(drainEnd))]
  if (right - left < 0.5) return []
  const top = frame.base - frame.low
  return [
    { kind: 'area', points: rectangle(left, top, right, frame.base), tone: 'sheet' },
    line([left, top], [right, top], 'edge'),
    line([left, top], [left, frame.base], 'edge'),
    line([right, top], [right, frame.base], 'edge'),
  ]
}

/** Done development dark, the rest pale, the real rate above it, the plan dashed. */
function bandMarks(frame: StaveFrame, { now, began }: StaveInput, bath: Laid): Mark[] {
  const [start, end] = [shown(frame, bath.in), shown(frame, bath.clockEnd)]
  const until = now === null ? end : Math.min(end, Math.max(start, now))
  const areas = [
    { points: area(frame, bath, start, until), tone: 'wash' as const },
    { points: area(frame, bath, until, end), tone: 'sheet' as const },
  ]
  return [
    ...areas.filter(({ points }) => points.length > 0).map((one): Mark => ({ kind: 'area', ...one })),
    ...edges(frame, bath, start, end, began === null ? 'edge' : 'accent'),
    ...(began === null ? [] : dashes(frame, plannedAt(began.laid[bath.index] as Laid, bath.in))),
    ...(began === null ? planned(frame, bath, start, end) : []),
  ]
}

const shown = ({ x }: StaveFrame, second: number): number => Math.min(x.to, Math.max(x.from, second))

function edges(frame: StaveFrame, bath: Laid, start: number, end: number, tone: 'edge' | 'accent'): Mark[] {
  const top = outline(frame, bath, start, end)
  const [first, last] = [top[0], top.at(-1)]
  if (first === undefined || last === undefined) return []
  const points: Point[] = [[first[0], frame.base], ...top, [last[0], frame.base]]
  return [{ kind: 'path', points, tone, weight: tone === 'edge' ? 1 : 1.5 }]
}

/** On a plan the rate itself is the planned one. */
const planned = (frame: StaveFrame, bath: Laid, start: number, end: number): Mark[] => [
  { kind: 'path', points: outline(frame, bath, start, end), tone: 'accent', weight: 2, dash: [4, 3] },
]

/** The bath as the plan has it, begun when it really began. */
const plannedAt = (planned: Laid, start: number): Laid => ({
  ...planned,
  in: start,
  clockEnd: planned.clockEnd + start - planned.in,
})

function dashes(frame: StaveFrame, planned: Laid): Mark[] {
  const top = outline(frame, planned, shown(frame, planned.in), shown(frame, planned.clockEnd))
  const last = top.at(-1)
  if (last === undefined) return []
  return [{ kind: 'path', points: [...top, [last[0], frame.base]], tone: 'accent', weight: 1.5, dash: [4, 3] }]
}

/** Jobs done are solid, jobs to come are open, the next one is black; a plan is black throughout. */
function jobMark(frame: StaveFrame, { states, next }: StaveInput, job: Job): Mark[] {
  if (job.end < frame.x.from || job.start > frame.x.to) return []
  const state = states.get(job.id)
  const [left, right] = [inside(frame, frame.x.at(job.start)), inside(frame, frame.x.at(job.end))]
  const wide = Math.max(right, left + (isBlock(job) ? 4 : 2))
  const top = frame.base + 0.35 * frame.size
  const points = rectangle(left, top, wide, top + 0.75 * frame.size)
  if (job.id !== next && (state === 'to-come' || state === 'missed'))
    return [{ kind: 'path', points: [...points, points[0] as Point], tone: 'quiet', weight: 1 }]
  return [{ kind: 'area', points, tone: state === 'done' ? 'accent' : 'ink' }]
}

function nowLine(frame: StaveFrame, { now }: StaveInput): Mark[] {
  if (now === null || now < frame.x.from || now > frame.x.to) return []
  const x = frame.x.at(now)
  return [line([x, frame.top], [x, frame.bottom], 'ink', 2)]
}
