/** A tone that is to sound: seconds from now, its pitch in hertz, how long. */
export interface Tone {
  readonly inSeconds: number
  readonly hertz: number
  readonly seconds: number
}

/** Tones scheduled ahead on the audio clock, which goes on evenly while the page is busy. */
export interface Tones {
  /** Browsers let a page sound only after the person touched it; ask from a press. */
  readonly wake: () => Promise<boolean>
  readonly awake: () => boolean
  /** In place of everything that was scheduled before. */
  readonly schedule: (tones: readonly Tone[]) => void
  readonly silence: () => void
}

/** Rise and fall of a tone, seconds: without them it clicks. */
const RAMP = 0.01
const LOUDNESS = 0.5

export function deviceTones(): Tones {
  let context: AudioContext | null = null
  let sounding: OscillatorNode[] = []
  const silence = () => {
    for (const tone of sounding) tone.disconnect()
    sounding = []
  }
  return {
    wake: async () => {
      if (!('AudioContext' in window)) return false
      context ??= new AudioContext()
      await context.resume().catch(() => undefined)
      return context.state === 'running'
    },
    awake: () => context?.state === 'running',
    schedule: (tones) => {
      silence()
      const audio = context
      if (audio === null) return
      sounding = tones.map((tone) => sound(audio, tone))
    },
    silence,
  }
}

function sound(audio: AudioContext, { inSeconds, hertz, seconds }: Tone): OscillatorNode {
  const start = audio.currentTime + Math.max(0, inSeconds)
  const [tone, loudness] = [audio.createOscillator(), audio.createGain()]
  tone.frequency.value = hertz
  loudness.gain.setValueAtTime(0, start)
  loudness.gain.linearRampToValueAtTime(LOUDNESS, start + RAMP)
  loudness.gain.setValueAtTime(LOUDNESS, start + seconds - RAMP)
  loudness.gain.linearRampToValueAtTime(0, start + seconds)
  tone.connect(loudness).connect(audio.destination)
  tone.start(start)
  tone.stop(start + seconds)
  return tone
}
