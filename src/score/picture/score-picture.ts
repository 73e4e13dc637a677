import { greatestRate } from './band.js'
import { textWidth } from './boxes.js'
import type { Drawing, Mark, TextMark } from './drawing.js'
import { legendOf, legendRise } from './legend.js'
import { linearScale } from './scales.js'
import { isBlock, type ScorePictureInput, type StaveFrame, type StaveInput } from './score-definition.js'
import { staveMarks } from './stave.js'
import { staveLabels } from './stave-labels.js'
import { multiples } from './ticks.js'

const NARROW = '\u202f'

/**
 * The score as a drawing: time runs right, each tank is a stave. A developer's band is as tall as its rate, so
 * its area is the development done; the planned rate is dashed. Under the line, blocks are bath changes and ticks
 * are turns; the lowest line is the hands. Drawn for 320 by 160 and up at a text of 12, at any size the same.
 */
export function scorePicture(input: ScorePictureInput): Drawing {
  const { staves, size, labels } = input
  const sheet = sheetOf(input)
  const frames = staves.map((stave, i) => frameOf(input, sheet, stave, i))
  const marks = frames.flatMap((frame, i) => {
    const stave = staves[i] as StaveInput
    return [...staveMarks(frame, stave), ...names(input, frame, stave), ...staveLabels(frame, stave, size.width)]
  })
  const below = input.form === 'page' ? [...handsLine(input, sheet), ...sheet.legend] : []
  return {
    ...size,
    title: labels.title,
    description: labels.description,
    marks: [...clock(input, sheet), ...marks, ...below],
  }
}

/** How the drawing is divided. */
interface Sheet {
  readonly left: number
  readonly right: number
  readonly from: number
  readonly to: number
  /** Height of each stave. */
  readonly pitch: number
  readonly hands: number | null
  readonly axis: number
  readonly legend: readonly Mark[]
}

function sheetOf({ staves, form, span, size, labels, minTextSize: t }: ScorePictureInput): Sheet {
  const page = form === 'page'
  const words = page ? [labels.hands, ...staves.flatMap(({ label, note }) => [label, note])] : []
  const left = page ? Math.max(...words.map((word) => textWidth(word, t))) + t : 1
  const legend = page ? legendOf(labels.legend, t, left, size.width) : null
  const axis = size.height - (legend === null ? 0.5 * t : 2.3 * t + legendRise(legend, t))
  const hands = page ? axis - 2.6 * t : null
  return {
    left,
    right: size.width - (page ? 1.5 * t : 1),
    from: span?.from ?? 0,
    to: span?.to ?? Math.max(...staves.map(({ plan }) => plan.tank.offset + plan.length)),
    pitch: (hands === null ? axis - 1.4 * t : hands - 1.3 * t) / staves.length,
    hands,
    axis,
    legend: legend?.marksAt(size.height - 0.5 * t) ?? [],
  }
}

function frameOf({ minTextSize: t }: ScorePictureInput, sheet: Sheet, stave: StaveInput, i: number): StaveFrame {
  const { left, right, from, to, pitch } = sheet
  const { offset } = stave.plan.tank
  const top = i * pitch
  const base = top + pitch - 1.5 * t
  const height = base - top - 0.3 * t
  const greatest = greatestRate([stave.plan, stave.began])
  return {
    left,
    right,
    top,
    base,
    bottom: top + pitch,
    x: linearScale(from - offset, to - offset, left, right),
    unit: height / greatest,
    low: Math.max(1.3 * t, 0.3 * height),
    size: t,
  }
}

const label = (at: readonly [number, number], words: string, t: number, more: Partial<TextMark> = {}): TextMark => ({
  kind: 'text',
  at,
  text: words,
  tone: 'ink',
  size: t,
  anchor: 'start',
  strong: false,
  halo: null,
  ...more,
})

function names(
  { form, minTextSize: t }: ScorePictureInput,
  { base }: StaveFrame,
  { label: name, note }: StaveInput,
): Mark[] {
  if (form !== 'page') return []
  return [
    label([0, base - 1.4 * t], name, t, { strong: true }),
    ...(note === '' ? [] : [label([0, base - 0.1 * t], note, t, { tone: 'quiet' })]),
  ]
}

/** Steps of the time axis, seconds; the finest whose figures keep apart is taken. */
const STEPS = [60, 120, 300, 600, 1200, 1800, 3600, 7200]

function clock({ size, minTextSize: t }: ScorePictureInput, { left, right, from, to, axis }: Sheet): Mark[] {
  const x = linearScale(from, to, left, right)
  const room = (step: number) => (step / (to - from)) * (right - left)
  const step = STEPS.find((one) => room(one) >= 5 * t) ?? 7200
  const written = (second: number) => (second === 0 ? '0' : `${second / 60}${NARROW}min`)
  return multiples(step, from, to).flatMap((second): Mark[] => {
    const at = x.at(second)
    const words = written(second)
    const line: Mark = { kind: 'line', from: [at, 0], to: [at, axis - t], tone: 'rule', weight: 1 }
    const half = textWidth(words, t) / 2
    if (at - half < 0 || at + half > size.width) return [line]
    return [line, label([at, axis], words, t, { tone: 'quiet', anchor: 'middle' })]
  })
}

/** All jobs on one line, the first tank's above and the others' below it. */
function handsLine({ staves, labels, minTextSize: t }: ScorePictureInput, sheet: Sheet): Mark[] {
  const { left, right, from, to, hands } = sheet
  if (hands === null) return []
  const x = linearScale(from, to, left, right)
  const jobs = staves.flatMap(({ plan }, i) =>
    plan.jobs.map((job) => ({
      job,
      above: i === 0,
      start: plan.tank.offset + job.start,
      end: plan.tank.offset + job.end,
    })),
  )
  const shown = jobs.filter(({ start, end }) => end >= from && start <= to)
  return [
    label([0, hands + 0.35 * t], labels.hands, t, { strong: true }),
    { kind: 'line', from: [left, hands], to: [right, hands], tone: 'quiet', weight: 1 },
    ...shown.map(({ job, above, start, end }): Mark => {
      const [a, b] = [Math.max(left, x.at(start)), Math.min(right, x.at(end))]
      const wide = Math.max(b, a + (isBlock(job) ? 4 : 2))
      const [top, bottom] = above ? [hands - 0.7 * t, hands] : [hands, hands + 0.7 * t]
      return {
        kind: 'area',
        points: [
          [a, top],
          [wide, top],
          [wide, bottom],
          [a, bottom],
        ],
        tone: 'ink',
      }
    }),
  ]
}
