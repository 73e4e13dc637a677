import {
  failed,
  type Problem,
  problem,
  type Reading,
  type Result,
  registry,
  sentenceIn,
  type UnitSystem,
} from '../kernel/index.js'
import { plain } from '../words/index.js'

/** Where a command writes, so that tests can read it. */
export interface Output {
  readonly out: (line: string) => void
  readonly err: (line: string) => void
}

export const terminal: Output = {
  out: (line) => process.stdout.write(`${line}\n`),
  err: (line) => process.stderr.write(`${line}\n`),
}

/** Options that every command with an answer has. */
export interface Common {
  readonly json?: boolean
  readonly explain?: boolean
  readonly us?: boolean
}

export const unitsOf = (options: Common): UnitSystem => (options.us ? 'us' : 'metric')

/** Prints a problem and gives its exit code. */
export function refuse(output: Output, found: Problem, options: Common = {}): number {
  const sentence = plain(sentenceIn(found, unitsOf(options)))
  if (options.json)
    output.out(JSON.stringify({ problem: { code: found.code, sentence, details: found.details } }, null, 2))
  else output.err(sentence)
  return registry[found.code].exit
}

export const usage = (reason: string): Problem => problem('command.usage', { reason })

/** What was typed for an option; a text with two readings is refused with both, since nobody is there to ask. */
export function typed<T>(reading: Reading<T>): Result<T> {
  if (reading.kind === 'read') return { ok: true, value: reading.value }
  if (reading.kind === 'refused') return failed(reading.problem)
  const choices = reading.choices.map((choice) => choice.label).join(', or ')
  return failed(
    problem('quantity.ambiguous', { question: `${reading.problem.sentence} Write one of them out: ${choices}.` }),
  )
}

/** A plain number of an option, with a point or a comma. */
export function numberOf(name: string, text: string): Result<number> {
  return /^[-+−]?\d+(?:[.,]\d+)?$/.test(text.trim())
    ? { ok: true, value: Number(text.trim().replace(',', '.').replace('−', '-')) }
    : failed(usage(`--${name} is “${text}”; it should be a number, like 1.1.`))
}
