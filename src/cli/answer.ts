import { plain } from '../words/index.js'
import type { Common, Output } from './output.js'

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
