import { useBench } from '../../shared/api/index.js'
import { deviceClock } from '../../shared/platform/index.js'

/** The day it is where the bench is, as `2026-07-14`. */
export function useTodayHere(): string {
  const zone = useBench().data?.zone ?? 'UTC'
  return dayIn(zone, deviceClock.wall())
}

/** The day at an instant in a zone; an unknown zone falls back to UTC. */
function dayIn(zone: string, at: number): string {
  const style = { year: 'numeric', month: '2-digit', day: '2-digit' } as const
  try {
    return new Intl.DateTimeFormat('en-CA', { ...style, timeZone: zone }).format(at)
  } catch {
    return new Intl.DateTimeFormat('en-CA', { ...style, timeZone: 'UTC' }).format(at)
  }
}
