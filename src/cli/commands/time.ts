import {
  type Celsius,
  failed,
  ok,
  type Result,
  readTemperature,
  readTemperatureDifference,
} from '../../kernel/index.js'
import { answerView, basisOf, timeStatementOf } from '../../lab/index.js'
import { developingTime, fitLaw, type TimeBasis } from '../../science/index.js'
import type { TimeAnswer, TimeQuestion } from '../../wire/index.js'
import { plain, say, type Writer, writerFor } from '../../words/index.js'
import { questionIn } from '../asked.js'
import { type BasisOptions, basisFrom } from '../basis.js'
import { board } from '../board.js'
import { type ModifierOptions, type Modifying, modifiersBy, modifiersOf } from '../modifiers.js'
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

/** Prints the developing time at a temperature, from points given here, a stored time, or a question in JSON. */
export async function time(file: string | undefined, options: TimeOptions, output: Output): Promise<number> {
  const answer = file === undefined ? await byOptions(options) : await byJson(file, options)
  if (!answer.ok) return refuse(output, answer.problem, options)
  for (const line of options.json ? [JSON.stringify(answer.value.view, null, 2)] : linesOf(answer.value, options))
    output.out(options.json ? line : plain(line))
  return 0
}

interface Answered {
  readonly view: TimeAnswer
  readonly basis: TimeBasis
}

async function byOptions(options: TimeOptions): Promise<Result<Answered>> {
  const asked = askedOf(options)
  if (!asked.ok) return asked
  const writer = writerFor(unitsOf(options))
  const factors = (ofTime: number | null) => modifiersBy(options, ofTime, writer)
  if (options.stored !== undefined) {
    // The database is loaded when a time comes out of it: it takes longer than the answer.
    const { storedAnswer } = await import('../data/stored.js')
    return storedAnswer(options.stored, asked.value, factors, unitsOf(options))
  }
  const basis = basisFrom(options, unitsOf(options))
  return basis.ok ? answered(basis.value, asked.value, factors(null), options.source ?? '', writer) : basis
}

/** JSON holds the whole question; of the options only those of the answer are looked at. */
async function byJson(file: string, options: TimeOptions): Promise<Result<Answered>> {
  const question = await questionIn(file, 'time-question')
  if (!question.ok) return question
  const { time, at_c, thermometer_error_c: error } = question.value
  const basis = basisOf(timeStatementOf(time))
  if (!basis.ok) return basis
  const writer = writerFor(unitsOf(options))
  const factors = modifiersOf(modifyingOf(question.value), time.exposure_index, writer)
  const asked = { at: at_c as Celsius, ...(error === undefined ? {} : { thermometerError: error }) }
  return answered(basis.value, asked, factors, time.source_words, writer)
}

function modifyingOf({ of_index, exposed_at, push, agitation, use, pre_wet, factor }: TimeQuestion): Modifying {
  return {
    ...(of_index === undefined ? {} : { ofIndex: of_index }),
    ...(exposed_at === undefined ? {} : { exposedAt: exposed_at }),
    ...(push === undefined ? {} : { push }),
    ...(agitation === undefined ? {} : { agitation }),
    ...(use === undefined ? {} : { use }),
    ...(pre_wet === undefined ? {} : { preWet: pre_wet }),
    ...(factor === undefined ? {} : { factor }),
  }
}

function answered(
  basis: TimeBasis,
  asked: Asked,
  factors: ReturnType<typeof modifiersBy>,
  source: string,
  writer: Writer,
): Result<Answered> {
  if (!factors.ok) return factors
  const answer = developingTime(basis, asked.at, { ...asked, ...factors.value })
  return answer.ok ? ok({ view: answerView(answer.value, basis, source, writer), basis }) : answer
}

function linesOf({ view, basis }: Answered, options: TimeOptions): string[] {
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
