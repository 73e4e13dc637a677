import { type Failed, failed, problem } from '../../kernel/index.js'
import { refusedOutside } from '../range.js'
import { CONTROL_RANGES } from './limits.js'

/** Null when there are enough values and every one is a number of the trade; else the refusal. */
export function refusedValues(what: string, values: readonly number[], fewest: number): Failed | null {
  if (values.length < fewest)
    return failed(problem('control.too-few', { what, fewest, count: values.length }, 'values'))
  const { most } = CONTROL_RANGES.values
  const many = refusedOutside('control.bad-value', 'The number of values', values.length, { low: fewest, high: most })
  if (many) return many
  for (const [i, value] of values.entries()) {
    const refused = refusedOutside('control.bad-value', `Value ${i + 1}`, value, CONTROL_RANGES.value, `values[${i}]`)
    if (refused) return refused
  }
  return null
}

export const meanOf = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length
