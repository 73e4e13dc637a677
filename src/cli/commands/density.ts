import { all, andThen, failed, ok, type Result } from '../../kernel/index.js'
import { type Calibration, calibrationOf, densityByEnlarger } from '../../science/index.js'
import type { DensityAnswer } from '../../wire/index.js'
import { say, type WorkingLine, type Writer, writerFor } from '../../words/index.js'
import { tellWorked } from '../answer.js'
import { pairOf } from '../options.js'
import { type Common, numberOf, type Output, refuse, unitsOf, usage } from '../output.js'

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
export async function density(options: DensityOptions, output: Output): Promise<number> {
  const writer = writerFor(unitsOf(options))
  const found = foundBy(options, writer)
  if (!found.ok) return refuse(output, found.problem, options)
  const view: DensityAnswer = {
    densities: found.value.map((one) => one.density),
    sentences: found.value.map(({ sentence }) => sentence),
    working: found.value.map(({ work }) => work),
  }
  return tellWorked(ok(view), options, output)
}

function foundBy({ enlarger = [], read = [], known = [] }: DensityOptions, writer: Writer): Result<Found[]> {
  if (enlarger.length + read.length === 0)
    return failed(usage('Say what was matched or read: --enlarger 10=13, or --read 0.085 --known 0.085=0.10.'))
  const steps = all(known.map((text) => pairOf('known', text, '0.085=0.10')))
  if (!steps.ok) return steps
  const calibration = calibrationOf(steps.value.map(([seen, truth]) => ({ read: seen, true: truth })))
  if (!calibration.ok) return calibration
  return all([
    ...enlarger.map((text) => byEnlarger(text, writer)),
    ...read.map((text) => byScanner(text, calibration.value, writer)),
  ])
}

const byEnlarger = (text: string, writer: Writer): Result<Found> =>
  andThen(pairOf('enlarger', text, '10=13'), ([blank, matched]) =>
    andThen(densityByEnlarger(blank, matched), ({ density: value, standardError: error }) =>
      ok({
        density: { read: text, density: value, standard_error: error, basis: 'enlarger' },
        sentence: say('density.enlarger', { blank, matched, density: value, error }, writer),
        work: {
          line: say('density.work.enlarger', { blank, matched, density: value }, writer),
          source: say('density.source.matched', {}, writer),
        },
      }),
    ),
  )

const byScanner = (text: string, calibration: Calibration, writer: Writer): Result<Found> =>
  andThen(numberOf('read', text), (read) =>
    andThen(calibration.correct(read), ({ density: value, standardError: error, basis }) =>
      ok({
        density: { read: text, density: value, standard_error: error, basis },
        sentence: say('density.scanner', { read, density: value, error }, writer),
        work: {
          line: say('density.work.scanner', { read, density: value }, writer),
          source: say(`density.source.${basis}`, {}, writer),
        },
      }),
    ),
  )
