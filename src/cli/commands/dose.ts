import { celsius, ok, type Result, type Seconds, seconds, type UnitSystem } from '../../kernel/index.js'
import { type CourseReading, dose as doseOf, type TimeBasis } from '../../science/index.js'
import type { DoseAnswer } from '../../wire/index.js'
import { say, warningSentence, writerFor } from '../../words/index.js'
import { tell } from '../answer.js'
import { isJson, jsonIn } from '../asked.js'
import { type BasisOptions, basisFrom } from '../basis.js'
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
      working: () => explain(basis, readings, view, options),
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
  const { basisOf, timeStatementOf } = await import('../../lab/index.js')
  const basis = basisOf(timeStatementOf(question.value.time))
  if (!basis.ok) return basis
  const readings = question.value.readings.map(({ at_s, temperature_c }) => ({
    at: seconds(at_s),
    temperature: celsius(temperature_c),
  }))
  return ok({ basis: basis.value, readings })
}

function viewOf(
  basis: TimeBasis,
  readings: readonly CourseReading[],
  found: Extract<ReturnType<typeof doseOf>, { ok: true }>['value'],
  options: Common,
): DoseAnswer {
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
  }
}

const span = (readings: readonly CourseReading[]): number => (readings.at(-1)?.at ?? 0) - (readings[0]?.at ?? 0)

/** Stretch by stretch: from, to, the two temperatures, and what the stretch came to. */
function explain(basis: TimeBasis, readings: readonly CourseReading[], view: DoseAnswer, options: Common): string[] {
  const writer = writerFor(unitsOf(options))
  const stretches = readings.slice(1).map((to, i) => {
    const from = readings[i] as CourseReading
    const part = doseOf(basis, [from, to])
    return part.ok
      ? say(
          'dose.stretch',
          { from: from.at, to: to.at, cool: from.temperature, warm: to.temperature, equivalent: part.value.equivalent },
          writer,
        )
      : part.problem.sentence
  })
  return [...stretches, say('dose.mean-rate', { rate: view.mean_rate }, writer)]
}
