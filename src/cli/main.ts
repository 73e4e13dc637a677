import { Command, CommanderError, Option } from 'commander'
import { registry } from '../kernel/index.js'
import { examples } from './examples.js'
import { type Common, type Output, terminal } from './output.js'

const USAGE = registry['command.usage'].exit
const many = (value: string, before: string[]): string[] => [...before, value]

/** The options by which a developing time is stated. */
const stated = (command: Command): Command =>
  command
    .option('-p, --point <point>', 'a time of the sheet with its temperature, “20C 9:30”; repeat for more', many, [])
    .addOption(
      new Option('--law <law>', 'which law carries it to other temperatures').choices(['exponential', 'arrhenius']),
    )
    .addOption(new Option('--kind <kind>', 'what kind of developer').choices(['ordinary', 'single-bath', 'fixed']))
    .option('--class <class>', 'composition, for the coefficient assumed with one point')
    .option('--coefficient <K>', 'the developer’s own ten-degree coefficient')

const answering = (command: Command): Command =>
  command
    .option('--us', 'Fahrenheit for bare numbers and in the answer')
    .option('--json', 'print JSON, as docs/schemas describes it')
    .option('--explain', 'print the working, line by line, with where each number comes from')

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

  answering(stated(add('time', 'The developing time at a temperature.')))
    .option('--at <temperature>', 'temperature of the developer')
    .option('--stored <name>', 'a stored time: its id, or words of its film, index and developer')
    .option('--factor <factor>', 'one further factor, such as 1.10 for a second use of the bath')
    .option('--thermometer-error <degrees>', 'how far off the thermometer may be')
    .option('--source <words>', 'the words of the source, for --explain')
    .action(async (options: object) => done(await (await import('./commands/time.js')).time(options, output)))
  answering(
    stated(
      add('dose [file]', 'How much development a list of readings has done; reads standard input without a file.'),
    ),
  ).action(async (file: string | undefined, options: Common) =>
    done(await (await import('./commands/dose.js')).dose(file, options, output)),
  )
  answering(
    stated(add('score <list>', 'The score of a list of baths, every job at its second: an id, or a file of JSON.')),
  )
    .option('--developer-time <time>', 'developing time, when no points are given')
    .option('--at <temperature>', 'temperature of the developer')
    .action(async (list: string, options: object) =>
      done(await (await import('./commands/score.js')).score(list, options, output)),
    )
  answering(add('thermometer', 'The true temperature behind a reading.'))
    .option('--read <temperature>', 'what it reads')
    .option('-c, --check <read=true>', 'a check: what it read and what was true; repeat for more', many, [])
    .action(async (options: object) =>
      done(await (await import('./commands/thermometer.js')).thermometer(options, output)),
    )
  answering(add('table [file]', 'Reads a table of times as pasted, line by line; keeps nothing.')).action(
    async (file: string | undefined, options: Common) =>
      done(await (await import('./commands/table.js')).table(file, options, output)),
  )
  add('backup <file>', 'Writes everything kept to one file.').action(async (file: string) =>
    done(await (await import('./commands/backup.js')).backup(file, output)),
  )
  add('restore <file>', 'Puts a backup in place of everything kept.')
    .option('--replace', 'yes, replace what is kept now')
    .action(async (file: string, options: object) =>
      done(await (await import('./commands/backup.js')).restore(file, options, output)),
    )
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
