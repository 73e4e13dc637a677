import {
  type Celsius,
  type CelsiusDegrees,
  celsius,
  failed,
  ok,
  POSSIBLE,
  problem,
  type Result,
} from '../../kernel/index.js'
import { sayDegrees, sayTemperature } from '../saying.js'
import type { CorrectedReading, Correction, CorrectionBasis, ThermometerCheck } from './definition.js'
import { THERMOMETER_LIMITS as LIMITS } from './limits.js'

/** A check as the correction uses it: where, how much, how surely. */
interface Mark {
  readonly read: number
  readonly offset: number
  readonly band: number
}

/**
 * What a thermometer's checks make of its readings. One check: a constant offset. More: straight between
 * neighbouring checks; past the outermost its offset is held while the band widens. A lone check in ice or
 * boiling water counts near its own mark only. No check: no correction, and the band of an unchecked one.
 *
 * Refused: a check more than 5 °C off, a temperature that is not possible, and checks by which the true
 * temperature would fall while the reading rises.
 */
export function correctionOf(checks: readonly ThermometerCheck[]): Result<Correction> {
  for (const [index, check] of checks.entries()) {
    const wrong = wrongCheck(check, `checks[${index}]`)
    if (wrong !== null) return failed(wrong)
  }
  const marks = marksOf(checks)
  const contradiction = contradictionIn(marks)
  if (contradiction !== null) return failed(contradiction)
  const only = checks.length === 1 ? checks[0]?.method : undefined
  const lone = only === 'ice' || only === 'boiling'
  return ok({
    at: (read) => correctedBy(marks, lone, read),
    saysNothingNear: lone ? celsius(20) : null,
  })
}

/** The problem with a reading beside its truth, or null: past 5 °C something is broken or misread. */
export function wrongCheck({ read, true: truth }: { readonly read: number; readonly true: number }, field: string) {
  const { low, high } = POSSIBLE.celsius
  for (const value of [read, truth])
    if (!(value >= low && value <= high))
      return problem(
        'quantity.out-of-range',
        { text: sayTemperature(value), what: 'a temperature', low: sayTemperature(low), high: sayTemperature(high) },
        field,
      )
  const error = Math.abs(read - truth)
  if (error <= LIMITS.error + 1e-9) return null
  const details = {
    read: sayTemperature(read),
    true: sayTemperature(truth),
    error: sayDegrees(error),
    most: sayDegrees(LIMITS.error),
  }
  return problem('thermometer.error-too-large', details, field)
}

/** Sorted by reading; checks at one reading count once, by their mean. */
function marksOf(checks: readonly ThermometerCheck[]): readonly Mark[] {
  const sorted = [...checks].sort((one, other) => one.read - other.read)
  const groups: ThermometerCheck[][] = []
  for (const check of sorted) {
    const group = groups[groups.length - 1]
    const first = group?.[0]
    if (group !== undefined && first !== undefined && check.read - first.read <= LIMITS.sameReading + 1e-9)
      group.push(check)
    else groups.push([check])
  }
  return groups.map((group) => ({
    read: mean(group.map((check) => check.read)),
    offset: mean(group.map((check) => check.true - check.read)),
    band: Math.max(...group.map((check) => LIMITS.band[check.method])),
  }))
}

const mean = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0) / values.length

function contradictionIn(marks: readonly Mark[]) {
  for (const [index, higher] of marks.entries()) {
    const lower = marks[index - 1]
    if (lower === undefined || higher.read + higher.offset > lower.read + lower.offset) continue
    return problem('thermometer.checks-contradict', {
      lower: sayTemperature(lower.read),
      lowerTrue: sayTemperature(lower.read + lower.offset),
      higher: sayTemperature(higher.read),
      higherTrue: sayTemperature(higher.read + higher.offset),
    })
  }
  return null
}

function correctedBy(marks: readonly Mark[], lone: boolean, read: Celsius): CorrectedReading {
  const { offset, band, basis } = offsetAt(marks, lone, read)
  const corrected = Math.min(Math.max(read + offset, POSSIBLE.celsius.low), POSSIBLE.celsius.high)
  return { read, true: corrected as Celsius, correction: offset as CelsiusDegrees, band: band as CelsiusDegrees, basis }
}

function offsetAt(
  marks: readonly Mark[],
  lone: boolean,
  read: number,
): { offset: number; band: number; basis: CorrectionBasis } {
  const above = marks.findIndex((mark) => mark.read >= read)
  const upper = marks[above]
  const lower = above === -1 ? marks[marks.length - 1] : marks[above - 1]
  const { between, beyond } = LIMITS.growth
  if (lower !== undefined && upper !== undefined) {
    const part = (read - lower.read) / (upper.read - lower.read)
    const distance = Math.min(read - lower.read, upper.read - read)
    const offset = lower.offset + part * (upper.offset - lower.offset)
    return { offset, band: Math.max(lower.band, upper.band) + between * distance, basis: 'between' }
  }
  const mark = lower ?? upper
  if (mark === undefined) return { offset: 0, band: LIMITS.unchecked, basis: 'unchecked' }
  const distance = Math.abs(read - mark.read)
  if (lone && distance > LIMITS.nearMark) return { offset: 0, band: LIMITS.unchecked, basis: 'unchecked' }
  const basis = marks.length === 1 ? 'one-check' : distance === 0 ? 'between' : 'beyond'
  return { offset: mark.offset, band: mark.band + beyond * distance, basis }
}
