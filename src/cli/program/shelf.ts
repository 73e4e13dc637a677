import { type Command, Option } from 'commander'
import { many, type Program } from './shape.js'

/** The shelf: what stands on it, mixing, using, testing, pouring, waste. */
export function shelf(program: Program): void {
  looking(program)
  keeping(program)
  using(program)
  pouring(program)
  files(program)
}

const json = (command: Command): Command =>
  command
    .option('--us', 'US units for bare numbers and in the answer')
    .option('--json', 'print JSON, as docs/openapi.json describes it')
const noted = (command: Command): Command =>
  json(command)
    .option('--at <instant>', 'when it was, like 2026-03-01T12:00:00Z; now when left out')
    .option('--note <text>', 'anything else')
const asked = () => import('../commands/shelf.js')
const books = () => import('../commands/shelf-book.js')

function looking({ add, output, done }: Program): void {
  json(add('shelf', 'What stands on the shelf, and what it can still do.')).action(async (options: object) =>
    done(await (await asked()).showShelf(options, output)),
  )
  json(add('lots [words...]', 'Lots of all times by words, newest first.')).action(
    async (words: string[], options: object) => done(await (await asked()).lots(words, options, output)),
  )
  json(add('lot <code>', 'One lot: where it stands, what it cost, and its timeline.')).action(
    async (code: string, options: object) => done(await (await asked()).lot(code, options, output)),
  )
  json(add('products', 'Products that are kept.'))
    .option('--starting', 'the generic ones by composition that come along')
    .action(async (options: object) => done(await (await asked()).products(options, output)))
  json(add('rinse <before> <next>', 'What comes between two baths in one graduate, and why.')).action(
    async (before: string, next: string, options: object) =>
      done(await (await import('../commands/rinse.js')).rinse(before, next, options, output)),
  )
}

function keeping({ add, output, done }: Program): void {
  json(add('keep-product [file]', 'Keeps a product that is stated in JSON.')).action(
    async (file: string | undefined, options: object) => done(await (await asked()).keepOne(file, options, output)),
  )
  json(add('add-container <kind> <name>', 'Adds a package, a bottle or a jug.'))
    .option('--holds <volume>', 'what it holds when it is full')
    .option('--product <id>', 'what is in a package')
    .addOption(
      new Option('--shape <shape>', 'how a bottle stands').choices(['stoppered', 'collapsible', 'tank', 'tray']),
    )
    .option('--use-by <day>', 'the date on a package')
    .option('--opened <day>', 'when a package was opened')
    .option('--price <price>', 'what a package cost, like “12.50 EUR”')
    .action(async (kind: string, name: string, options: object) =>
      done(await (await import('../commands/shelf-add.js')).addOne(kind, name, options, output)),
    )
  json(add('mix <product> <volume>', 'The numbered sheet of a mix; with --into it is finished and becomes a lot.'))
    .option('--parts <parts>', 'how it is diluted, like 1+4; undiluted when left out')
    .option('--rolls <count>', 'what it is for, where each roll wants so much')
    .option('--scale <grams>', 'what your scale tells apart; 0.1 when left out')
    .option('--into <bottle>', 'the mix is done and stands in this bottle')
    .option('--note <text>', 'anything else about the lot')
    .action(async (product: string, volume: string, options: object) =>
      done(await (await import('../commands/shelf-mix.js')).mix(product, volume, options, output)),
    )
}

function using({ add, output, done }: Program): void {
  noted(add('use-bath <bottle>', 'Books that a bath met film.'))
    .option('-f, --film <film>', '“135-24=2”, “tabular:120”, “4x5=12”; repeat for more', many, [])
    .option('--poured <volume>', 'what was poured out of the bottle')
    .option('--once', 'nothing of it goes back')
    .option('--back <bottle>', 'the bottle that it went back into; its own when left out')
    .option('--role <role>', 'what it was to be; a bottle of another role is refused')
    .option('--lot <id>', 'the lot that should be in it')
    .option('--over-count', 'it happened, past what the bath carries')
    .action(async (bottle: string, options: object) => done(await (await books()).use(bottle, options, output)))
  noted(add('test-bath <bottle> <test...>', 'Notes a test: clearing 55s, indicator purple, leader fully 60s, ph 5.1.'))
    .option('--fresh', 'the bath is new: later tests are held against this')
    .option('--family <family>', 'ordinary, tabular or high-iodide film')
    .action(async (bottle: string, test: string[], options: object) =>
      done(await (await books()).test(bottle, test, options, output)),
    )
  noted(add('station <bottle> <place>', 'Says which of two fixing baths a bottle is: first, second or none.')).action(
    async (bottle: string, place: string, options: object) =>
      done(await (await books()).station(bottle, place, options, output)),
  )
  noted(add('two-baths <first> <second>', 'Whether two fixing baths rotate; with --rotate they do.'))
    .option('--rotate', 'the first goes to the jug, the second becomes the first')
    .option('--jug <jug>', 'where the first goes')
    .option('--fresh <bottle>', 'what becomes the second')
    .action(async (first: string, second: string, options: object) =>
      done(await (await import('../commands/shelf-pair.js')).twoBaths(first, second, options, output)),
    )
}

function pouring({ add, output, done }: Program): void {
  const amount = (command: Command): Command =>
    noted(command).option('--amount <volume>', 'how much; all of it when left out')
  amount(add('pour-over <from> <into>', 'Pours from one bottle into another.'))
    .option('--top-up', 'fresh stock or replenisher into a bath in use')
    .action(async (from: string, into: string, options: object) =>
      done(await (await books()).pourOver(from, into, options, output)),
    )
  noted(add('measure-bath <bottle> <found>', 'What was found by measuring, where the book says otherwise.')).action(
    async (bottle: string, found: string, options: object) =>
      done(await (await books()).measure(bottle, found, options, output)),
  )
  amount(add('discard <bottle>', 'A spent bath leaves its bottle, into a jug.'))
    .option('--jug <jug>', 'the jug that it goes to')
    .addOption(new Option('--where <where>', 'where else').choices(['given-away', 'spilt', 'as-allowed']))
    .action(async (bottle: string, options: object) => done(await (await books()).discardOne(bottle, options, output)))
  amount(add('hand-over <jug> <to>', 'The waste in a jug is given to whoever takes it.')).action(
    async (jug: string, to: string, options: object) => done(await (await books()).giveAway(jug, to, options, output)),
  )
  noted(add('take-back <entry>', 'Takes an entry of the ledger back by a further one.')).action(
    async (entry: string, options: object) => done(await (await books()).takeOneBack(entry, options, output)),
  )
}

function files({ add, output, done }: Program): void {
  const papers = () => import('../commands/shelf-files.js')
  json(add('labels <file> <codes...>', 'Writes labels of bottles to a PDF, one a lot.'))
    .addOption(
      new Option('--layout <layout>', 'the paper of the bench when left out').choices(['A4', 'Letter', 'roll']),
    )
    .option('--base <address>', 'where the bench is reached, when the program does not run')
    .option('--used <count>', 'places of the first sheet that are used up')
    .action(async (file: string, codes: string[], options: object) =>
      done(await (await papers()).labels(file, codes, options, output)),
    )
  json(add('hand-over-record <entry> <file>', 'Writes the record of a hand-over to a PDF.'))
    .addOption(new Option('--paper <paper>', 'that of the bench when left out').choices(['A4', 'Letter']))
    .action(async (entry: string, file: string, options: object) =>
      done(await (await papers()).handOverPaper(entry, file, options, output)),
    )
  json(add('waste-log <file>', 'Writes all that went into jugs and out of them to a table.')).action(
    async (file: string, options: object) => done(await (await papers()).writeWasteLog(file, options, output)),
  )
}
