import { useEffect, useState } from 'react'

/** A text that follows only once it has stood still for a moment, so that a screen reader is not told every key. */
export function useCalm(text: string, after_ms = 700): string {
  const [calm, setCalm] = useState('')
  useEffect(() => {
    const change = setTimeout(() => setCalm(text), after_ms)
    return () => clearTimeout(change)
  }, [text, after_ms])
  return calm
}
