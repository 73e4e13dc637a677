import { failed, ok, type Result } from '../../kernel/index.js'
import { gradeFor, printGamma, rangeAtFilm, roomBetween } from '../../science/index.js'
import type { RangeAnswer } from '../../wire/index.js'
import { say, type WorkingLine, type Writer, writerFor } from '../../words/index.js'
import { tellWorked } from '../answer.js'
import { numbersOf } from '../options.js'
import { type Common, type Output, refuse, unitsOf, usage } from '../output.js'

const NAMES = ['subject', 'flare', 'gradient', 'from', 'to', 'paper'] as const
export interface RangeOptions extends Common, Partial<Record<(typeof NAMES)[number], string>> {}
type Numbers = Readonly<Partial<Record<(typeof NAMES)[number], number>>>

/** One thing that can be said from the numbers given. */
interface Part {
  readonly view: Partial<RangeAnswer>
  readonly said: string
  readonly work: WorkingLine
}

/** Prints how the range of a subject goes through lens, film and paper, as far as the numbers given reach. */
export async function range(options: RangeOptions, output: Output): Promise<number> {
  const writer = writerFor(unitsOf(options))
  const numbers = numbersOf(options, NAMES)
  if (!numbers.ok) return refuse(output, numbers.problem, options)
  const parts = partsOf(numbers.value, writer)
  if (!parts.ok) return refuse(output, parts.problem, options)
  const view: RangeAnswer = {
    at_film: null,
    room: null,
    density_range: null,
    paper_grade: null,
    print_gradient: null,
    ...Object.assign({}, ...parts.value.map((part) => part.view)),
    sentences: parts.value.map(({ said }) => said),
    working: parts.value.map(({ work }) => work),
  }
  return tellWorked(ok(view), options, output)
}

function partsOf(numbers: Numbers, writer: Writer): Result<Part[]> {
  const parts: Part[] = []
  for (const step of [atFilm, inNegative, room, onPaper]) {
    const part = step(numbers, writer, parts)
    if (!part.ok) return part
    parts.push(...part.value)
  }
  return parts.length > 0
    ? ok(parts)
    : failed(usage('Say a subject and its flare, or a gradient with two densities, or with a paper: --subject 160.'))
}

type Step = (numbers: Numbers, writer: Writer, before: readonly Part[]) => Result<Part[]>

const atFilm: Step = ({ subject, flare = 0 }, writer) => {
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

const room: Step = ({ from, to, gradient }, writer) => {
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

const onPaper: Step = ({ gradient, paper }, writer) => {
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
