import type { Celsius, Instant, Seconds } from '../../kernel/index.js'

/** What can go wrong with a tank, as the card names it. */
export type MishapKind =
  | 'fixer-first'
  | 'developer-short'
  | 'wrong-dilution'
  | 'lid-came-off'
  | 'tank-leaks'
  | 'stop-skipped'
  | 'power-or-phone-dead'

/**
 * How well a person states a moment: to the second; to the minute, of which the middle is taken; or not at all, and
 * it is placed at the step that it belongs to.
 */
export type StatedTo = 'second' | 'minute' | 'placed'

/** Who wrote an event down, where, and by which clocks. */
export interface EventStamp {
  readonly id: string
  readonly device: string
  /** One loading of the page; monotonic time counts from its start. */
  readonly life: string
  readonly monotonicMs: number
  /** By the device's clock, which may be wrong or moved. */
  readonly wallMs: Instant
  /**
   * Server's clock minus this life's monotonic clock, as last measured; null where it has not reached the server.
   * Against monotonic time and not against the wall clock, which may be moved between measuring and pressing.
   */
  readonly serverOffsetMs: number | null
  /** The moment as a person states it, for a run typed in from paper; it stands whatever the clocks say. */
  readonly statedMs?: Instant | null
  /** How well `statedMs` is stated; to the second where it is left out. */
  readonly statedTo?: StatedTo | null
  readonly tank: string
  /** Step of the tank's list, from 0; null where it is about the whole tank. */
  readonly bath: number | null
  readonly actor: string
}

/** What happened. A correction is a new event; none is ever changed or taken away. */
export type Happening =
  | { readonly kind: 'started' }
  /** The bath's clock has started, by its own convention. */
  | { readonly kind: 'poured-in' }
  /** Draining has begun. */
  | { readonly kind: 'poured-out' }
  | { readonly kind: 'reading'; readonly temperature: Celsius; readonly confirmed: boolean }
  | { readonly kind: 'step-done'; readonly clearing?: Seconds | null }
  | { readonly kind: 'skipped'; readonly reason: string }
  | {
      readonly kind: 'mishap'
      readonly mishap: MishapKind
      /** For a wrong dilution: the sheet's reference time at the dilution that is really in the tank. */
      readonly referenceTime?: Seconds | null
    }
  | { readonly kind: 'noted'; readonly text: string }
  /** Undo; of an undo too. */
  | { readonly kind: 'retracted'; readonly of: string }
  | { readonly kind: 'abandoned'; readonly reason: string }
  | { readonly kind: 'finished' }
  /**
   * First thing a reloaded page writes: the last moment its predecessor kept, by both of that one's clocks. Written
   * again when the page reaches the server, since an event that knows the server's clock ends any doubt.
   */
  | {
      readonly kind: 'resumed'
      readonly previous: Pick<EventStamp, 'life' | 'monotonicMs' | 'wallMs' | 'serverOffsetMs'>
    }
  /** The person's choice when a reload could not know the time. */
  | { readonly kind: 'clock-settled'; readonly life: string; readonly choice: 'by-wall' | 'continued' }

export type RunEvent = EventStamp & Happening
export type EventKind = Happening['kind']
export type EventOf<K extends EventKind> = EventStamp & Extract<Happening, { kind: K }>
