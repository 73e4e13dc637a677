import {
  type Celsius,
  type Ratio,
  type Reading,
  readDuration,
  readRatio,
  readTemperature,
  type Seconds,
  type UnitSystem,
} from '../../../../kernel/index.js'
import type { TimeStatement } from '../../../../wire/index.js'
import { say } from '../../../../words/index.js'
import { basisOf, readFactor } from '../../../shared/figures/index.js'
import type { PointText, TimeDraft } from './draft.js'

export interface PointReading {
  readonly temperature: Reading<Celsius> | null
  readonly time: Reading<Seconds> | null
  readonly trouble: string | null
}

/** How the whole form was read: each field, what is wrong where, and the statement once all of it is right. */
export interface DraftReading {
  readonly dilution: Reading<Ratio> | null
  readonly coefficient: Reading<number> | null
  readonly ranges: Record<'usableFrom' | 'usableTo' | 'windowFrom' | 'windowTo', Reading<Celsius> | null>
  readonly points: readonly PointReading[]
  /** Sentences by field name: `film`, `index`, `points`, `usable`, `window`, `coefficient`. */
  readonly troubles: Readonly<Record<string, string>>
  /** How many fields are not right yet. */
  readonly wrong: number
  readonly statement: TimeStatement | null
}

const optional = <T>(text: string, read: (text: string) => Reading<T>) => (text.trim() === '' ? null : read(text))
const readValue = <T>(reading: Reading<T> | null): T | null => (reading?.kind === 'read' ? reading.value : null)

export function readDraft(draft: TimeDraft, units: UnitSystem): DraftReading {
  const degrees = (text: string) => optional(text, (typed) => readTemperature(typed, { system: units }))
  const points = draft.points.map((point) => readPoint(point, units))
  const dilution = optional(draft.dilution, (typed) => readRatio(typed))
  const coefficient = readFactor(draft.coefficient, 'a ten-degree coefficient')
  const fixed = draft.kind === 'fixed'
  const ranges = {
    usableFrom: degrees(draft.usableFrom),
    usableTo: degrees(draft.usableTo),
    windowFrom: fixed ? degrees(draft.windowFrom) : null,
    windowTo: fixed ? degrees(draft.windowTo) : null,
  }
  const index = readIndex(draft.index)
  const troubles: Record<string, string> = { ...needed(draft), ...index.trouble }
  const usable = rangeOf(ranges.usableFrom, ranges.usableTo, draft.usableFrom, draft.usableTo)
  const window = rangeOf(ranges.windowFrom, ranges.windowTo, fixed ? draft.windowFrom : '', fixed ? draft.windowTo : '')
  if (usable === 'half') troubles.usable = say('times.form.both-ends', { what: 'The usable range' }, units)
  if (window === 'half') troubles.window = say('times.form.both-ends', { what: 'The window' }, units)

  const unread = [dilution, coefficient, ...Object.values(ranges)].filter((one) => one !== null && one.kind !== 'read')
  const wrongPoints = points.filter((point, place) => !bothRead(point) && !isBlank(draft.points[place] as PointText))
  const filled = points.filter(bothRead)
  if (draft.points.every(isBlank))
    troubles.points = say(
      'times.form.needed',
      { what: 'The first time with its temperature', example: '9:30 at 20 °C' },
      units,
    )
  const notReady = unread.length > 0 || Object.keys(troubles).length > 0 || wrongPoints.length > 0
  const base = { dilution, coefficient, ranges, points, troubles }
  if (notReady || usable === 'half' || window === 'half')
    return { ...base, wrong: Object.keys(troubles).length + unread.length + wrongPoints.length, statement: null }
  const statement: TimeStatement = {
    film: draft.film.trim(),
    exposure_index: index.value,
    developer: draft.developer.trim(),
    dilution_parts: dilution === null ? null : [...(readValue(dilution)?.parts ?? [])],
    agitation: draft.agitation.trim(),
    kind: draft.kind,
    law: draft.law,
    developer_class: draft.developerClass,
    coefficient: readValue(coefficient),
    usable,
    window,
    points: filled.map(({ temperature, time }) => ({ temperature_c: temperature.value, time_s: time.value })),
    source_words: draft.sourceWords.trim(),
    source_origin: draft.sourceOrigin,
    note: draft.note,
  }
  return { ...base, ...judged(statement, troubles) }
}

/** What only shows once all points stand together: two times at one temperature, slower when warmer. */
function judged(statement: TimeStatement, troubles: Record<string, string>) {
  const basis = basisOf(statement)
  if (basis.ok) return { troubles, wrong: 0, statement }
  const field = basis.problem.field?.split(/[.[]/)[0] ?? 'points'
  return { troubles: { ...troubles, [field]: basis.problem.sentence }, wrong: 1, statement: null }
}

const isBlank = (point: PointText) => point.temperature.trim() === '' && point.time.trim() === ''

type Full = { temperature: { kind: 'read'; value: Celsius }; time: { kind: 'read'; value: Seconds } }
/** Rows left blank among others are passed over. */
function bothRead(point: PointReading): point is PointReading & Full {
  return point.temperature?.kind === 'read' && point.time?.kind === 'read'
}

function readPoint(point: PointText, units: UnitSystem): PointReading {
  const temperature = optional(point.temperature, (typed) => readTemperature(typed, { system: units }))
  const time = optional(point.time, (typed) => readDuration(typed, { what: 'a developing time' }))
  const half = (temperature === null) !== (time === null)
  return { temperature, time, trouble: half ? say('times.form.point-half', {}, units) : null }
}

function readIndex(text: string): { value: number | null; trouble: Record<string, string> } {
  const trimmed = text.trim()
  if (trimmed === '') return { value: null, trouble: {} }
  const value = /^\d{1,5}$/.test(trimmed) ? Number(trimmed) : 0
  const fits = value >= 1 && value <= 25_600
  return fits
    ? { value, trouble: {} }
    : { value: null, trouble: { index: say('times.form.whole', { text: trimmed.slice(0, 40) }, 'metric') } }
}

function needed(draft: TimeDraft): Record<string, string> {
  const wants = (what: string, example: string) => say('times.form.needed', { what, example }, 'metric')
  return {
    ...(draft.film.trim() === '' ? { film: wants('The film', 'Corvane 400') } : {}),
    ...(draft.developer.trim() === '' ? { developer: wants('The developer', 'ascorbate') } : {}),
  }
}

function rangeOf(from: Reading<Celsius> | null, to: Reading<Celsius> | null, fromText: string, toText: string) {
  if ((fromText.trim() === '') !== (toText.trim() === '')) return 'half' as const
  const [low, high] = [readValue(from), readValue(to)]
  return low === null || high === null ? null : { from_c: low as number, to_c: high as number }
}
