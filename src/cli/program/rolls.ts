import { type Command, Option } from 'commander'
import type { Program } from './shape.js'

/** Rolls at the bench: taking in, finding, moving on, orders, paper, and the register as a file. */
export function rolls({ add, output, done }: Program): void {
  takingIn({ add, output, done })
  looking({ add, output, done })
  files({ add, output, done })
}

const json = (command: Command): Command => command.option('--json', 'print JSON, as docs/schemas describes it')

function takingIn({ add, output, done }: Program): void {
  json(add('take-in [lines]', 'Takes rolls in: one from options, or a list with a heading (or a question in JSON).'))
    .option('--film <name>', 'the film of one roll; without it a list is read')
    .addOption(
      new Option('--process <process>', 'black-and-white when left out').choices([
        'black-and-white',
        'colour-negative',
        'colour-reversal',
      ]),
    )
    .option('--format <format>', '135, 135-24, 120, 4x5 and so on; 135 when left out')
    .option('--whose <name>', 'whose film it is; your own when left out')
    .option('--index <index>', 'the index it was exposed at')
    .option('--wanted <wanted>', '“normal”, “as 800”, “push 1” or “contrast 0.62”')
    .option('--due <day>', 'by when, like 2026-12-24')
    .option('--note <text>', 'anything else')
    .option('--order <id>', 'the order they belong to')
    .option('--dry-run', 'only say what would be taken in')
    .action(async (file: string | undefined, options: object) =>
      done(await (await import('../commands/take-in.js')).takeIn(file, options, output)),
    )
  json(add('move-rolls <state> <numbers...>', 'Moves rolls a step on: loaded, developed, hung, sleeved, scanned, …'))
    .option('--hook <name>', 'where they hang')
    .option('--reason <text>', 'what happened; lost and ruined need it')
    .option('--run <id>', 'the run they are loaded for')
    .option('--at <instant>', 'when it was, like 2026-03-01T12:00:00Z; now when left out')
    .action(async (state: string, numbers: string[], options: object) =>
      done(await (await import('../commands/bench-rolls.js')).move(state, numbers, options, output)),
    )
}

function looking({ add, output, done }: Program): void {
  json(add('find-rolls [words...]', 'Rolls by words, newest number first.'))
    .option('--state <states>', 'one or more, with commas between')
    .option('--film <name>', 'of this film')
    .option('--whose <name>', 'of this person')
    .option('--due-by <day>', 'due by this day')
    .option('--order <id>', 'of this order')
    .option('--most <count>', 'how many are shown; 50 when left out')
    .action(async (words: string[], options: object) =>
      done(await (await import('../commands/bench-rolls.js')).find(words, options, output)),
    )
  json(add('roll <number>', 'One roll with its way, by its number or what its sticker’s code holds.')).action(
    async (number: string, options: object) =>
      done(await (await import('../commands/bench-rolls.js')).show(number, options, output)),
  )
  json(add('orders [id]', 'Orders, newest first; or one with its rolls.')).action(
    async (id: string | undefined, options: object) =>
      done(await (await import('../commands/bench-rolls.js')).orders(id, options, output)),
  )
}

const paper = (command: Command): Command =>
  json(command)
    .addOption(new Option('--paper <paper>', 'that of the bench when left out').choices(['A4', 'Letter']))
    .option('--base <address>', 'where the bench is reached, when the program does not run')

function files({ add, output, done }: Program): void {
  paper(add('stickers <file> [numbers...]', 'Writes paired stickers to a PDF: two a roll, number and code.'))
    .option('--order <id>', 'of all rolls of this order')
    .option('--used <count>', 'places of the first sheet that are used up')
    .action(async (file: string, numbers: string[], options: object) =>
      done(await (await import('../commands/roll-files.js')).stickers(file, numbers, options, output)),
    )
  paper(add('slip <order> <file>', 'Writes the slip of an order to a PDF.'))
    .option('--token <token>', 'of the private link that was made for it')
    .action(async (order: string, file: string, options: object) =>
      done(await (await import('../commands/roll-files.js')).slip(order, file, options, output)),
    )
  json(add('export-rolls <file>', 'Writes the whole register of rolls: a table for .csv, else JSON.')).action(
    async (file: string, options: object) =>
      done(await (await import('../commands/roll-files.js')).exportRolls(file, options, output)),
  )
  json(add('import-rolls <file>', 'Takes an exported register in, all of it or nothing.')).action(
    async (file: string, options: object) =>
      done(await (await import('../commands/roll-files.js')).importRolls(file, options, output)),
  )
}
