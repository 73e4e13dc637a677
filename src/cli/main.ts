import { Command, CommanderError } from 'commander'
import { registry } from '../kernel/index.js'
import { examples } from './examples/index.js'
import { type Output, terminal } from './output.js'
import { baths } from './program/baths.js'
import { developing } from './program/developing.js'
import { keeping } from './program/keeping.js'
import { mixing } from './program/mixing.js'
import { negatives } from './program/negatives.js'
import { rolls } from './program/rolls.js'
import type { Program } from './program/shape.js'
import { shelf } from './program/shelf.js'
import { waste } from './program/waste.js'

const USAGE = registry['command.usage'].exit
function program(output: Output, done: (code: number) => void): Command {
  const root = new Command('wetside')
  root
    .description('Developing film by hand: times, doses, thermometers.')
    .exitOverride()
    .configureOutput({ writeOut: (text) => output.out(text.trimEnd()), writeErr: (text) => output.err(text.trimEnd()) })
  const add = (name: string, what: string) =>
    root
      .command(name)
      .description(what)
      .exitOverride()
      .addHelpText('after', () => `\nExample:\n${examples[name.split(' ')[0] as keyof typeof examples]}`)

  const parts: Program = { add, output, done }
  for (const declare of [developing, negatives, mixing, baths, waste, rolls, shelf, keeping]) declare(parts)
  root.command('start').description('Starts the program; PORT, HOST and DATA_DIR are taken from the environment.')
  return root
}

/** Runs one command line (without `node` and the script) and gives its exit code. */
export async function run(argv: readonly string[], output: Output = terminal): Promise<number> {
  let code = 0
  try {
    await program(output, (given) => {
      code = given
    }).parseAsync(argv.length === 0 ? ['--help'] : [...argv], { from: 'user' })
    return code
  } catch (thrown) {
    if (!(thrown instanceof CommanderError)) throw thrown
    return thrown.exitCode === 0 ? 0 : USAGE
  }
}

/** The help of the program and of every command, for docs/cli.md. */
export async function helpPages(): Promise<{ name: string; help: string }[]> {
  const pages: { name: string; help: string }[] = []
  for (const name of ['', ...Object.keys(examples)]) {
    const lines: string[] = []
    await run(name === '' ? ['--help'] : [name, '--help'], {
      out: (line) => void lines.push(line),
      err: (line) => void lines.push(line),
    })
    pages.push({ name: `wetside ${name}`.trim(), help: lines.join('\n') })
  }
  return pages
}
