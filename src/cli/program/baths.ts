import { type Command, Option } from 'commander'
import type { Common } from '../output.js'
import { answering, many, type Program } from './shape.js'

/** Film as rolls, fixers, age, replenishing, stop baths. */
export function baths(program: Program): void {
  fixers(program)
  lives(program)
}

function fixers({ add, output, done }: Program): void {
  answering(
    add('rolls [film...]', 'What film comes to in rolls, “135-24=2 4x5=12”; reads standard input without any.'),
  ).action(async (film: string[], options: Common) =>
    done(await (await import('../commands/rolls.js')).rolls(film, options, output)),
  )
  answering(bathOptions(add('fix [tests]', 'How long to fix now, rolls left in a fixer, two baths to rotate.')))
    .option('--fresh <time>', 'what a clip took to clear when the bath was fresh')
    .option('--now <time>', 'what it takes now')
    .addOption(new Option('--family <name>', 'emulsion of that clip').choices(['ordinary', 'tabular', 'high-iodide']))
    .option('--first-bath <done/of>', 'one kind of film through the first of two baths, “12/25”; repeat', many, [])
    .action(async (file: string | undefined, options: object) =>
      done(await (await import('../commands/fix.js')).fix(file, options, output)),
    )
}

/** The options by which a fixer in use is stated. */
export const bathOptions = (command: Command): Command =>
  command
    .option('--volume <volume>', 'how much fixer was mixed')
    .addOption(new Option('--kind <thiosulfate>', 'which thiosulfate; ammonium is the usual').choices(KINDS))
    .option('--rolls-per-litre <count>', 'what its label lets a litre carry; 20 when left out')
    .option('-f, --film <film>', 'film it has met, “120=3” or “tabular:135-36=2”; repeat', many, [])
    .option('--silver-limit <g/L>', 'your own limit of silver, below the guide’s')
    .option('--silver <g/m2=share>', 'silver of your film and the part that is fixed out, “5=0.6”')
    .option('--bottle <volume>', 'what the bottle holds now; goes with --fill')
    .option('--fill <volume>', 'what the tank takes')
    .option('--carried <volume>', 'what a fill does not give back; 20 mL when left out')
    .option('--rolls-per-fill <count>', 'rolls in one tank')

const KINDS = ['ammonium', 'sodium']

function lives({ add, output, done }: Program): void {
  answering(add('life [stretches]', 'How old a solution is by how it stood: rows of “half-full 12”, days each.'))
    .addOption(
      new Option('--keeps <kind>', 'what it is, for the days of common practice').choices([
        'stock-developer',
        'working-developer',
        'stop',
        'fixer',
        'opened-concentrate',
      ]),
    )
    .option('--days <state=days>', 'days it keeps in a state, from its label, “full=180”; repeat', many, [])
    .action(async (file: string | undefined, options: object) =>
      done(await (await import('../commands/life.js')).life(file, options, output)),
    )
  answering(add('replenish [book]', 'Where a replenished bath settles; a book of added, discarded, carried out.'))
    .option('--volume <volume>', 'what the bath holds')
    .option('--rate <volume>', 'what is replaced a roll')
    .option('--gives <mass>', 'what a roll releases into it, “50mg”')
    .option('--uses <mass>', 'what a roll uses up of it')
    .option('--replenisher <g/L>', 'how much of it the replenisher holds; none when left out')
    .option('--start <g/L>', 'how much of it the bath held when fresh; none when left out')
    .option('--rolls <count>', 'say what it holds after so many')
    .option('--within <percent>', 'how near counts as settled; 5 when left out')
    .action(async (file: string | undefined, options: object) =>
      done(await (await import('../commands/replenish.js')).replenish(file, options, output)),
    )
  answering(add('stop [file]', 'How many rolls a stop bath has left, and where water is the stop.'))
    .option('--volume <volume>', 'how much was mixed')
    .option('--percent <percent>', 'grams of acid in 100 mL')
    .addOption(new Option('--acid <name>', 'which acid').choices(['acetic', 'citric']))
    .option('--rolls <count>', 'rolls that went through it')
    .option('--published <count>', 'rolls a litre, as published for this bath')
    .option('--carried <volume>', 'developer that a roll brings along; 20 mL when left out')
    .option('--alkali <mol/L>', 'its alkali; 0.25 when left out')
    .addOption(
      new Option('--developer <kind>', 'what stands before it').choices(['ordinary', 'staining', 'strong-carbonate']),
    )
    .addOption(new Option('--fixer <kind>', 'what stands after it').choices(['acid', 'alkaline']))
    .action(async (file: string | undefined, options: object) =>
      done(await (await import('../commands/stop.js')).stop(file, options, output)),
    )
}
