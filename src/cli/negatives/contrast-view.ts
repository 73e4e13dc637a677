import type { Seconds } from '../../kernel/index.js'
import type { FittedContrast, OwnTime } from '../../science/index.js'
import type { ContrastAnswer, ContrastQuestion } from '../../wire/index.js'
import { say, type WorkingLine, type Writer } from '../../words/index.js'
import type { FamilyFound } from './family.js'

/** The answer with its working; `watkins` is the time by Watkins' rule, to compare. */
export function contrastView(
  { fitted, time, strips }: FamilyFound,
  question: ContrastQuestion,
  watkins: Seconds | null,
  writer: Writer,
): ContrastAnswer {
  const { law, points, misfits, method, scatter } = fitted
  const { wanted } = question
  const speed = strips?.speed ?? null
  return {
    wanted,
    measure: strips === null ? null : strips.measure,
    time_s: time.time,
    low_s: time.low,
    high_s: time.high,
    law: { most: law.most, rate_per_s: law.rate, start_s: law.start },
    method,
    scatter,
    strips: points.map(({ time: at, contrast }, i) => ({ time_s: at, contrast, misfit: misfits[i] as number })),
    base_fog: strips?.baseFog ?? null,
    speed:
      speed === null
        ? null
        : {
            value: speed.value,
            low: speed.low,
            high: speed.high,
            named: {
              arithmetic: speed.named.arithmetic,
              degrees: speed.named.degrees,
              name: speed.named.name,
            },
          },
    watkins_s: watkins,
    warnings: warningsOf(fitted, time, writer),
    sentence: say('contrast.answer', { wanted, ...time }, writer),
    working: [
      ...stripLines(fitted, strips?.measure ?? null, writer),
      ...lawLines(fitted, time, wanted, writer),
      ...watkinsLines(question, watkins, writer),
    ],
  }
}

const warningsOf = ({ method }: FittedContrast, time: OwnTime, writer: Writer): ContrastAnswer['warnings'] => [
  ...(method === 'least-squares' ? [] : [{ code: 'start-assumed', sentence: say('contrast.two-strips', {}, writer) }]),
  ...(time.beyondStrips ? [{ code: 'beyond-strips', sentence: say('contrast.beyond', {}, writer) }] : []),
]

/** The answer as sentences. */
export function contrastLines(view: ContrastAnswer, writer: Writer): string[] {
  return [
    view.sentence,
    ...(view.speed === null ? [] : [say('contrast.speed', { ...view.speed, name: view.speed.named.name }, writer)]),
    ...(view.base_fog === null ? [] : [say('contrast.fog', { density: view.base_fog }, writer)]),
    ...view.warnings.map(({ sentence }) => sentence),
  ]
}

function stripLines({ points, misfits }: FittedContrast, measure: ContrastAnswer['measure'], writer: Writer) {
  const source =
    measure === null
      ? say('contrast.source.given', {}, writer)
      : say('contrast.source.read', { measure: say(`strip.measure.${measure}`, {}, writer) }, writer)
  return points.map(
    ({ time, contrast }, i): WorkingLine => ({
      line: say('contrast.strip', { time, contrast, misfit: misfits[i] as number }, writer),
      source,
    }),
  )
}

function lawLines({ law, method, scatter }: FittedContrast, own: OwnTime, wanted: number, writer: Writer) {
  const { most, rate } = law
  const lines: WorkingLine[] = [
    {
      line: say('contrast.work.law', { most, rate, start: law.start as Seconds }, writer),
      source: say(`contrast.source.${method}`, {}, writer),
    },
    {
      line: say('contrast.work.inverse', { wanted, most, rate, time: own.time }, writer),
      source: say('contrast.source.inverse', {}, writer),
    },
    {
      line: say('contrast.work.interval', { scatter: scatter.value, low: own.low, high: own.high }, writer),
      source: say(`contrast.source.${scatter.origin}`, {}, writer),
    },
  ]
  return lines
}

function watkinsLines({ appearance }: ContrastQuestion, time: Seconds | null, writer: Writer): WorkingLine[] {
  if (appearance === undefined || time === null) return []
  const { time_s, factor } = appearance
  return [
    {
      line: say('contrast.work.watkins', { appearance: time_s, factor, time }, writer),
      source: say('contrast.source.watkins', {}, writer),
    },
  ]
}
