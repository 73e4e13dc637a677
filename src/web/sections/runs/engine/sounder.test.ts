import { describe, expect, it } from 'vitest'
import { locateOnsets } from '../../../../../test/support/onsets.js'
import type { Tone, Tones, Track } from '../../../shared/platform/index.js'
import { renderTrack, TRACK_RATE } from '../../../shared/platform/track.js'
import { cuesOfAnHour, HOUR_S, NOON } from './hour.test-support.js'
import { Sounder } from './sounder.js'

/** An audio clock was seen to run so much faster than the page's. */
const DRIFT = 1 + 60e-6
const ANCHOR_S = 30
const WITHIN_S = 0.05

const tones = cuesOfAnHour()
  .flatMap(({ tone, at }) => (tone === null ? [] : [{ ...tone, second: (at - NOON) / 1000 }]))
  .sort((a, b) => a.second - b.second)
const instants = tones.map(({ second }) => second)
const due = tones.map(({ second, hertz, seconds }) => ({ due: second * 1000, hertz, seconds }))

/** A page whose clock the test moves, with an audio clock and a media element that drift against it. */
class Device {
  second = 0
  #stalled = 0
  running = true
  readonly sounded: Tone[] = []
  #scheduled: Tone[] = []
  #track: { tones: readonly Tone[]; began: number; at: number } | null = null
  readonly clock = { monotonic: () => this.second * 1000 }
  readonly tones: Tones = {
    wake: async () => this.running,
    awake: () => this.running,
    schedule: (all) => {
      this.#settle()
      this.#scheduled = all.map((tone) => ({ ...tone, inSeconds: this.#audio() + tone.inSeconds }))
    },
    silence: () => this.tones.schedule([]),
    position: () => this.#audio(),
    onChange: () => undefined,
  }
  readonly track: Track = {
    wake: async () => true,
    awake: () => true,
    play: (all) => {
      // It takes a while to begin.
      this.#track = { tones: all, began: this.second + 0.04, at: 0 }
    },
    position: () => this.#position(),
    moveTo: (second) => {
      this.#hear()
      if (this.#track) this.#track = { ...this.#track, began: this.second, at: second }
    },
    stop: () => {
      this.#track = null
    },
    onChange: () => undefined,
  }

  stall(seconds: number): void {
    this.second += seconds
    this.#stalled += seconds
  }

  /** When a tone sounded, by the page's clock. */
  soundedAt(place: number): number {
    this.#settle()
    return this.sounded[place]?.inSeconds ?? Number.NaN
  }

  pass(seconds: number): void {
    this.second += seconds
  }

  /** Everything heard, as 8 kHz sound. */
  audio(): Uint8Array {
    this.#settle()
    this.#hear()
    return renderTrack(this.sounded, HOUR_S)
  }

  #audio(): number {
    return (this.second - this.#stalled) * DRIFT
  }

  #position(): number | null {
    return this.#track === null ? null : this.#track.at + (this.second - this.#track.began) * DRIFT
  }

  /** What the audio clock has come to sounded at its own second, told by the page's. */
  #settle(): void {
    const begun = this.#scheduled.filter(({ inSeconds }) => inSeconds <= this.#audio())
    this.sounded.push(...begun.map((tone) => ({ ...tone, inSeconds: tone.inSeconds / DRIFT + this.#stalled })))
    this.#scheduled = this.#scheduled.filter((tone) => !begun.includes(tone))
  }

  #hear(): void {
    const track = this.#track
    if (track === null) return
    const to = this.#position() ?? 0
    const heard = track.tones.filter(({ inSeconds }) => inSeconds >= track.at && inSeconds < to)
    const at = ({ inSeconds }: Tone) => track.began + (inSeconds - track.at) / DRIFT
    this.sounded.push(...heard.map((tone) => ({ ...tone, inSeconds: at(tone) })))
  }
}

async function hour({ screenKept = true, anchored = true } = {}): Promise<number[]> {
  const device = new Device()
  const sounder = new Sounder(device.tones, device.track, device.clock)
  sounder.keepsScreen(screenKept)
  await sounder.wake()
  sounder.play(due)
  for (let second = 0; second < HOUR_S; second += ANCHOR_S) {
    device.pass(ANCHOR_S)
    if (anchored) sounder.anchor()
  }
  return locateOnsets(device.audio(), TRACK_RATE, 128, 10)
}

const furthest = (onsets: readonly number[]): number =>
  Math.max(...onsets.map((onset, i) => Math.abs(onset - (instants[i] as number))))

describe('the sound of an hour, at 8 kHz', () => {
  it('has every tone within 50 ms of its instant, though the audio clock drifts', async () => {
    const onsets = await hour()
    expect(instants.length).toBeGreaterThan(150)
    expect(onsets).toHaveLength(instants.length)
    expect(furthest(onsets)).toBeLessThan(WITHIN_S)
  })

  it('has them as well as one track, for a screen that may go dark', async () => {
    const onsets = await hour({ screenKept: false })
    expect(onsets).toHaveLength(instants.length)
    expect(furthest(onsets)).toBeLessThan(WITHIN_S)
  })

  it('catches up within a second when a busy device lets the audio clock stall', async () => {
    const device = new Device()
    const sounder = new Sounder(device.tones, device.track, device.clock)
    sounder.keepsScreen(true)
    await sounder.wake()
    sounder.play([{ due: 20_000, hertz: 880, seconds: 0.15 }])
    device.pass(5)
    sounder.anchor()
    device.stall(0.4)
    device.pass(1)
    sounder.anchor()
    device.pass(20)
    expect(Math.abs(device.soundedAt(0) - 20)).toBeLessThan(WITHIN_S)
  })

  it('would run out, and a track run away, were it never anchored', async () => {
    expect((await hour({ anchored: false })).length).toBeLessThan(10)
    expect(furthest(await hour({ screenKept: false, anchored: false }))).toBeGreaterThan(WITHIN_S)
  })
})

describe('what the tones come from', () => {
  it('is nothing before a press, then the audio clock, and the track as soon as the screen may go dark', async () => {
    const device = new Device()
    device.running = false
    const asleep = { ...device.track, awake: () => device.running }
    const sounder = new Sounder(device.tones, asleep, device.clock)
    sounder.keepsScreen(true)
    expect(sounder.from()).toBe('nothing')
    device.running = true
    expect(await sounder.wake()).toBe('audio-clock')
    sounder.keepsScreen(false)
    expect(sounder.from()).toBe('track')
  })

  it('is the track while the device has stopped the audio clock, and the audio clock again after', async () => {
    const device = new Device()
    const sounder = new Sounder(device.tones, device.track, device.clock)
    sounder.keepsScreen(true)
    await sounder.wake()
    device.running = false
    expect(await sounder.wake()).toBe('track')
    device.running = true
    expect(await sounder.wake()).toBe('audio-clock')
  })
})
