import type { Instant } from '../../kernel/index.js'

/** The day at an instant where the bench is, as `2026-07-14`. */
export const dayAt = (instant: Instant, zone: string): string =>
  new Intl.DateTimeFormat('en-CA', { timeZone: zone, year: 'numeric', month: '2-digit', day: '2-digit' }).format(
    instant,
  )

export const yearAt = (instant: Instant, zone: string): number => Number(dayAt(instant, zone).slice(0, 4))

const DAY_MS = 86_400_000

/** The instant at which a day begins where the bench is; days may be 23 or 25 hours long. */
export function startOfDay(day: string, zone: string): Instant {
  const noon = Date.parse(`${day}T12:00:00Z`)
  // No zone is more than 14 hours from UTC: the day begins somewhere in between.
  let low = noon - 2 * DAY_MS
  let high = noon + DAY_MS
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2)
    if (dayAt(middle, zone) < day) low = middle
    else high = middle
  }
  return high
}

/** The day after. */
export const nextDay = (day: string): string => dayAt(Date.parse(`${day}T12:00:00Z`) + DAY_MS, 'UTC')
