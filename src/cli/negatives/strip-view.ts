import {
  type ContrastMeasure,
  contrastOf,
  deltaX,
  type FilmSpeed,
  filmSpeed,
  GRADIENTS,
  type Measured,
  NOMINAL_TABLETS,
  SPEED_CRITERION,
  type StripCurve,
} from '../../science/index.js'
import type { StripAnswer, StripQuestion } from '../../wire/index.js'
import { say, type WorkingLine, type Writer } from '../../words/index.js'

export const MEASURES = [...Object.keys(GRADIENTS), 'contrast-index', 'gamma'] as ContrastMeasure[]

/** Everything a strip says, with the working. */
export function stripView(curve: StripCurve, question: StripQuestion, writer: Writer): StripAnswer {
  const speed = filmSpeed(curve)
  const figures = MEASURES.map((measure) => ({ measure, found: contrastOf(curve, measure) }))
  const speedView = viewOfSpeed(speed)
  return {
    base_fog: curve.curve.baseFog,
    from_log_exposure: curve.curve.from,
    to_log_exposure: curve.curve.to,
    exposure: curve.strip.exposure,
    reading_error: curve.strip.readingError,
    speed: speedView,
    figures: figures.map(({ measure, found }) => ({
      name: measure,
      says: say(`strip.measure.${measure}`, {}, writer),
      value: found.ok ? found.value.value : null,
      low: found.ok ? found.value.low : null,
      high: found.ok ? found.value.high : null,
      undefined_because: found.ok ? null : found.problem.sentence,
    })),
    warnings: curve.warnings.map((warning) => ({
      code: warning.code,
      sentence: say(`strip.warning.${warning.code}`, warning as never, writer),
    })),
    sentence: speedSentence(speedView, writer),
    working: [
      ...groundLines(curve, question, writer),
      ...(speed.ok ? speedLines(curve, speed.value, writer) : []),
      ...figures.flatMap(({ measure, found }) => (found.ok ? [figureLine(measure, found.value, writer)] : [])),
    ],
  }
}

function viewOfSpeed(speed: ReturnType<typeof filmSpeed>): StripAnswer['speed'] {
  if (!speed.ok)
    return {
      kind: null,
      label: null,
      named: null,
      value: null,
      low: null,
      high: null,
      sure: false,
      not_iso_because: null,
      undefined_because: speed.problem.sentence,
    }
  const { kind, label, named, sure, refusal } = speed.value
  const { value, low, high } = speed.value.speed
  const { arithmetic, degrees, name } = named
  const because = refusal?.sentence ?? null
  return {
    kind,
    label,
    named: { arithmetic, degrees, name },
    value,
    low,
    high,
    sure,
    not_iso_because: because,
    undefined_because: null,
  }
}

function speedSentence(speed: StripAnswer['speed'], writer: Writer): string {
  if (speed.value === null || speed.named === null)
    return say('strip.no-speed', { reason: speed.undefined_because ?? '' }, writer)
  const open = { name: speed.named.name, value: speed.value, low: speed.low, high: speed.high }
  return say(speed.kind === 'iso' ? 'strip.speed-iso' : 'strip.speed-delta-x', open, writer)
}

/** The answer as sentences, one a figure. */
export function stripLines(view: StripAnswer, writer: Writer): string[] {
  const figures = view.figures.map(({ says: name, value, low, high, undefined_because }) =>
    value === null
      ? say('strip.undefined', { name, reason: undefined_because ?? '' }, writer)
      : say('strip.figure', { name, value, low, high }, writer),
  )
  return [
    view.sentence,
    ...(view.speed.not_iso_because === null ? [] : [view.speed.not_iso_because]),
    ...(view.speed.kind === null || view.speed.sure ? [] : [say('strip.unsure', {}, writer)]),
    ...figures,
    ...view.warnings.map(({ sentence }) => sentence),
  ]
}

function groundLines({ strip, curve }: StripCurve, question: StripQuestion, writer: Writer): WorkingLine[] {
  const from = { count: strip.steps.length, from: curve.from, to: curve.to }
  return [
    { line: say('strip.work.steps', from, writer), source: stepsSource(question, writer) },
    {
      line: say('strip.work.base', { density: curve.baseFog }, writer),
      source: say(strip.baseFog === null ? 'strip.source.lightest' : 'strip.source.measured', {}, writer),
    },
    {
      line: say('strip.work.error', { error: strip.readingError }, writer),
      source: say(errorSource(question), {}, writer),
    },
    {
      line: say('strip.work.scatter', { scatter: strip.stripScatter }, writer),
      source: say(question.strip_scatter === undefined ? 'strip.source.practice' : 'strip.source.stated', {}, writer),
    },
  ]
}

const errorSource = ({ known, reading_error }: StripQuestion) => {
  if (known.length > 0) return 'strip.source.calibrated'
  return reading_error === undefined ? 'strip.source.practice' : 'strip.source.stated'
}

function stepsSource({ steps, tablet }: StripQuestion, writer: Writer): string {
  if (steps) return say('strip.source.exposures', {}, writer)
  return typeof tablet === 'string' && tablet in NOMINAL_TABLETS
    ? say('strip.source.tablet', { name: tablet }, writer)
    : say('strip.source.own-tablet', {}, writer)
}

function speedLines({ curve }: StripCurve, found: FilmSpeed, writer: Writer): WorkingLine[] {
  const { speedPoint, rise, speed, kind } = found
  const density = curve.baseFog + SPEED_CRITERION.speedPoint
  const distance = deltaX(rise.value)
  return [
    {
      line: say('strip.work.speed-point', { density, logH: speedPoint.value }, writer),
      source: say('strip.source.iso', {}, writer),
    },
    {
      line: say('strip.work.rise', { rise: rise.value }, writer),
      source: say('strip.source.tolerance', {}, writer),
    },
    kind === 'iso' || !distance.ok
      ? {
          line: say('strip.work.iso', { logH: speedPoint.value, speed: speed.value }, writer),
          source: say('strip.source.iso', {}, writer),
        }
      : {
          line: say('strip.work.delta-x', { rise: rise.value, deltaX: distance.value, speed: speed.value }, writer),
          source: say('strip.source.delta-x', {}, writer),
        },
  ]
}

function figureLine(measure: ContrastMeasure, { value, byReadings, byStrips }: Measured, writer: Writer): WorkingLine {
  const source =
    measure === 'gamma'
      ? 'strip.source.gamma'
      : measure === 'contrast-index'
        ? 'strip.source.arcs'
        : 'strip.source.two-points'
  const name = say(`strip.measure.${measure}`, {}, writer)
  return {
    line: say('strip.work.figure', { name, value, byReadings, byStrips }, writer),
    source: say(source, {}, writer),
  }
}
