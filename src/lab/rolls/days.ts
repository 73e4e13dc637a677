import { DAY_MS, dayAt, type Instant, wallClocks } from '../../kernel/index.js'

/** The instant at which a day begins where the bench is; days may be 23 or 25 hours long. */
export const startOfDay = (day: string, zone: string): Instant => wallClocks(zone).onDay(day, 0)

/** The day after. */
export const nextDay = (day: string): string => dayAt(Date.parse(`${day}T12:00:00Z`) + DAY_MS, 'UTC')
