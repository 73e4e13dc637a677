import { useCallback, useState } from 'react'
import { keptForTab } from '../platform/index.js'

/** What is being typed, kept for this tab so that a reload loses nothing. `clear` once it is saved. */
export function useDraft<T extends object>(name: string, initial: T) {
  const key = `wetside.draft.${name}`
  const [draft, setDraft] = useState<T>(() => ({ ...initial, ...kept<T>(key) }))
  const change = useCallback(
    (part: Partial<T>) =>
      setDraft((now) => {
        const next = { ...now, ...part }
        keptForTab.write(key, JSON.stringify(next))
        return next
      }),
    [key],
  )
  const clear = useCallback(() => keptForTab.write(key, null), [key])
  return { draft, change, clear }
}

function kept<T>(key: string): Partial<T> {
  try {
    return JSON.parse(keptForTab.read(key) ?? '{}') as Partial<T>
  } catch {
    return {}
  }
}
