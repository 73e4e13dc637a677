import { celsius, ok, type Result, type Seconds, seconds, type UnitSystem } from '../../kernel/index.js'
import { basisOf, groundsOf, timeStatementOf } from '../../lab/index.js'
import { type CourseReading, type Dose, dose as doseOf, type TimeBasis } from '../../science/index.js'
import type { DoseAnswer } from '../../wire/index.js'
import { lawSentence, say, type WorkingLine, type Writer, warningSentence, writerFor } from '../../words/index.js'
import { tell } from '../answer.js'
import { isJson, jsonIn } from '../asked.js'
import { type BasisOptions, basisFrom } from '../basis.js'
import { board } from '../board.js'
import { listText, readingsIn } from '../lists.js'
import { type Common, type Output, refuse, unitsOf } from '../output.js'

export interface DoseOptions extends Common, BasisOptions {}

/** Prints how much development a list of readings has done. */
export async function dose(file: string | undefined, options: DoseOptions, output: Output): Promise<number> {
  const units = unitsOf(options)
  const text = await listText(file)
  if (!text.ok) return refuse(output, text.problem, options)
  const asked = isJson(text.value) ? await fromJson(text.value) : fromLines(text.value, options, units)
  if (!asked.ok) return refuse(output, asked.problem, options)
  const { basis, readings } = asked.value
  const found = doseOf(basis, readings)
  if (!found.ok) return refuse(output, found.problem, options)
  const view = viewOf(basis, readings, found.value, options)
  return tell(
    {
      view,
      lines: [view.sentence, ...view.warnings.map((warning) => warning.sentence)],
      working: () => board(view.working),
    },
    options,
    output,
  )
}

interface Asked {
  readonly basis: TimeBasis
  readonly readings: readonly CourseReading[]
}

function fromLines(text: string, options: DoseOptions, units: UnitSystem): Result<Asked> {
  const basis = basisFrom(options, units)
  if (!basis.ok) return basis
  const readings = readingsIn(text, units)
  return readings.ok ? ok({ basis: basis.value, readings: readings.value }) : readings
}

/** JSON holds the whole question; the options that state a time are not looked at. */
async function fromJson(text: string): Promise<Result<Asked>> {
  const question = await jsonIn(text, 'the question', 'dose-question')
  if (!question.ok) return question
  const basis = basisOf(timeStatementOf(question.value.time))
  if (!basis.ok) return basis
  const readings = question.value.readings.map(({ at_s, temperature_c }) => ({
    at: seconds(at_s),
    temperature: celsius(temperature_c),
  }))
  return ok({ basis: basis.value, readings })
}

function viewOf(basis: TimeBasis, readings: readonly CourseReading[], found: Dose, options: Common): DoseAnswer {
  const writer = writerFor(unitsOf(options))
  const { reference } = basis
  return {
    equivalent_s: found.equivalent,
    reference: { temperature_c: reference.temperature, time_s: reference.time },
    fraction: found.fraction,
    duration_s: span(readings),
    mean_rate: found.meanRate,
    law: basis.law,
    warnings: found.warnings.map((warning) => ({ code: warning.code, sentence: warningSentence(warning, writer) })),
    sentence: say(
      'dose.sum',
      { actual: span(readings) as Seconds, equivalent: found.equivalent, reference, fraction: found.fraction },
      writer,
    ),
    working: workingOf(basis, readings, found, writer),
  }
}

const span = (readings: readonly CourseReading[]): number => (readings.at(-1)?.at ?? 0) - (readings[0]?.at ?? 0)

/** Where it starts from, the law, stretch by stretch, and the sum; each with where it comes from. */
function workingOf(basis: TimeBasis, readings: readonly CourseReading[], found: Dose, writer: Writer): WorkingLine[] {
  const { reference, kind, coefficient, points } = basis
  const sheet = say('time.origin.sheet', {}, writer)
  const byLaw = kind === 'ordinary' && points.length === 1
  return [
    { line: say('time.working.reference', reference, writer), source: sheet },
    {
      line: lawSentence(groundsOf(basis, ''), writer),
      source: byLaw ? say(`time.origin.${coefficient.origin}`, {}, writer) : sheet,
    },
    ...readings.slice(1).map((to, i) => stretch(basis, readings[i] as CourseReading, to, writer)),
    {
      line: say('dose.total', { equivalent: found.equivalent }, writer),
      source: say('dose.source.total', {}, writer),
    },
    {
      line: say('dose.mean-rate', { rate: found.meanRate }, writer),
      source: say('dose.source.mean-rate', {}, writer),
    },
  ]
}

/** From, to, the two temperatures, and what the stretch came to. */
function stretch(basis: TimeBasis, from: CourseReading, to: CourseReading, writer: Writer): WorkingLine {
  const part = doseOf(basis, [from, to])
  if (!part.ok) return { line: part.problem.sentence, source: '' }
  const { equivalent } = part.value
  const said = { from: from.at, to: to.at, cool: from.temperature, warm: to.temperature, equivalent }
  return { line: say('dose.stretch', said, writer), source: say('dose.source.readings', {}, writer) }
}
