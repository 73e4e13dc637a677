import { Option } from 'commander'
import type { Common } from '../output.js'
import { answering, many, type Program, stated } from './shape.js'

/** Times, doses, scores, thermometers. */
export function developing({ add, output, done }: Program): void {
  answering(stated(add('time [file]', 'The developing time at a temperature; a file holds the question as JSON.')))
    .option('--at <temperature>', 'temperature of the developer')
    .option('--stored <name>', 'a stored time: its id, or words of its film, index and developer')
    .option('--factor <factor>', 'one further factor, such as 1.10 for a second use of the bath')
    .option('--of-index <index>', 'the index that the time is for; a stored time knows its own')
    .option('--exposed-at <index>', 'the index the film was exposed at; pushes or pulls by practice')
    .option('--push <factor>', 'your own factor for push or pull, in place of the practised one')
    .addOption(new Option('--agitation <way>', 'how it is turned, by practice').choices(['continuous', 'rotary']))
    .option('--use <count>', 'which use of the bath this is, by practice: 1 is fresh')
    .option('--pre-wet <factor>', 'your own factor for a pre-wet that the sheet does not have')
    .option('--thermometer-error <degrees>', 'how far off the thermometer may be')
    .option('--source <words>', 'the words of the source, for --explain')
    .action(async (file: string | undefined, options: object) =>
      done(await (await import('../commands/time.js')).time(file, options, output)),
    )
  answering(
    stated(
      add('dose [file]', 'How much development a list of readings has done; reads standard input without a file.'),
    ),
  ).action(async (file: string | undefined, options: Common) =>
    done(await (await import('../commands/dose.js')).dose(file, options, output)),
  )
  answering(
    stated(
      add(
        'score <list>',
        'The score of a list of baths, every job at its second: an id, a file of JSON, or - for a question in JSON.',
      ),
    ),
  )
    .option('--developer-time <time>', 'developing time, when no points are given')
    .option('--at <temperature>', 'temperature of the developer')
    .action(async (list: string, options: object) =>
      done(await (await import('../commands/score.js')).score(list, options, output)),
    )
  answering(add('thermometer [file]', 'The true temperature behind a reading; a file holds the question as JSON.'))
    .option('--read <temperature>', 'what it reads')
    .option('-c, --check <read=true>', 'a check: what it read and what was true; repeat for more', many, [])
    .action(async (file: string | undefined, options: object) =>
      done(await (await import('../commands/thermometer.js')).thermometer(file, options, output)),
    )
  answering(add('table [file]', 'Reads a table of times as pasted, line by line; keeps nothing.')).action(
    async (file: string | undefined, options: Common) =>
      done(await (await import('../commands/table.js')).table(file, options, output)),
  )
}
