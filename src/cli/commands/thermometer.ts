import { all, type Celsius, failed, ok, type Result, readTemperature, type UnitSystem } from '../../kernel/index.js'
import { type CorrectedReading, correctionOf, THERMOMETER_LIMITS, type ThermometerCheck } from '../../science/index.js'
import type { ThermometerAnswer } from '../../wire/index.js'
import { say, type WorkingLine, type Writer, writerFor } from '../../words/index.js'
import { tell } from '../answer.js'
import { questionIn } from '../asked.js'
import { board } from '../board.js'
import { type Common, type Output, refuse, typed, unitsOf, usage } from '../output.js'

export interface ThermometerOptions extends Common {
  readonly read?: string
  readonly check?: readonly string[]
}

/** `20.4=20.0`: it read 20.4 where 20.0 was true. */
function checkOf(text: string, system: UnitSystem): Result<ThermometerCheck> {
  const [read, truth, ...rest] = text.split('=')
  if (read === undefined || truth === undefined || rest.length > 0)
    return failed(usage(`“${text}” is not a check. Write what it read and what was true, like “20.4=20.0”.`))
  const both = all([typed(readTemperature(read, { system })), typed(readTemperature(truth, { system }))])
  if (!both.ok) return both
  const [seen, real] = both.value as [ThermometerCheck['read'], ThermometerCheck['true']]
  return ok({ read: seen, true: real, method: 'entered' })
}

interface Asked {
  readonly read: Celsius
  readonly checks: readonly ThermometerCheck[]
}

function byOptions(options: ThermometerOptions, system: UnitSystem): Result<Asked> {
  if (options.read === undefined) return failed(usage('Say what the thermometer reads: --read 20.4C.'))
  const read = typed(readTemperature(options.read, { system }))
  if (!read.ok) return read
  const checks = all((options.check ?? []).map((text) => checkOf(text, system)))
  return checks.ok ? ok({ read: read.value, checks: checks.value }) : checks
}

async function byJson(file: string): Promise<Result<Asked>> {
  const question = await questionIn(file, 'thermometer-question')
  if (!question.ok) return question
  const { read_c, checks } = question.value
  return ok({
    read: read_c as Celsius,
    checks: checks.map((one) => ({ read: one.read_c as Celsius, true: one.true_c as Celsius, method: one.method })),
  })
}

/** Prints the true temperature behind a reading. */
export async function thermometer(
  file: string | undefined,
  options: ThermometerOptions,
  output: Output,
): Promise<number> {
  const asked = file === undefined ? byOptions(options, unitsOf(options)) : await byJson(file)
  if (!asked.ok) return refuse(output, asked.problem, options)
  const { read, checks } = asked.value
  const correction = correctionOf(checks)
  if (!correction.ok) return refuse(output, correction.problem, options)
  const view = viewOf(correction.value.at(read), checks, writerFor(unitsOf(options)))
  const lines = [view.sentence, ...view.warnings]
  return tell({ view, lines, working: () => board(view.working) }, options, output)
}

function viewOf(found: CorrectedReading, checks: readonly ThermometerCheck[], writer: Writer): ThermometerAnswer {
  return {
    read_c: found.read,
    true_c: found.true,
    correction_c: found.correction,
    band_c: found.band,
    basis: found.basis,
    sentence: say('thermometer.corrected', { name: 'It', read: found.read, corrected: found.true }, writer),
    warnings: found.basis === 'beyond' ? [say('thermometer.held-beyond', {}, writer)] : [],
    working: workingOf(found, checks, writer),
  }
}

const workingOf = (found: CorrectedReading, checks: readonly ThermometerCheck[], writer: Writer): WorkingLine[] => [
  ...checks.map((check) => ({
    line: say('thermometer.check-line', { read: check.read, truth: check.true }, writer),
    source: say(`thermometer.source.${check.method}`, { band: THERMOMETER_LIMITS.band[check.method] }, writer),
  })),
  {
    line: say('thermometer.correction-line', { correction: found.correction, band: found.band }, writer),
    source: say(`thermometer.source.${found.basis}`, {}, writer),
  },
]
