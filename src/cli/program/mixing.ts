import { Option } from 'commander'
import type { Common } from '../output.js'
import { answering, many, type Program } from './shape.js'

/** What comes before the pour: how warm, and how much of what. */
export function mixing(program: Program): void {
  temper(program)
  dilute(program)
  formula(program)
}

const TEMPER = ['taps', 'together', 'pour', 'ice', 'standing', 'cold', 'baths']
const DILUTE = ['ratio', 'chain', 'into', 'stock', 'blend', 'percent', 'acetic', 'floor', 'measure', 'drops']

function temper({ add, output, done }: Program): void {
  answering(
    add('temper [file]', 'Warm and cold before the pour; reads readings of what stands, or a question in JSON.'),
  )
    .addOption(new Option('--for <what>', 'what it is about').choices(TEMPER))
    .option('--want <temperature>', 'the temperature you want')
    .option('--volume <volume>', 'how much of it')
    .option('--hot <temperature>', 'the hot water')
    .option('--cold <temperature>', 'the cold water')
    .option('-t, --thing <thing>', 'water, jug, tank, reels or film, “steel 240g 18C”; repeat for more', many, [])
    .option('--from <temperature>', 'what it starts from')
    .option('--around <temperature>', 'the room, or the water it stands in')
    .option('--constant <time>', 'its time constant, when you know it')
    .addOption(new Option('--material <name>', 'of the vessel, to guess it').choices(['steel', 'plastic', 'glass']))
    .addOption(new Option('--in <what>', 'what the vessel stands in').choices(['air', 'water']))
    .option('--reading-error <degrees>', 'give or take of a reading, in °C')
    .option('--after <time>', 'how long it stands')
    .option('--at <temperature>', 'temperature of a cold bath')
    .option('-b, --bath <bath>', 'a bath in its order, “Fix 21C”; the one called developer develops', many, [])
    .action(async (file: string | undefined, options: Common) =>
      done(await (await import('../commands/temper.js')).temper(file, options, output)),
    )
}

function dilute({ add, output, done }: Program): void {
  answering(add('dilute [file]', 'Solutions: ratios, stocks, percent, floors for each roll, what to measure with.'))
    .addOption(new Option('--for <what>', 'what it is about; a ratio when not said').choices(DILUTE))
    .option('-r, --ratio <ratio>', 'how it is mixed, “1+9”; repeat for a chain or other dilutions', many, [])
    .option('--total <volume>', 'how much of it in the end')
    .option('-s, --stock <volume>', 'what there is of a part, or “enough”, in the order of the ratio', many, [])
    .option('--amount <volume>', 'a volume to pour in, to measure or to count in drops')
    .option('--from <percent>', 'strength at hand')
    .option('--weak <percent>', 'strength of the weaker one; water when not said')
    .option('--want <percent>', 'strength you want')
    .option('--density <g/mL>', 'density, for a percentage by weight')
    .option('--floor <volume>', 'least concentrate for each roll')
    .option('--rolls <count>', 'rolls in the tank')
    .option('--tank <tank>', 'a tank you have, “two-reel 600mL 2”; repeat for more', many, [])
    .option('-g, --graduate <graduate>', 'what you measure with, “100mL 2mL” from mark to mark', many, [])
    .option('--drops-each <count>', 'drops of your dropper in a millilitre')
    .action(async (file: string | undefined, options: Common) =>
      done(await (await import('../commands/dilute.js')).dilute(file, options, output)),
    )
}

function formula({ add, output, done }: Program): void {
  answering(add('formula [file]', 'A bath mixed by weight: what to weigh, in which order, what to look out for.'))
    .option('--mix <formula>', 'which, by its composition, “plain-hypo”, or a file of your own, “mine.json”')
    .option('--volume <volume>', 'how much of it in the end')
    .option('--all-of <salt=mass>', 'as much of it as there is of one salt, “hypo=500g”')
    .option('--have <salt>', 'what is at hand, “hypo-anhydrous”, or for what, “hypo=hypo-anhydrous”; repeat', many, [])
    .option('--scale <mass>', 'what your scale tells apart; 0.1 g when left out')
    .action(async (file: string | undefined, options: Common) =>
      done(await (await import('../commands/formula.js')).formula(file, options, output)),
    )
}
