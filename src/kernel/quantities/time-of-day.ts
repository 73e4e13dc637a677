import { problem } from '../problems/problem.js'
import type { Reading } from './reading.js'
import { tidy } from './text.js'

/** A time of day as a clock showed it: no day and no zone. `second` counts from midnight, 0 to 86 399. */
export interface TimeOfDay {
  readonly second: number
  /** Whether seconds were written; without them it was some second of that minute. */
  readonly to: 'second' | 'minute'
}

const WRITTEN = /^(?<hour>\d{1,2})(?:[:.h] ?(?<minute>\d{2}))(?:[:.] ?(?<second>\d{2}))? ?(?<half>[ap]\.?m\.?)?$/i

/**
 * Reads a time of day: `14:05`, `14:05:30`, `14.05`, `14h05`, `2:05 pm`. A bare number is refused: it could be hours
 * or minutes. Midnight is `0:00`; `24:00` is refused, since it would be of the day after.
 */
export function readTimeOfDay(text: string, what = 'a time of day'): Reading<TimeOfDay> {
  const naming = { what, example: '14:05 or 14:05:30' }
  const tidied = tidy(text, naming)
  if ('problem' in tidied) return { kind: 'refused', problem: tidied.problem }
  const groups = WRITTEN.exec(tidied.text)?.groups
  const details = { text: tidied.text, ...naming }
  if (groups === undefined) return { kind: 'refused', problem: problem('quantity.unreadable', details) }
  const impossible = (reason: string): Reading<TimeOfDay> => ({
    kind: 'refused',
    problem: problem('quantity.impossible', { ...details, reason }),
  })
  const [hour, minute, second] = [groups['hour'], groups['minute'], groups['second'] ?? '0'].map(Number)
  const half = groups['half']?.toLowerCase().charAt(0)
  if (minute === undefined || second === undefined || minute > 59 || second > 59)
    return impossible('minutes and seconds end at 59')
  const hours = half === undefined ? hour : ofHalf(hour ?? 0, half)
  if (hours === undefined || hours > 23)
    return impossible(half === undefined ? 'hours end at 23' : 'it has 1 to 12 hours')
  const value: TimeOfDay = {
    second: hours * 3600 + minute * 60 + second,
    to: groups['second'] === undefined ? 'minute' : 'second',
  }
  return { kind: 'read', value, echo: writeTimeOnClock(value) }
}

/** Hours of the whole day; undefined where a half of the day has no such hour. */
function ofHalf(hour: number, half: string): number | undefined {
  if (hour < 1 || hour > 12) return undefined
  return (hour % 12) + (half === 'p' ? 12 : 0)
}

/** `14:05`, or `14:05:30` where seconds were written. */
export function writeTimeOnClock({ second, to }: TimeOfDay): string {
  const two = (value: number) => String(Math.floor(value)).padStart(2, '0')
  const minutes = `${two(second / 3600)}:${two((second % 3600) / 60)}`
  return to === 'minute' ? minutes : `${minutes}:${two(second % 60)}`
}
