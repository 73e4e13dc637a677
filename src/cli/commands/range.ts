import { andThen, failed, ok, type Result } from '../../kernel/index.js'
import { gradeFor, printGamma, rangeAtFilm, roomBetween } from '../../science/index.js'
import type { RangeAnswer, RangeQuestion } from '../../wire/index.js'
import { say, type WorkingLine, type Writer, writerFor } from '../../words/index.js'
import { tellWorked } from '../answer.js'
import { questionIn } from '../asked.js'
import { numbersOf } from '../options.js'
import { type Common, type Output, unitsOf, usage } from '../output.js'

const NAMES = ['subject', 'flare', 'gradient', 'from', 'to', 'paper'] as const
export interface RangeOptions extends Common, Partial<Record<(typeof NAMES)[number], string>> {}

/** One thing that can be said from the numbers given. */
interface Part {
  readonly view: Partial<RangeAnswer>
  readonly said: string
  readonly work: WorkingLine
}

/** Prints how the range of a subject goes through lens, film and paper, as far as the numbers given reach. */
export async function range(file: string | undefined, options: RangeOptions, output: Output): Promise<number> {
  const question = file === undefined ? asked(options) : await questionIn(file, 'range-question')
  return tellWorked(
    andThen(question, (one) => answered(one, writerFor(unitsOf(options)))),
    options,
    output,
  )
}

function asked(options: RangeOptions): Result<RangeQuestion> {
  const numbers = numbersOf(options, NAMES)
  if (!numbers.ok) return numbers
  const { from: from_density, to: to_density, paper: paper_gradient, flare = 0, ...light } = numbers.value
  return ok({ flare, from_density, to_density, paper_gradient, ...light })
}

function answered(question: RangeQuestion, writer: Writer): Result<RangeAnswer> {
  const parts: Part[] = []
  for (const step of [atFilm, inNegative, room, onPaper]) {
    const part = step(question, writer, parts)
    if (!part.ok) return part
    parts.push(...part.value)
  }
  if (parts.length === 0)
    return failed(
      usage('Say a subject and its flare, or a gradient with two densities, or with a paper: --subject 160.'),
    )
  return ok({
    at_film: null,
    room: null,
    density_range: null,
    paper_grade: null,
    print_gradient: null,
    ...Object.assign({}, ...parts.map((part) => part.view)),
    sentences: parts.map(({ said }) => said),
    working: parts.map(({ work }) => work),
  })
}

type Step = (question: RangeQuestion, writer: Writer, before: readonly Part[]) => Result<Part[]>

const atFilm: Step = ({ subject, flare }, writer) => {
  if (subject === undefined) return ok([])
  const found = rangeAtFilm(subject, flare)
  if (!found.ok) return found
  const { ratio, logRange, lost } = found.value
  return ok([
    {
      view: { at_film: { ratio, log_range: logRange, lost } },
      said: say('range.at-film', { subject, flare, ratio, logRange, lost }, writer),
      work: {
        line: say('range.work.flare', { subject, flare, ratio }, writer),
        source: say('range.source.flare', {}, writer),
      },
    },
  ])
}

/** Density range of the negative, and the paper for it where there is one. */
const inNegative: Step = ({ gradient }, writer, before) => {
  const logRange = before[0]?.view.at_film?.log_range
  if (logRange === undefined || gradient === undefined) return ok([])
  const span = logRange * gradient
  const negative: Part = {
    view: { density_range: span },
    said: say('range.negative', { range: span }, writer),
    work: {
      line: say('range.work.negative', { logRange, gradient, range: span }, writer),
      source: say('range.source.gradient', {}, writer),
    },
  }
  const grade = gradeFor(span)
  if (!grade.ok) return grade
  const { grade: number, from, to, mark } = grade.value
  const paper: Part = {
    view: { paper_grade: number },
    said: say('range.grade', { grade: number, range: span }, writer),
    work: {
      line: say('range.work.grade', { grade: number, from, to }, writer),
      source: say(mark === 'source' ? 'range.source.source' : 'range.source.memory', {}, writer),
    },
  }
  return ok([negative, paper])
}

const room: Step = ({ from_density: from, to_density: to, gradient }, writer) => {
  if (from === undefined && to === undefined) return ok([])
  if (from === undefined || to === undefined || gradient === undefined)
    return failed(usage('Room between two densities needs --from, --to and --gradient.'))
  const found = roomBetween(from, to, gradient)
  if (!found.ok) return found
  const { logRange, stops } = found.value
  return ok([
    {
      view: { room: { log_range: logRange, stops } },
      said: say('range.room', { from, to, logRange, stops }, writer),
      work: {
        line: say('range.work.room', { from, to, gradient, logRange }, writer),
        source: say('range.source.gradient', {}, writer),
      },
    },
  ])
}

const onPaper: Step = ({ gradient, paper_gradient: paper }, writer) => {
  if (paper === undefined) return ok([])
  if (gradient === undefined) return failed(usage('A print needs the gradient of the film too: --gradient 0.60.'))
  const found = printGamma(gradient, paper)
  if (!found.ok) return found
  const values = { film: gradient, paper, product: found.value }
  return ok([
    {
      view: { print_gradient: found.value },
      said: say('range.print', values, writer),
      work: { line: say('range.work.print', values, writer), source: say('range.source.print', {}, writer) },
    },
  ])
}
