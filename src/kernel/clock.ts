/** An instant: whole milliseconds since 1970-01-01T00:00Z. */
export type Instant = number & { readonly unit?: 'ms since 1970' }

/** Where time comes from. Only composition roots make a real one; everything else is handed one. */
export interface Clock {
  now(): Instant
}

/** A clock that tests and dry runs set by hand. */
export class SetClock implements Clock {
  constructor(private at: Instant) {}
  now(): Instant {
    return this.at
  }
  /** Moves on by `ms` (may be negative: devices do that). */
  advance(ms: number): void {
    this.at += ms
  }
}

/** Of 24 hours; a day where clocks are moved is longer or shorter. */
export const DAY_MS = 86_400_000

/** An instant as ISO 8601 text in UTC, with milliseconds: the form it has in JSON. */
export const instantText = (at: Instant): string => new Date(at).toISOString()
