import {
  type Celsius,
  failed,
  ok,
  type Result,
  readTemperature,
  readTemperatureDifference,
} from '../../kernel/index.js'
import { answerView } from '../../lab/index.js'
import { developingTime, fitLaw, type TimeBasis } from '../../science/index.js'
import type { TimeAnswer } from '../../wire/index.js'
import { plain, say, type Writer, writerFor } from '../../words/index.js'
import { type BasisOptions, basisFrom } from '../basis.js'
import { board } from '../board.js'
import { type ModifierOptions, modifiersBy } from '../modifiers.js'
import { type Common, type Output, refuse, typed, unitsOf, usage } from '../output.js'

export interface TimeOptions extends Common, BasisOptions, ModifierOptions {
  readonly at?: string
  readonly stored?: string
  readonly thermometerError?: string
  readonly source?: string
}

interface Asked {
  readonly at: Celsius
  readonly thermometerError?: number
}

function askedOf(options: TimeOptions): Result<Asked> {
  if (options.at === undefined) return failed(usage('Say at what temperature: --at 21.6C.'))
  const at = typed(readTemperature(options.at, { system: unitsOf(options) }))
  if (!at.ok) return at
  const error =
    options.thermometerError === undefined
      ? ok(undefined)
      : typed(readTemperatureDifference(options.thermometerError, { system: unitsOf(options) }))
  if (!error.ok) return error
  return ok({
    at: at.value,
    ...(error.value === undefined ? {} : { thermometerError: Math.abs(error.value) }),
  })
}

/** Prints the developing time at a temperature, from points given here or from a stored time. */
export async function time(options: TimeOptions, output: Output): Promise<number> {
  const asked = askedOf(options)
  if (!asked.ok) return refuse(output, asked.problem, options)
  const factors = (ofTime: number | null) => modifiersBy(options, ofTime, writerFor(unitsOf(options)))
  const answer =
    options.stored === undefined
      ? fromPoints(options, asked.value, factors(null))
      : // The database is loaded when a time comes out of it: it takes longer than the answer.
        await (await import('../data/stored.js')).storedAnswer(options.stored, asked.value, factors, unitsOf(options))
  if (!answer.ok) return refuse(output, answer.problem, options)
  for (const line of options.json ? [JSON.stringify(answer.value.view, null, 2)] : linesOf(answer.value, options))
    output.out(options.json ? line : plain(line))
  return 0
}

function fromPoints(
  options: TimeOptions,
  asked: Asked,
  factors: ReturnType<typeof modifiersBy>,
): Result<{ view: TimeAnswer; basis: TimeBasis }> {
  if (!factors.ok) return factors
  const basis = basisFrom(options, unitsOf(options))
  if (!basis.ok) return basis
  const answer = developingTime(basis.value, asked.at, { ...asked, ...factors.value })
  if (!answer.ok) return answer
  return ok({
    view: answerView(answer.value, basis.value, options.source ?? '', writerFor(unitsOf(options))),
    basis: basis.value,
  })
}

function linesOf({ view, basis }: { view: TimeAnswer; basis: TimeBasis }, options: TimeOptions): string[] {
  const writer = writerFor(unitsOf(options))
  const lines = [view.sentence, bandLine(view, writer), ...view.warnings.map((warning) => warning.sentence)]
  return options.explain ? [...lines, '', ...explain(view, basis, writer)] : lines
}

const bandLine = (view: TimeAnswer, writer: Writer): string =>
  view.position === 'fixed'
    ? say('time.band-fixed', {}, writer)
    : say(
        'time.band',
        {
          bySheet: view.band.by_sheet_and_law_s as never,
          byThermometer: view.band.by_thermometer_s as never,
          error: view.band.thermometer_error_c,
        },
        writer,
      )

/** The working in two columns: the step, and where its number comes from. */
function explain(view: TimeAnswer, basis: TimeBasis, writer: Writer): string[] {
  const steps = board(view.working)
  if (basis.kind !== 'ordinary' || basis.points.length < 3) return steps
  const { worst } = fitLaw(basis, basis.law)
  const point = basis.points[worst.index]
  return point === undefined
    ? steps
    : [...steps, say('time.misfit', { misfit: worst.misfit, temperature: point.temperature }, writer)]
}
