import { RAMP, type Tone } from './tones.js'

/** Samples a second: enough for tones up to 1500 Hz, and small enough for two hours in memory. */
export const TRACK_RATE = 8000
/** Samples are one byte; this is silence. */
const SILENCE = 128
const LOUDNESS = 100
const HEADER = 44

/** Silence of so many seconds with the tones at their seconds, as samples. */
export function renderTrack(tones: readonly Tone[], seconds: number): Uint8Array<ArrayBuffer> {
  const samples = new Uint8Array(Math.ceil(seconds * TRACK_RATE)).fill(SILENCE)
  for (const tone of tones) {
    const first = Math.round(tone.inSeconds * TRACK_RATE)
    const length = Math.round(tone.seconds * TRACK_RATE)
    for (let i = Math.max(0, -first); i < length && first + i < samples.length; i++) {
      const at = i / TRACK_RATE
      const swell = Math.min(1, at / RAMP, (tone.seconds - at) / RAMP)
      samples[first + i] = SILENCE + Math.round(LOUDNESS * swell * Math.sin(2 * Math.PI * tone.hertz * at))
    }
  }
  return samples
}

/** The samples as a file of uncompressed sound (RIFF WAVE, one channel of bytes). */
export function trackFile(samples: Uint8Array<ArrayBuffer>): Blob {
  const header = new DataView(new ArrayBuffer(HEADER))
  const words = (at: number, text: string) => {
    for (const [i, letter] of [...text].entries()) header.setUint8(at + i, letter.charCodeAt(0))
  }
  words(0, 'RIFF')
  header.setUint32(4, HEADER - 8 + samples.length, true)
  words(8, 'WAVEfmt ')
  header.setUint32(16, 16, true)
  header.setUint16(20, 1, true)
  header.setUint16(22, 1, true)
  header.setUint32(24, TRACK_RATE, true)
  header.setUint32(28, TRACK_RATE, true)
  header.setUint16(32, 1, true)
  header.setUint16(34, 8, true)
  words(36, 'data')
  header.setUint32(40, samples.length, true)
  return new Blob([header.buffer, samples], { type: 'audio/wav' })
}

/** One long piece of sound in a media element: devices let that play on when the screen goes dark. */
export interface Track {
  /** As for tones: from a press. Plays silence, after which the device lets it play something else unasked. */
  readonly wake: () => Promise<boolean>
  readonly awake: () => boolean
  /** In place of what was playing, from its beginning. */
  readonly play: (tones: readonly Tone[], seconds: number) => void
  /** Seconds played of what is playing; null when nothing is. */
  readonly position: () => number | null
  readonly moveTo: (second: number) => void
  readonly stop: () => void
  /** Tells when the device does not let it play after all. */
  readonly onChange: (listener: () => void) => void
}

export function deviceTrack(): Track {
  let element: HTMLAudioElement | null = null
  let address: string | null = null
  let allowed = false
  const listeners: (() => void)[] = []
  const start = async (file: Blob): Promise<boolean> => {
    element ??= new Audio()
    if (address !== null) URL.revokeObjectURL(address)
    address = URL.createObjectURL(file)
    element.src = address
    const mine = address
    return element.play().then(
      () => true,
      // One that was replaced before it began says nothing about the device.
      () => address !== mine,
    )
  }
  return {
    wake: async () => {
      if (!allowed) allowed = await start(trackFile(renderTrack([], 0.2)))
      return allowed
    },
    awake: () => allowed,
    play: (tones, seconds) => {
      void start(trackFile(renderTrack(tones, seconds))).then((plays) => {
        allowed = plays
        if (!plays) for (const listener of listeners) listener()
      })
    },
    position: () => (element === null || element.paused ? null : element.currentTime),
    moveTo: (second) => {
      if (element !== null) element.currentTime = second
    },
    stop: () => element?.pause(),
    onChange: (listener) => void listeners.push(listener),
  }
}
