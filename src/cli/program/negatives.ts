import { Option } from 'commander'
import type { Common } from '../output.js'
import { answering, many, type Program } from './shape.js'

/** Densities, speed, contrast, zones, control strips, fits. */
export function negatives(program: Program): void {
  curves(program)
  withoutDensitometer(program)
  ranges(program)
  charts(program)
}

function curves({ add, output, done }: Program): void {
  const tablet = () => new Option('--tablet <name>', 'tablet it was exposed behind').choices(TABLETS)
  answering(add('strip [file]', 'What a strip of densities says: speed, contrasts, each with its interval.'))
    .addOption(tablet())
    .option('--lamp <log>', 'log10 lux-seconds of the exposure without the tablet')
    .option('--base <density>', 'density of clear film of the same roll')
    .option('-k, --known <read=true>', 'a known density and what a scanner makes of it; repeat for more', many, [])
    .option('--reading-error <density>', 'standard error of one reading')
    .option('--scatter <contrast>', 'your own scatter of contrast from strip to strip')
    .action(async (file: string | undefined, options: Common) =>
      done(await (await import('../commands/strip.js')).strip(file, options, output)),
    )
  answering(add('contrast [file]', 'Your own time for a wanted contrast, from strips developed for several times.'))
    .option('--wanted <contrast>', 'the contrast you want')
    .addOption(new Option('--measure <name>', 'measure read off whole strips').choices(MEASURES))
    .addOption(tablet())
    .option('--lamp <log>', 'log10 lux-seconds of the exposure without the tablet')
    .option('--base <density>', 'density of clear film; left out, the lightest step of each strip')
    .option('--scatter <contrast>', 'your own scatter of contrast from strip to strip')
    .option('--appearance <time>', 'when the image began to show, to compare by Watkins’ rule')
    .option('--watkins <factor>', 'the factor of that rule')
    .action(async (file: string | undefined, options: Common) =>
      done(await (await import('../commands/contrast.js')).contrast(file, options, output)),
    )
}

const TABLETS = ['21-step', '11-step', '31-step']
const MEASURES = [
  'iso-triangle',
  'g-bar',
  'g-bar-chord',
  'contrast-index-short',
  'radiographic',
  'contrast-index',
  'gamma',
]

function withoutDensitometer({ add, output, done }: Program): void {
  answering(add('index [file]', 'Your own index from frames of a grey card, a few stops under the meter.'))
    .option('--iso <index>', 'the index the meter was set to')
    .option('--meter <setting>', 'what the meter said, “f/11 1/15”')
    .option('--under <stops>', 'how many stops under the meter the frames were meant to lie')
    .option('--base <density>', 'base and fog, to be taken off the densities')
    .action(async (file: string | undefined, options: Common) =>
      done(await (await import('../commands/film-index.js')).filmIndex(file, options, output)),
    )
  answering(add('density [file]', 'Densities without a densitometer: by the enlarger or a scanner; a file holds JSON.'))
    .option('-e, --enlarger <blank=matched>', 'seconds for a mid grey through blank film and through yours', many, [])
    .option('-r, --read <density>', 'what a scanner reads; repeat for more', many, [])
    .option('-k, --known <read=true>', 'a known density and what the scanner makes of it; repeat', many, [])
    .action(async (file: string | undefined, options: object) =>
      done(await (await import('../commands/density.js')).density(file, options, output)),
    )
}

function ranges({ add, output, done }: Program): void {
  answering(
    add('zones [file]', 'What N−3 to N+3 ask of the negative; a file of zone densities is judged, or holds JSON.'),
  )
    .addOption(new Option('--model <name>', 'one of the two models').choices(['no-flare', 'flare']))
    .option('--range <density>', 'density range the paper needs; goes with --model')
    .option('--gradient <contrast>', 'which N an average gradient is')
    .option('--from <zone>', 'lower zone of the mean gradient')
    .option('--to <zone>', 'upper zone of the mean gradient')
    .action(async (file: string | undefined, options: Common) =>
      done(await (await import('../commands/zones.js')).zones(file, options, output)),
    )
  answering(add('range [file]', 'The range of a subject through lens, film and paper; a file holds JSON.'))
    .option('--subject <ratio>', 'lightest to darkest of the subject, like 160')
    .option('--flare <times>', 'flare, in times the darkest light')
    .option('--gradient <contrast>', 'average gradient of the negative')
    .option('--from <density>', 'lower density over base and fog that prints')
    .option('--to <density>', 'upper density over base and fog that prints')
    .option('--paper <gradient>', 'average gradient of the paper')
    .action(async (file: string | undefined, options: object) =>
      done(await (await import('../commands/range.js')).range(file, options, output)),
    )
}

function charts({ add, output, done }: Program): void {
  answering(add('control [file]', 'Charts of control strips: act or wait.'))
    .addOption(new Option('--limits <set>', 'which published limits').choices(['small-lab', 'regulation']))
    .addOption(
      new Option('--steps <scheme>', 'rows are whole strips; watch the steps for this').choices(['film', 'radiograph']),
    )
    .option('--aim <quantity=density>', 'aim of base-fog, speed-step or contrast; repeat', many, [])
    .option('--second <quantity=density>', 'what a second strip read; repeat', many, [])
    .action(async (file: string | undefined, options: Common) =>
      done(await (await import('../commands/control.js')).control(file, options, output)),
    )
  answering(add('fit <curve> [file]', 'Fits pairs with a named curve: line, rise, peak, quotient or cubics.'))
    .option('--start <numbers>', 'where to start, one number a parameter, “500 0.0001”')
    .action(async (curve: string, file: string | undefined, options: Common) =>
      done(await (await import('../commands/fit.js')).fit(curve, file, options, output)),
    )
}
