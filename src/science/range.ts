import { type Failed, failed, type ProblemCode, problem } from '../kernel/index.js'
import { short } from './saying.js'

/** Null when the value lies in the range, else the refusal that names it; NaN lies nowhere. */
export function refusedOutside(
  code: Extract<ProblemCode, `${string}.bad-value`>,
  what: string,
  value: number,
  range: { readonly low: number; readonly high: number },
  field?: string,
): Failed | null {
  if (value >= range.low && value <= range.high) return null
  return failed(problem(code, { what, value: short(value, 4), low: range.low, high: range.high }, field))
}
