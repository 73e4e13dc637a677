import { useEffect, useRef, useState } from 'react'
import { deviceTones, speak } from '../../../shared/platform/index.js'
import { type Cue, cuesOf } from './cues.js'
import type { Running } from './useRunning.js'

const tones = deviceTones()
/** Tones are put on the audio clock so far ahead; the rest when that is over. */
const AHEAD_MS = 60_000
const ANCHOR_MS = 30_000
/** Words that are later than this are not said any more. */
const STALE_MS = 1500
const TRIAL = [0, 0.5, 1].map((inSeconds) => ({ inSeconds, hertz: 880, seconds: 0.15 }))

/** Whether tones can be heard, and a trial of them: a browser plays nothing before it was touched. */
export function useSoundTrial(): { readonly on: boolean; readonly tryIt: () => void } {
  const [on, setOn] = useState(tones.awake)
  const tryIt = () =>
    void tones.wake().then((awake) => {
      setOn(awake)
      tones.schedule(TRIAL)
    })
  return { on, tryIt }
}

/** Sounds and says what is due; scheduled ahead, anchored anew when the plan moves and every half minute. */
export function useSounds({ following, now, clock }: Running): void {
  const cues = following.tanks.flatMap((tank, place) => cuesOf(tank, place, following.tanks.length))
  const plan = cues.map(({ id, at }) => `${id}@${at}`).join()
  const anchor = Math.floor(now / (ANCHOR_MS * clock.speed))
  const latest = useRef<{ cues: readonly Cue[]; now: number }>({ cues, now })
  latest.current = { cues, now }
  // biome-ignore lint/correctness/useExhaustiveDependencies: scheduled anew when the plan moves or is to be anchored
  useEffect(() => {
    const { cues: all, now: at } = latest.current
    const heard = all.filter((cue) => cue.tone !== null && cue.at >= at && cue.at - at < AHEAD_MS * clock.speed)
    tones.schedule(
      heard.flatMap(({ tone, at: due }) => (tone ? [{ ...tone, inSeconds: (due - at) / 1000 / clock.speed }] : [])),
    )
  }, [plan, anchor, clock])
  useEffect(() => {
    const wake = () => void tones.wake()
    window.addEventListener('pointerup', wake, { once: true })
    return () => {
      window.removeEventListener('pointerup', wake)
      tones.silence()
    }
  }, [])
  useVoice(cues, now)
}

/** Says the words of each cue once, at its second. */
function useVoice(cues: readonly Cue[], now: number): void {
  const coming = useRef(new Map<string, Cue>())
  useEffect(() => {
    for (const [id, cue] of coming.current) {
      if (cue.at > now) continue
      coming.current.delete(id)
      if (now - cue.at < STALE_MS && cue.words !== null) speak(cue.words)
    }
    const still = cues.filter(({ at, words }) => at > now && words !== null)
    const dueSoon = [...coming.current.values()].filter(({ at }) => at - now < 1000)
    coming.current = new Map([...dueSoon, ...still].map((cue) => [cue.id, cue]))
  })
}
