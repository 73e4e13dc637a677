import { useEffect, useState } from 'react'
import { deviceClock } from '../../../shared/platform/index.js'
import { ScreenOffTrial, type TrialOutcome } from './screenOffTrial.js'
import { sounder } from './useSounds.js'

/** Pips for as long as somebody may take to find the switch and come back. */
const PIPS = 120
const PIP = { hertz: 880, seconds: 0.15 } as const

interface TrialShown {
  readonly state: 'not-begun' | 'under-way' | TrialOutcome
  readonly begin: () => void
}

/** A pip each second, while the person turns the screen off and on again. */
export function useScreenOffTrial(): TrialShown {
  const [state, setState] = useState<TrialShown['state']>('not-begun')
  const begin = () =>
    void sounder.wake().then((from) => {
      if (from === 'nothing') return setState({ code: 'silent' })
      sounder.onTrial(true)
      const now = deviceClock.monotonic()
      sounder.play(Array.from({ length: PIPS }, (_, second) => ({ ...PIP, due: now + (second + 1) * 1000 })))
      setState('under-way')
    })
  const underWay = state === 'under-way'
  useEffect(() => {
    if (!underWay) return
    const trial = new ScreenOffTrial(deviceClock, sounder.position)
    const look = () => {
      if (document.visibilityState === 'hidden') return trial.hidden()
      setState(trial.shown())
    }
    document.addEventListener('visibilitychange', look)
    const over = setTimeout(() => setState({ code: 'not-dark' }), PIPS * 1000)
    return () => {
      document.removeEventListener('visibilitychange', look)
      clearTimeout(over)
      sounder.silence()
      sounder.onTrial(false)
    }
  }, [underWay])
  return { state, begin }
}
