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
/** Everything is anchored anew so often … */
const ANCHOR_S = 30
/** … and at once where the sound fell so far behind: a busy device lets it stall. Less is in how a clock is read. */
const STALLED_S = { audioClock: 0.02, track: 0.2 } as const
/** A track that is off by less is left alone, since moving it can be heard. */
const OFF_S = 0.02

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
  /** When it was last anchored: monotonic ms, and seconds of the audio clock or of the track that were right then. */
  #anchored = { at: 0, position: 0 }
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

  /** Brings what is scheduled back to the monotonic clock where that is due. To be called each second. */
  anchor(): void {
    const position = this.position()
    if (position === null) return
    const passed = (this.clock.monotonic() - this.#anchored.at) / 1000
    const off = Math.abs(position - this.#anchored.position - passed)
    const onTrack = this.#from === 'track'
    if (passed < ANCHOR_S && off < (onTrack ? STALLED_S.track : STALLED_S.audioClock)) return
    if (onTrack) this.#moveTrack(this.#anchored.position + passed, off)
    else this.#schedule()
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
    this.#anchored = { at: this.clock.monotonic(), position: this.tones.position() ?? 0 }
    this.tones.schedule(this.#coming().filter(({ inSeconds }) => inSeconds < AHEAD_S))
  }

  #playTrack(): void {
    const coming = this.#coming()
    const last = Math.max(0, ...coming.map(({ inSeconds }) => inSeconds))
    this.#anchored = { at: this.clock.monotonic(), position: 0 }
    this.track.play(coming, Math.min(last + TRACK_S.after, TRACK_S.most))
  }

  #moveTrack(right: number, off: number): void {
    if (off > OFF_S) this.track.moveTo(right)
    this.#anchored = { at: this.clock.monotonic(), position: right }
  }

  #coming(): Tone[] {
    const now = this.clock.monotonic()
    return this.#due
      .map(({ due, ...tone }) => ({ ...tone, inSeconds: (due - now) / 1000 }))
      .filter(({ inSeconds }) => inSeconds >= 0)
  }
}
