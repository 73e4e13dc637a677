import { type Instant, inZone } from '../kernel/index.js'

/** `25 Nov 2026`, in the bench's time zone. An unknown zone falls back to UTC. */
export function writeDay(at: Instant, zone: string): string {
  return inZone(zone, 'en-GB', { day: 'numeric', month: 'short', year: 'numeric' }).format(at)
}

/** `14:05:30`, in the bench's time zone. An unknown zone falls back to UTC. */
export function writeTimeOfDay(at: Instant, zone: string): string {
  return inZone(zone, 'en-GB', { hour: '2-digit', minute: '2-digit', second: '2-digit', hourCycle: 'h23' }).format(at)
}

/** `14:05`: of a moment that is known to the minute only. */
export function writeMinuteOfDay(at: Instant, zone: string): string {
  return inZone(zone, 'en-GB', { hour: '2-digit', minute: '2-digit', hourCycle: 'h23' }).format(at)
}
