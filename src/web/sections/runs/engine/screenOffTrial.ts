import type { DeviceClock } from '../../../shared/platform/index.js'

/** What came of turning the screen off for a while; spans in seconds. */
export type TrialOutcome =
  | { readonly code: 'not-dark' }
  /** Nothing can be played at all. */
  | { readonly code: 'silent' }
  | { readonly code: 'went-on'; readonly dark: number }
  | { readonly code: 'stopped'; readonly dark: number; readonly played: number }

/** Shorter than this says nothing: a device takes a while before it stops a page. */
const LEAST_DARK_S = 8
/** What is played lags behind the clock by less than this. */
const LAG_S = 1

/**
 * Whether tones go on while the screen is off: how far what is playing came while the page was not shown. By the
 * wall clock, as the monotonic one stands still on some devices while they sleep.
 */
export class ScreenOffTrial {
  #dark: { readonly wall: number; readonly position: number } | null = null

  constructor(
    readonly clock: Pick<DeviceClock, 'wall'>,
    /** Seconds played by now; null where nothing plays. */
    readonly position: () => number | null,
  ) {}

  /** The page is shown no more. */
  hidden(): void {
    this.#dark = { wall: this.clock.wall(), position: this.position() ?? 0 }
  }

  /** The page is shown again. */
  shown(): TrialOutcome {
    const before = this.#dark
    if (before === null) return { code: 'not-dark' }
    const dark = (this.clock.wall() - before.wall) / 1000
    if (dark < LEAST_DARK_S) return { code: 'not-dark' }
    const played = Math.max(0, (this.position() ?? before.position) - before.position)
    return played > dark - LAG_S ? { code: 'went-on', dark } : { code: 'stopped', dark, played }
  }
}
