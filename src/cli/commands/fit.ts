import { all, failed, ok, type Result } from '../../kernel/index.js'
import { type CurveName, fitNamedCurve, NAMED_CURVES, type NonlinearFit } from '../../science/index.js'
import type { FitAnswer, FitQuestion } from '../../wire/index.js'
import { say, type Writer, writerFor } from '../../words/index.js'
import { tell } from '../answer.js'
import { isJson, jsonIn } from '../asked.js'
import { board } from '../board.js'
import { listText, rowsOf } from '../lists.js'
import { type Common, type Output, refuse, unitsOf, usage } from '../output.js'

export interface FitOptions extends Common {
  readonly start?: string
}

/** Prints what least squares make of pairs by a named curve, and why it stopped. */
export async function fit(
  curve: string,
  file: string | undefined,
  options: FitOptions,
  output: Output,
): Promise<number> {
  const text = await listText(file)
  if (!text.ok) return refuse(output, text.problem, options)
  const question = isJson(text.value)
    ? await jsonIn(text.value, 'the question', 'fit-question')
    : asked(curve, text.value, options)
  if (!question.ok) return refuse(output, question.problem, options)
  const found = fitNamedCurve(question.value.curve, question.value.points, question.value.start)
  if (!found.ok) return refuse(output, found.problem, options)
  const writer = writerFor(unitsOf(options))
  const view = viewOf(question.value, found.value, writer)
  const lines = [view.sentence, ...valueLines(found.value, writer), ...scatterLine(found.value, writer)]
  return tell({ view, lines, working: () => board(view.working) }, options, output)
}

function asked(name: string, text: string, options: FitOptions): Result<FitQuestion> {
  if (!(name in NAMED_CURVES))
    return failed(usage(`“${name}” is no curve; it should be one of ${Object.keys(NAMED_CURVES).join(', ')}.`))
  const points = all(rowsOf(text).rows.map(pairIn))
  if (!points.ok) return points
  const start = options.start === undefined ? ok(undefined) : scientific(options.start, '--start “500 0.0001”')
  if (!start.ok) return start
  return ok({
    curve: name as CurveName,
    points: points.value,
    ...(start.value === undefined ? {} : { start: start.value }),
  })
}

function pairIn(row: string): Result<[number, number]> {
  const numbers = scientific(row, '77.6 10.07')
  if (!numbers.ok) return numbers
  const [x, y, ...rest] = numbers.value
  return x === undefined || y === undefined || rest.length > 0
    ? failed(usage(`“${row}” is not a pair; write x and y, like “77.6 10.07”.`))
    : ok([x, y])
}

/** Numbers of science, as 1e-4 too. */
function scientific(text: string, like: string): Result<number[]> {
  const numbers = text
    .trim()
    .split(/[,;\s]+/)
    .map(Number)
  return numbers.every(Number.isFinite) && text.trim() !== ''
    ? ok(numbers)
    : failed(usage(`“${text}” is not a list of numbers, like ${like}.`))
}

function viewOf({ curve, points }: FitQuestion, found: NonlinearFit, writer: Writer): FitAnswer {
  const { formula } = NAMED_CURVES[curve]
  const { value, standardErrors, covariance, residuals, stopped, iterations } = found
  return {
    curve,
    value: [...value],
    standard_errors: standardErrors && [...standardErrors],
    covariance: covariance?.map((row) => [...row]) ?? null,
    residuals: [...residuals],
    sum_of_squares: found.sumOfSquares,
    scatter: found.residualStandardDeviation,
    degrees_of_freedom: found.degreesOfFreedom,
    stopped,
    iterations,
    evaluations: found.evaluations,
    sentence: say('fit.stopped', { formula, stopped, iterations }, writer),
    working: [
      ...points.map(([x, y], i) => ({
        line: say('fit.work.residual', { x, y, residual: residuals[i] as number }, writer),
        source: say('fit.source.data', {}, writer),
      })),
      ...(covariance ?? []).map((values, i) => ({
        line: say('fit.work.covariance', { row: i + 1, values }, writer),
        source: say('fit.source.covariance', {}, writer),
      })),
    ],
  }
}

const valueLines = ({ value, standardErrors }: NonlinearFit, writer: Writer): string[] =>
  value.map((one, i) =>
    say('fit.value', { parameter: `b${i + 1}`, value: one, error: standardErrors?.[i] ?? null }, writer),
  )

const scatterLine = ({ residualStandardDeviation: scatter, degreesOfFreedom: count }: NonlinearFit, writer: Writer) =>
  scatter === null ? [] : [say('fit.scatter', { scatter, count }, writer)]
