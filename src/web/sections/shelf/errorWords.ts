import { type Celsius, celsius } from '../../../kernel/index.js'
import type { ThermometerRecord } from '../../../wire/index.js'
import { say, type Writer } from '../../../words/index.js'
import { correctionFor } from '../../shared/figures/index.js'

/** Where development happens, and where colour does. */
const USUAL: readonly Celsius[] = [celsius(20), celsius(38)]

/** A thermometer's error in words, at the temperatures that its checks speak for. */
export function errorWords(thermometer: ThermometerRecord, writer: Writer): string {
  const correction = correctionFor(thermometer)
  if (!correction.ok) return correction.problem.sentence
  const standing = thermometer.checks.filter((check) => !check.withdrawn)
  if (standing.length === 0) return say('shelf.never-checked', {}, writer)
  const at = USUAL.map((temperature) => correction.value.at(temperature)).filter(({ basis }) => basis !== 'unchecked')
  const near = at[0] ?? correction.value.at(celsius(standing[0]?.read_c ?? 0))
  return say('thermometer.offset', { offset: -near.correction, at: near.read }, writer)
}
