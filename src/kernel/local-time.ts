import { DAY_MS, type Instant, instantText } from './clock.js'
import { inZone } from './zones.js'

/** The clocks on the walls of a place. */
export interface WallClocks {
  /** What they show at an instant, as if it were UTC. */
  readonly shownAt: (at: Instant) => Instant
  /**
   * The instant nearest to `near` at which they show this second of the day, whatever the day. Where clocks are put
   * back one showing has two instants, and the nearer counts; a showing that is left out when they are put forward is
   * taken as if they had not been.
   */
  readonly nearest: (secondOfDay: number, near: Instant) => Instant
  /** The instant at which they first show a second of a day, as `2026-11-25`. */
  readonly onDay: (day: string, secondOfDay: number) => Instant
}

/** Clocks by the name of a zone, as `Europe/Vienna`; an unknown one is UTC. Made once and asked often. */
export function wallClocks(zone: string): WallClocks {
  const format = inZone(zone, 'sv-SE', FIGURES)
  const shownAt = (at: Instant): Instant => {
    const [year = 0, month = 1, ...rest] = format
      .formatToParts(at)
      .flatMap(({ type, value }) => (type === 'literal' ? [] : [Number(value)]))
    return Date.UTC(year, month - 1, ...(rest as [number, number, number, number]))
  }
  /** The instants of a showing: one, two, or where it is left out the one by the clocks as they were. */
  const instantsOf = (shown: Instant): Instant[] => {
    const aheads = [-DAY_MS, DAY_MS].map((by) => shownAt(shown + by) - (shown + by))
    const instants = [...new Set(aheads)].map((ahead) => shown - ahead)
    const real = instants.filter((at) => shownAt(at) === shown)
    return real.length > 0 ? real : instants.slice(0, 1)
  }
  return {
    shownAt,
    nearest: (secondOfDay, near) => {
      const midnight = Math.floor(shownAt(near) / DAY_MS) * DAY_MS
      const instants = [-1, 0, 1].flatMap((days) => instantsOf(midnight + days * DAY_MS + secondOfDay * 1000))
      return instants.reduce((best, one) => (Math.abs(one - near) < Math.abs(best - near) ? one : best))
    },
    onDay: (day, secondOfDay) => Math.min(...instantsOf(Date.parse(`${day}T00:00:00Z`) + secondOfDay * 1000)),
  }
}

/** The day at an instant where the bench is, as `2026-07-14`; an unknown zone is UTC. */
export const dayAt = (at: Instant, zone: string): string => instantText(wallClocks(zone).shownAt(at)).slice(0, 10)

/** Year, month, day and time of day in this order, in figures. */
const FIGURES: Intl.DateTimeFormatOptions = {
  year: 'numeric',
  month: 'numeric',
  day: 'numeric',
  hour: 'numeric',
  minute: 'numeric',
  second: 'numeric',
  hourCycle: 'h23',
}
