import {
  type Celsius,
  problem,
  type Reading,
  readNumber,
  readTemperature,
  type UnitSystem,
} from '../../../../kernel/index.js'
import { THERMOMETER_LIMITS } from '../../../../science/index.js'
import type { AddCheck } from '../../../../wire/index.js'

export const METHODS = ['comparison', 'ice', 'boiling', 'entered'] as const

export interface CheckDraft {
  readonly method: (typeof METHODS)[number]
  readonly read: string
  readonly true: string
  /** Where the water boils: a height, or what a barometer reads there. */
  readonly place: 'altitude' | 'pressure'
  readonly altitude: string
  readonly pressure: string
}

export const EMPTY_CHECK: CheckDraft = {
  method: 'comparison',
  read: '',
  true: '',
  place: 'altitude',
  altitude: '',
  pressure: '',
}

export interface CheckReading {
  readonly read: Reading<Celsius> | null
  readonly true: Reading<Celsius> | null
  readonly altitude: Reading<number> | null
  readonly pressure: Reading<number> | null
  readonly body: AddCheck | null
}

const FOOT_M = 0.3048
const INCH_HPA = 33.8639

export function readCheck(draft: CheckDraft, units: UnitSystem): CheckReading {
  const degrees = (text: string, what: string) =>
    text.trim() === '' ? null : readTemperature(text, { system: units, what })
  const read = degrees(draft.read, 'what the thermometer reads')
  const truth = degrees(draft.true, 'the true temperature')
  const altitude = measured(
    draft.altitude,
    'an altitude',
    /^(m|ft|feet)$/i,
    (unit) => (unit === 'ft' || (unit === '' && units === 'us') ? FOOT_M : 1),
    THERMOMETER_LIMITS.altitude,
    'm',
  )
  const pressure = measured(
    draft.pressure,
    'an air pressure',
    /^(hpa|mbar|inhg)$/i,
    (unit) => (unit === 'inhg' || (unit === '' && units === 'us') ? INCH_HPA : 1),
    THERMOMETER_LIMITS.pressure,
    'hPa',
  )
  const base = { read, true: truth, altitude, pressure }
  return { ...base, body: bodyOf(draft, base) }
}

function bodyOf(
  draft: CheckDraft,
  { read, true: truth, altitude, pressure }: Omit<CheckReading, 'body'>,
): AddCheck | null {
  if (read?.kind !== 'read') return null
  const found = { method: draft.method, read_c: read.value as number }
  if (draft.method === 'ice') return found
  if (draft.method === 'boiling') {
    if (draft.place === 'pressure') return pressure?.kind === 'read' ? { ...found, pressure_hpa: pressure.value } : null
    return altitude?.kind === 'read' ? { ...found, altitude_m: altitude.value } : null
  }
  return truth?.kind === 'read' ? { ...found, true_c: truth.value as number } : null
}

/** A number with one of two units; a bare one is in the unit that the bench's people use. */
function measured(
  text: string,
  what: string,
  unit: RegExp,
  factor: (unit: string) => number,
  range: { low: number; high: number },
  sign: string,
): Reading<number> | null {
  const trimmed = text.trim()
  if (trimmed === '') return null
  const [, number = '', name = ''] = /^(.*?)\s*([a-z]*)$/i.exec(trimmed) ?? []
  const typed = readNumber(number)
  const example = sign === 'm' ? '350 m' : '985 hPa'
  if (typed === undefined || (name !== '' && !unit.test(name)))
    return { kind: 'refused', problem: problem('quantity.unreadable', { text: trimmed.slice(0, 40), what, example }) }
  const value = typed * factor(name.toLowerCase().replace('feet', 'ft'))
  if (value < range.low || value > range.high)
    return {
      kind: 'refused',
      problem: problem('quantity.out-of-range', { text: trimmed, what, low: range.low, high: `${range.high} ${sign}` }),
    }
  return { kind: 'read', value, echo: `${Math.round(value)}\u202f${sign}` }
}
