import type { Instant } from '../kernel/index.js'

/** `25 Nov 2026`, in the bench's time zone. An unknown zone falls back to UTC. */
export function writeDay(at: Instant, zone: string): string {
  const style = { day: 'numeric', month: 'short', year: 'numeric' } as const
  try {
    return new Intl.DateTimeFormat('en-GB', { ...style, timeZone: zone }).format(at)
  } catch {
    return new Intl.DateTimeFormat('en-GB', { ...style, timeZone: 'UTC' }).format(at)
  }
}
