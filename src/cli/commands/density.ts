import { all, andThen, failed, ok, type Result } from '../../kernel/index.js'
import { type Calibration, calibrationOf, densityByEnlarger } from '../../science/index.js'
import type { DensityAnswer, DensityQuestion } from '../../wire/index.js'
import { say, type WorkingLine, type Writer, writerFor } from '../../words/index.js'
import { tellWorked } from '../answer.js'
import { questionIn } from '../asked.js'
import { pairOf } from '../options.js'
import { type Common, numberOf, type Output, unitsOf, usage } from '../output.js'

export interface DensityOptions extends Common {
  readonly enlarger?: readonly string[]
  readonly read?: readonly string[]
  readonly known?: readonly string[]
}

interface Found {
  readonly density: DensityAnswer['densities'][number]
  readonly sentence: string
  readonly work: WorkingLine
}

/** Prints densities found by the enlarger's matching greys or by a scanner, each with what it leaves open. */
export async function density(file: string | undefined, options: DensityOptions, output: Output): Promise<number> {
  const question = file === undefined ? asked(options) : await questionIn(file, 'density-question')
  return tellWorked(
    andThen(question, (one) => answered(one, writerFor(unitsOf(options)))),
    options,
    output,
  )
}

function asked({ enlarger = [], read = [], known = [] }: DensityOptions): Result<DensityQuestion> {
  const greys = all(enlarger.map((text) => pairOf('enlarger', text, '10=13')))
  if (!greys.ok) return greys
  const seen = all(read.map((text) => numberOf('read', text)))
  if (!seen.ok) return seen
  const steps = all(known.map((text) => pairOf('known', text, '0.085=0.10')))
  if (!steps.ok) return steps
  return ok({
    enlarger: greys.value.map(([blank_s, matched_s]) => ({ blank_s, matched_s })),
    read: [...seen.value],
    known: steps.value.map(([reads, truth]) => ({ read: reads, true: truth })),
  })
}

function answered({ enlarger, read, known }: DensityQuestion, writer: Writer): Result<DensityAnswer> {
  if (enlarger.length + read.length === 0)
    return failed(usage('Say what was matched or read: --enlarger 10=13, or --read 0.085 --known 0.085=0.10.'))
  const calibration = calibrationOf(known)
  if (!calibration.ok) return calibration
  const found = all([
    ...enlarger.map((greys) => byEnlarger(greys, writer)),
    ...read.map((one) => byScanner(one, calibration.value, writer)),
  ])
  if (!found.ok) return found
  return ok({
    densities: found.value.map((one) => one.density),
    sentences: found.value.map(({ sentence }) => sentence),
    working: found.value.map(({ work }) => work),
  })
}

const byEnlarger = (
  { blank_s: blank, matched_s: matched }: DensityQuestion['enlarger'][number],
  writer: Writer,
): Result<Found> =>
  andThen(densityByEnlarger(blank, matched), ({ density: value, standardError: error }) =>
    ok({
      density: { read: `${blank}=${matched}`, density: value, standard_error: error, basis: 'enlarger' },
      sentence: say('density.enlarger', { blank, matched, density: value, error }, writer),
      work: {
        line: say('density.work.enlarger', { blank, matched, density: value }, writer),
        source: say('density.source.matched', {}, writer),
      },
    }),
  )

const byScanner = (read: number, calibration: Calibration, writer: Writer): Result<Found> =>
  andThen(calibration.correct(read), ({ density: value, standardError: error, basis }) =>
    ok({
      density: { read: String(read), density: value, standard_error: error, basis },
      sentence: say('density.scanner', { read, density: value, error }, writer),
      work: {
        line: say('density.work.scanner', { read, density: value }, writer),
        source: say(`density.source.${basis}`, {}, writer),
      },
    }),
  )
