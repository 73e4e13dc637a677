import { useEffect, useState } from 'react'

/** `kept`: the screen stays on. `missing`: this browser cannot keep it on. `lost`: it could, and does not just now. */
export type Awake = 'kept' | 'missing' | 'lost'

/** Keeps the screen on for as long as the page is shown and `wanted`; a wake lock goes when the page is hidden. */
export function useAwake(wanted: boolean): Awake {
  const can = 'wakeLock' in navigator
  const [kept, setKept] = useState(false)
  useEffect(() => {
    if (!wanted || !can) return
    let lock: WakeLockSentinel | null = null
    let over = false
    const take = async () => {
      if (document.visibilityState !== 'visible' || (lock && !lock.released)) return
      const taken = await navigator.wakeLock.request('screen').catch(() => null)
      if (over) return void taken?.release()
      lock = taken
      setKept(taken !== null)
      taken?.addEventListener('release', () => setKept(false))
    }
    void take()
    document.addEventListener('visibilitychange', take)
    return () => {
      over = true
      document.removeEventListener('visibilitychange', take)
      void lock?.release()
    }
  }, [wanted, can])
  if (!can) return 'missing'
  return kept ? 'kept' : 'lost'
}
