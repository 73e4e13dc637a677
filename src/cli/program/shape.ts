import { type Command, Option } from 'commander'
import type { Output } from '../output.js'

/** What a concept's commands are declared with. */
export interface Program {
  /** A new command; its worked example is added to its help. */
  readonly add: (name: string, what: string) => Command
  readonly output: Output
  /** Told the exit code when a command has ended. */
  readonly done: (code: number) => void
}

/** Gathers an option that may be repeated. */
export const many = (value: string, before: string[]): string[] => [...before, value]

/** The options by which a developing time is stated. */
export const stated = (command: Command): Command =>
  command
    .option('-p, --point <point>', 'a time of the sheet with its temperature, “20C 9:30”; repeat for more', many, [])
    .addOption(
      new Option('--law <law>', 'which law carries it to other temperatures').choices(['exponential', 'arrhenius']),
    )
    .addOption(new Option('--kind <kind>', 'what kind of developer').choices(['ordinary', 'single-bath', 'fixed']))
    .option('--class <class>', 'composition, for the coefficient assumed with one point')
    .option('--coefficient <K>', 'the developer’s own ten-degree coefficient')

/** The options that every command with an answer has. */
export const answering = (command: Command): Command =>
  command
    .option('--us', 'Fahrenheit for bare numbers and in the answer')
    .option('--json', 'print JSON, as docs/schemas describes it')
    .option('--explain', 'print the working, line by line, with where each number comes from')
