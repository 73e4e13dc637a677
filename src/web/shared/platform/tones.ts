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
  /** In place of everything that was scheduled before and has not begun. */
  readonly schedule: (tones: readonly Tone[]) => void
  readonly silence: () => void
  /** Seconds that the audio clock has gone; null before it was woken. */
  readonly position: () => number | null
  /** Tells when the device lets it sound or stops it: a call comes in, the screen goes dark. */
  readonly onChange: (listener: () => void) => void
}

/** Rise and fall of a tone, seconds: without them it clicks. */
export const RAMP = 0.01
const LOUDNESS = 0.5
/** What a device says of its own delay is believed up to here, seconds. */
const MOST_DELAY = 0.3

/** No tone goes on for longer, seconds. */
const LONGEST = 2

interface Sounding {
  readonly node: OscillatorNode
  readonly start: number
}

export function deviceTones(): Tones {
  let context: AudioContext | null = null
  let sounding: Sounding[] = []
  const listeners: (() => void)[] = []
  const stop = (those: readonly Sounding[]) => {
    for (const { node } of those) node.disconnect()
    sounding = sounding.filter((one) => !those.includes(one))
  }
  const open = () => {
    const opened = new AudioContext()
    opened.onstatechange = () => {
      for (const listener of listeners) listener()
    }
    return opened
  }
  return {
    wake: async () => {
      if (!('AudioContext' in window)) return false
      context ??= open()
      await context.resume().catch(() => undefined)
      return context.state === 'running'
    },
    awake: () => context?.state === 'running',
    schedule: (tones) => {
      if (context === null) return
      const now = context.currentTime
      stop(sounding.filter(({ start }) => start > now))
      const heard = now - Math.min(context.outputLatency || 0, MOST_DELAY)
      // One that should have begun already has, since it was scheduled before.
      const coming = tones.filter(({ inSeconds }) => heard + inSeconds > now)
      sounding = [...sounding.filter(({ start }) => start > now - LONGEST), ...soundOn(context, coming, heard)]
    },
    silence: () => stop(sounding),
    position: () => context?.currentTime ?? null,
    onChange: (listener) => void listeners.push(listener),
  }
}

/** Puts tones on an audio clock on which `now` is this moment. */
export function soundOn(audio: BaseAudioContext, tones: readonly Tone[], now: number): Sounding[] {
  return tones.map(({ inSeconds, hertz, seconds }) => {
    const start = now + inSeconds
    const [node, loudness] = [audio.createOscillator(), audio.createGain()]
    node.frequency.value = hertz
    loudness.gain.setValueAtTime(0, start)
    loudness.gain.linearRampToValueAtTime(LOUDNESS, start + RAMP)
    loudness.gain.setValueAtTime(LOUDNESS, start + seconds - RAMP)
    loudness.gain.linearRampToValueAtTime(0, start + seconds)
    node.connect(loudness).connect(audio.destination)
    node.start(start)
    node.stop(start + seconds)
    return { node, start }
  })
}
