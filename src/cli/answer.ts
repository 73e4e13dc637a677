import type { Result } from '../kernel/index.js'
import { plain } from '../words/index.js'
import { board } from './board.js'
import { type Common, type Output, refuse } from './output.js'

/** What a command has to say. */
export interface Answer {
  /** The answer for other programs, in the published shape. */
  readonly view: object
  /** The same as sentences. */
  readonly lines: readonly string[]
  /** The working, line by line, each number with where it comes from; worked out only when asked for. */
  readonly working: () => readonly string[]
}

/** Prints an answer in the way that was asked for; gives the exit code. */
export function tell(answer: Answer, options: Common, output: Output): number {
  if (options.json) {
    output.out(JSON.stringify(answer.view, null, 2))
    return 0
  }
  const lines = options.explain ? [...answer.lines, '', ...answer.working()] : answer.lines
  for (const line of lines) output.out(plain(line))
  return 0
}

/** What commands of the solutions answer: the published shape with its sentences and its working in it. */
interface Worked {
  readonly sentences: readonly string[]
  readonly working: Parameters<typeof board>[0]
}

/** Prints such an answer, or why there is none; gives the exit code. */
export function tellWorked(found: Result<Worked>, options: Common, output: Output): number {
  if (!found.ok) return refuse(output, found.problem, options)
  const { sentences, working } = found.value
  return tell({ view: found.value, lines: sentences, working: () => board(working) }, options, output)
}
