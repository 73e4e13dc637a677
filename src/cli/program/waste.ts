import { type Command, Option } from 'commander'
import { bathOptions } from './baths.js'
import { answering, type Program } from './shape.js'

/** What washing leaves in film, silver in a waste jug, and why sulfite baths are not acidified. */
export function waste({ add, output, done }: Program): void {
  const wash = bathOptions(
    add('wash [steps]', 'What a wash leaves: rows of “7 x fill 300mL 3:00”, “stand 300mL 5:00”, “run 300mL 30:00 1L”.'),
  )
  answering(washOptions(wash)).action(async (file: string | undefined, options: object) =>
    done(await (await import('../commands/wash.js')).wash(file, options, output)),
  )
  answering(add('silver [pours]', 'Silver in a waste jug: rows of “1L rolls 12”, “500mL read 2.5”, “2L water”.'))
    .option('--limit <mg/L>', 'your own limit, from whoever takes the waste')
    .option('--silver <g/m2=share>', 'silver of your film and the part that is fixed out, “5=0.6”')
    .action(async (file: string | undefined, options: object) =>
      done(await (await import('../commands/silver.js')).silver(file, options, output)),
    )
  answering(add('fumes [file]', 'On paper only: the sulfur dioxide that acid frees from a sulfite bath.'))
    .option('--sulfite <g/L>', 'anhydrous sodium sulfite in the bath')
    .option('--bath <volume>', 'how much of it; a litre when left out')
    .option('--acid <volume>', 'how much acetic acid is poured in')
    .option('--percent <percent>', 'grams of that acid in 100 mL; 5, as vinegar, when left out')
    .option('--room <m3>', 'the room; 10 m³ when left out')
    .action(async (file: string | undefined, options: object) =>
      done(await (await import('../commands/fumes.js')).fumes(file, options, output)),
    )
}

const washOptions = (command: Command): Command =>
  command
    .option('--fresh <time>', 'what a clip took to clear in this fixer when it was fresh')
    .option('--now <time>', 'what it takes now')
    .option('--fixer <g/L>', 'thiosulfate in the fixer; 110 is assumed')
    .option('--rolls-washed <count>', 'rolls in the tank; one when left out')
    .option('--at <temperature>', 'temperature of the water; 20 °C when left out')
    .addOption(new Option('--rinse <what>', 'rinsed before the first fill').choices(['walls', 'film-and-walls']))
    .option('--hardened', 'the film was hardened')
    .option('--wash-aid', 'after a sulfite wash aid')
    .option('--half-life <time>', 'your own half-life in the gelatin')
