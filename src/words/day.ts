import type { Instant } from '../kernel/index.js'

/** `25 Nov 2026`, in the bench's time zone. An unknown zone falls back to UTC. */
export function writeDay(at: Instant, zone: string): string {
  return written(at, zone, { day: 'numeric', month: 'short', year: 'numeric' })
}

/** `14:05:30`, in the bench's time zone. An unknown zone falls back to UTC. */
export function writeTimeOfDay(at: Instant, zone: string): string {
  return written(at, zone, { hour: '2-digit', minute: '2-digit', second: '2-digit', hourCycle: 'h23' })
}

/** `14:05`: of a moment that is known to the minute only. */
export function writeMinuteOfDay(at: Instant, zone: string): string {
  return written(at, zone, { hour: '2-digit', minute: '2-digit', hourCycle: 'h23' })
}

function written(at: Instant, zone: string, style: Intl.DateTimeFormatOptions): string {
  try {
    return new Intl.DateTimeFormat('en-GB', { ...style, timeZone: zone }).format(at)
  } catch {
    return new Intl.DateTimeFormat('en-GB', { ...style, timeZone: 'UTC' }).format(at)
  }
}
