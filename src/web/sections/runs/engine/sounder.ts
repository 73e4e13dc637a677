import type { DeviceClock, Tone, Tones, Track } from '../../../shared/platform/index.js'

/** A tone at a moment of this page's monotonic clock, ms. */
export interface DueTone extends Omit<Tone, 'inSeconds'> {
  readonly due: number
}

/** What the tones come from. */
export type SoundFrom = 'audio-clock' | 'track' | 'nothing'

/** Tones are put on the audio clock so far ahead; the rest when that is over. */
const AHEAD_S = 60
/** A track goes on for so long after its last tone, so that the device does not take it for over; and no longer than. */
const TRACK_S = { after: 600, most: 7200 } as const
/** A track that has drifted by more is moved. */
const DRIFT_S = 0.02

/**
 * Sounds what is due. Where the screen stays on: on the audio clock, a minute ahead. Where it may go dark, or where
 * the audio clock is stopped: as one track of all that is to come, in a media element, which plays on. Both are
 * anchored to the page's monotonic clock again and again, as they drift against it.
 */
export class Sounder {
  #due: readonly DueTone[] = []
  #screenKept = false
  #onTrial = false
  #from: SoundFrom = 'nothing'
  /** Monotonic ms at which what the track plays began. */
  #trackBegan = 0
  readonly #listeners = new Set<() => void>()

  constructor(
    readonly tones: Tones,
    readonly track: Track,
    readonly clock: Pick<DeviceClock, 'monotonic'>,
  ) {
    tones.onChange(() => this.#choose())
    track.onChange(() => this.#choose())
  }

  readonly from = (): SoundFrom => this.#from

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener)
    return () => this.#listeners.delete(listener)
  }

  /** From a press: before it a browser plays nothing. */
  async wake(): Promise<SoundFrom> {
    await Promise.all([this.tones.wake(), this.track.wake()])
    this.#choose()
    return this.#from
  }

  /** Whether the screen is sure to stay on. */
  keepsScreen(kept: boolean): void {
    if (kept === this.#screenKept) return
    this.#screenKept = kept
    this.#choose()
  }

  /** While the screen is turned off on trial it sounds as it would in a dark hour. */
  onTrial(on: boolean): void {
    this.#onTrial = on
    this.#choose()
  }

  /** Seconds played of what is playing, which stands still where the device stops it; null when nothing is. */
  readonly position = (): number | null => {
    if (this.#from === 'nothing') return null
    return this.#from === 'track' ? this.track.position() : this.tones.position()
  }

  /** In place of everything that was due before. */
  play(due: readonly DueTone[]): void {
    this.#due = due
    this.#begin()
  }

  /** Brings what is scheduled back to the monotonic clock. */
  anchor(): void {
    if (this.#from === 'audio-clock') this.#schedule()
    const position = this.#from === 'track' ? this.track.position() : null
    if (position === null) return
    const right = (this.clock.monotonic() - this.#trackBegan) / 1000
    if (Math.abs(position - right) > DRIFT_S) this.track.moveTo(right)
  }

  silence(): void {
    this.#due = []
    this.tones.silence()
    this.track.stop()
  }

  #choose(): void {
    const before = this.#from
    this.#from = this.#best()
    if (this.#from === before) return
    this.#begin()
    for (const listener of this.#listeners) listener()
  }

  #best(): SoundFrom {
    const screenKept = this.#screenKept && !this.#onTrial
    if (this.tones.awake() && (screenKept || !this.track.awake())) return 'audio-clock'
    return this.track.awake() ? 'track' : 'nothing'
  }

  #begin(): void {
    if (this.#from !== 'track') this.track.stop()
    if (this.#from !== 'audio-clock') this.tones.silence()
    if (this.#from === 'audio-clock') this.#schedule()
    if (this.#from === 'track') this.#playTrack()
  }

  #schedule(): void {
    this.tones.schedule(this.#coming().filter(({ inSeconds }) => inSeconds < AHEAD_S))
  }

  #playTrack(): void {
    const coming = this.#coming()
    const last = Math.max(0, ...coming.map(({ inSeconds }) => inSeconds))
    this.#trackBegan = this.clock.monotonic()
    this.track.play(coming, Math.min(last + TRACK_S.after, TRACK_S.most))
  }

  #coming(): Tone[] {
    const now = this.clock.monotonic()
    return this.#due
      .map(({ due, ...tone }) => ({ ...tone, inSeconds: (due - now) / 1000 }))
      .filter(({ inSeconds }) => inSeconds >= 0)
  }
}
