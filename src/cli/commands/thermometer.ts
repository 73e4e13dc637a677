import { all, failed, ok, type Result, readTemperature, type UnitSystem } from '../../kernel/index.js'
import { type CorrectedReading, correctionOf, type ThermometerCheck } from '../../science/index.js'
import type { ThermometerAnswer } from '../../wire/index.js'
import { plain, say, writerFor } from '../../words/index.js'
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

/** Prints the true temperature behind a reading. */
export async function thermometer(options: ThermometerOptions, output: Output): Promise<number> {
  const units = unitsOf(options)
  if (options.read === undefined) return refuse(output, usage('Say what the thermometer reads: --read 20.4C.'), options)
  const read = typed(readTemperature(options.read, { system: units }))
  if (!read.ok) return refuse(output, read.problem, options)
  const checks = all((options.check ?? []).map((text) => checkOf(text, units)))
  if (!checks.ok) return refuse(output, checks.problem, options)
  const correction = correctionOf(checks.value)
  if (!correction.ok) return refuse(output, correction.problem, options)
  const found = correction.value.at(read.value)
  const view = viewOf(found, units)
  if (options.json) output.out(JSON.stringify(view, null, 2))
  else
    for (const line of [
      view.sentence,
      ...view.warnings,
      ...(options.explain ? explain(found, checks.value, units) : []),
    ])
      output.out(plain(line))
  return 0
}

function viewOf(found: CorrectedReading, units: UnitSystem): ThermometerAnswer {
  const writer = writerFor(units)
  return {
    read_c: found.read,
    true_c: found.true,
    correction_c: found.correction,
    band_c: found.band,
    basis: found.basis,
    sentence: say('thermometer.corrected', { name: 'It', read: found.read, corrected: found.true }, writer),
    warnings: found.basis === 'beyond' ? [say('thermometer.held-beyond', {}, writer)] : [],
  }
}

function explain(found: CorrectedReading, checks: readonly ThermometerCheck[], units: UnitSystem): string[] {
  const writer = writerFor(units)
  return [
    '',
    ...checks.map((check) => say('thermometer.check-line', { read: check.read, truth: check.true }, writer)),
    say('thermometer.correction-line', { correction: found.correction, band: found.band }, writer),
  ]
}
