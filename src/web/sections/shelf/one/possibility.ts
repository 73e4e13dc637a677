import { celsius } from '../../../../kernel/index.js'
import { checkIsPossible } from '../../../../science/index.js'
import type { ThermometerRecord } from '../../../../wire/index.js'
import { say, type Writer } from '../../../../words/index.js'
import type { CheckDraft } from './checkDraft.js'

/** Whether this thermometer can be checked so, why not, and what to mind at that very step. */
export function possibility(one: ThermometerRecord, method: CheckDraft['method'], writer: Writer) {
  const possible = checkIsPossible(method, one.scale_low_c, one.scale_high_c)
  const bursts = one.kind === 'spirit' && one.scale_high_c < 60
  const cautions: string[] = []
  if (!possible.ok) {
    // Who is told that boiling water is beyond the scale is also told why not to try.
    const burst = method === 'boiling' && bursts ? ` ${say('thermometer.bursts', {}, writer)}` : ''
    return { refusal: `${possible.problem.sentence}${burst}`, cautions }
  }
  if (method === 'boiling') cautions.push(say('thermometer.hot-water-caution', {}, writer))
  if (method === 'comparison' && bursts) cautions.push(say('thermometer.bursts', {}, writer))
  const silent = possible.value.warnings.find((warning) => warning.code === 'says-nothing-near')
  if (silent?.code === 'says-nothing-near')
    cautions.push(say('thermometer.says-nothing-near', { near: celsius(silent.temperature) }, writer))
  return { refusal: null, cautions }
}
