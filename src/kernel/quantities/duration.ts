import { problem } from '../problems/problem.js'
import { readNumber } from './amount.js'
import type { Reading } from './reading.js'
import { type Candidate, type Subject, settle } from './settle.js'
import { plainUnit, tidy } from './text.js'
import { POSSIBLE, type Seconds, seconds } from './units.js'
import { measure, plainNumber } from './write.js'

/** Largest first: in `9 min 30 s` each part is smaller than the one before. */
const UNITS = [
  { seconds: 3600, names: ['h', 'hr', 'hrs', 'hour', 'hours'] },
  { seconds: 60, names: ['min', 'mins', 'm', 'minute', 'minutes', "'"] },
  { seconds: 1, names: ['s', 'sec', 'secs', 'second', 'seconds', '"'] },
] as const

/** A bare number is minutes; from here on seconds may be meant (570 on a sheet that counts in seconds). */
const BARE_ASKED_FROM = 60

type Outcome = { readonly candidates: readonly Candidate[] } | { readonly reason: string } | undefined

/** Reads `9:30`, `1:02:30`, `9.5 min`, `9½`, `570 s`, `9 min 30 s`, `9'30"`; a bare number is minutes, or asked. */
export function readDuration(
  text: string,
  field: { readonly what?: string; readonly low?: Seconds; readonly high?: Seconds } = {},
): Reading<Seconds> {
  const { what = 'a time', low = POSSIBLE.seconds.low, high = POSSIBLE.seconds.high } = field
  const subject: Subject<Seconds> = { what, example: '9:30', low, high, make: seconds, write: writeDuration }
  const tidied = tidy(text, subject)
  if ('problem' in tidied) return { kind: 'refused', problem: tidied.problem }
  const details = { text: tidied.text, what, example: subject.example }
  const outcome = clock(tidied.text) ?? bare(tidied.text) ?? parts(tidied.text)
  if (outcome === undefined) return { kind: 'refused', problem: problem('quantity.unreadable', details) }
  if ('reason' in outcome)
    return { kind: 'refused', problem: problem('quantity.impossible', { ...details, reason: outcome.reason }) }
  return settle(tidied.text, outcome.candidates, subject)
}

/** `8:15`, from an hour on `1:02:30`; rounded to whole seconds. */
export function writeDuration(value: Seconds): string {
  const whole = Math.round(value)
  const [hours, rest] = [Math.floor(whole / 3600), whole % 3600]
  const [minutes, last] = [Math.floor(rest / 60), two(rest % 60)]
  return hours === 0 ? `${minutes}:${last}` : `${hours}:${two(minutes)}:${last}`
}

/** A length of time in running text: `22 s` below a minute, else as `writeDuration`. */
export function writeSpan(value: Seconds): string {
  const whole = Math.round(value)
  return whole < 60 ? measure(String(whole), 's') : writeDuration(value)
}

const two = (value: number): string => String(value).padStart(2, '0')

const sure = (value: number): Outcome => ({ candidates: [{ value, shown: (written) => written }] })

/** `m:ss` and `h:mm:ss`. */
function clock(text: string): Outcome {
  const groups = /^(?:(?<hours>\d+):)?(?<minutes>\d+):(?<last>\d+)(?: ?min)?$/i.exec(text)?.groups
  if (groups === undefined) return undefined
  const { hours, minutes = '', last = '' } = groups
  const sixtieths = hours === undefined ? [last] : [minutes, last]
  if (sixtieths.some((part) => part.length !== 2)) return { reason: 'after a colon there are two digits' }
  if (sixtieths.some((part) => Number(part) > 59)) return { reason: 'after a colon the count ends at 59' }
  return sure(Number(hours ?? 0) * 3600 + Number(minutes) * 60 + Number(last))
}

/** A number without a unit: minutes, unless it is large or looks like minutes and seconds parted by a point. */
function bare(text: string): Outcome {
  const value = readNumber(text)
  if (value === undefined) return undefined
  const inMinutes = counted(value, 60, 'min')
  if (value >= BARE_ASKED_FROM) return { candidates: [inMinutes, counted(value, 1, 's')] }
  const pointed = /^(\d+)[.,]([0-5]\d)$/.exec(text)
  if (pointed === null) return sure(value * 60)
  const asClock = Number(pointed[1]) * 60 + Number(pointed[2])
  if (asClock === value * 60) return sure(asClock)
  return { candidates: [inMinutes, { value: asClock, shown: (written) => written }] }
}

const counted = (value: number, factor: number, sign: string): Candidate => ({
  value: value * factor,
  shown: (written) => `${measure(plainNumber(value), sign)} = ${written}`,
})

/** Numbers each with its unit, falling; the unit of the last may be left out (`9'30`, `1h30`). */
function parts(text: string): Outcome {
  const pieces = piecesOf(text)
  if (pieces === undefined) return undefined
  if (pieces.length > 1 && pieces.some(({ value }) => value < 0)) return undefined
  if (pieces.slice(1).some(({ value }) => value >= 60)) return { reason: 'after a larger unit the count ends at 59' }
  if (pieces.slice(0, -1).some(({ value }) => !Number.isInteger(value)))
    return { reason: 'only the smallest unit can have a fraction' }
  return sure(pieces.reduce((total, { value, size }) => total + value * size, 0))
}

/** Each number with the seconds of its unit; undefined when anything is left over or the units do not fall. */
function piecesOf(text: string): { value: number; size: number }[] | undefined {
  const plain = text
    .replace(/[’′]/g, "'")
    .replace(/[”″]|''/g, '"')
    .replace(/(?<=[a-z])\./gi, '')
  const matches = [...plain.matchAll(/([^a-z'"]+)([a-z]+|['"])?/gi)]
  if (matches.map(([whole]) => whole).join('') !== plain) return undefined
  const pieces: { value: number; size: number }[] = []
  let previous = -1
  for (const [, number = '', name] of matches) {
    const unit = name === undefined ? previous + 1 : unitCalled(name)
    const value = readNumber(number.trim())
    const size = UNITS[unit]?.seconds
    if (value === undefined || size === undefined || unit <= previous) return undefined
    pieces.push({ value, size })
    previous = unit
  }
  return pieces
}

const unitCalled = (name: string): number =>
  UNITS.findIndex(({ names }) => (names as readonly string[]).includes(plainUnit(name)))
