import { useEffect, useRef, useState, useSyncExternalStore } from 'react'
import {
  type Awake,
  deviceClock,
  deviceTones,
  deviceTrack,
  deviceVoice,
  useAwake,
} from '../../../shared/platform/index.js'
import { Announcer } from './announcer.js'
import { type Cue, cuesOf } from './cues.js'
import { Sounder, type SoundFrom } from './sounder.js'
import type { Running } from './useRunning.js'

/** One for the page: what a press has woken stays awake from the trial into the run. */
export const sounder = new Sounder(deviceTones(), deviceTrack(), deviceClock)
const LOOK_MS = 1000
const TRIAL_S = [0.1, 0.6, 1.1]

/** What of this device carries a run. */
export interface DeviceParts {
  readonly awake: Awake
  readonly sound: SoundFrom
  readonly voice: boolean
  readonly tryIt: () => void
}

/** The screen is kept on while the page is shown; tells that, and what the tones come from. */
export function useDeviceParts(): DeviceParts {
  const awake = useAwake(true)
  const sound = useSyncExternalStore(sounder.subscribe, sounder.from)
  useEffect(() => sounder.keepsScreen(awake === 'kept'), [awake])
  const tryIt = () =>
    void sounder.wake().then(() => {
      const now = deviceClock.monotonic()
      sounder.play(TRIAL_S.map((second) => ({ due: now + second * 1000, hertz: 880, seconds: 0.15 })))
    })
  return { awake, sound, voice: deviceVoice.here(), tryIt }
}

/** Sounds and says what is due; scheduled ahead, anchored anew again and again, replaced when the plan moves. */
export function useSounds({ following, now, lookedAt, clock }: Running): void {
  const cues = following.tanks.flatMap((tank, place) => cuesOf(tank, place, following.tanks.length))
  const plan = cues.map(({ id, at }) => `${id}@${at}`).join()
  const latest = useRef<{ cues: readonly Cue[]; now: number; lookedAt: number }>({ cues, now, lookedAt })
  latest.current = { cues, now, lookedAt }
  // biome-ignore lint/correctness/useExhaustiveDependencies: played anew when the plan moves
  useEffect(() => {
    const { cues: all, now: at, lookedAt: looked } = latest.current
    sounder.play(
      all.flatMap(({ tone, at: due }) => (tone ? [{ ...tone, due: looked + (due - at) / clock.speed }] : [])),
    )
  }, [plan, clock])
  useEffect(() => {
    // A call or an alarm may have stopped it, so the next press wakes it again; a pedal is a press too.
    const wake = () => {
      if (sounder.from() === 'nothing') void sounder.wake()
    }
    window.addEventListener('pointerup', wake)
    window.addEventListener('keydown', wake)
    const anchoring = setInterval(() => sounder.anchor(), LOOK_MS)
    return () => {
      window.removeEventListener('pointerup', wake)
      window.removeEventListener('keydown', wake)
      clearInterval(anchoring)
      sounder.silence()
    }
  }, [])
  const [announcer] = useState(() => new Announcer(deviceVoice))
  useEffect(() => announcer.hear(cues, now))
}
