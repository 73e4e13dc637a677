import { useIsMutating } from '@tanstack/react-query'
import { createContext, type ReactNode, useContext, useEffect, useMemo, useState } from 'react'
import { usePlace } from '../navigation/index.js'
import { Button } from './Button.js'
import { Words } from './Words.js'

interface Toast {
  readonly sentence: string
  /** Takes back what was done; gives the sentence to show then. */
  readonly undo?: () => Promise<string>
}
type Tell = (toast: Toast) => void

/** What cannot be undone is only news, and goes by itself. */
const NEWS_MS = 8000

const TellContext = createContext<Tell>(() => {})

/**
 * Says quietly what was done, with Undo where it can be undone. What can be undone stays until it
 * is put away or the next one comes, and waits while something is being written; news goes when the person goes on.
 */
export const useTell = (): Tell => useContext(TellContext)

export function Toasts({ children }: { children: ReactNode }) {
  const [told, setToast] = useState<(Toast & { path: string }) | null>(null)
  const { path } = usePlace()
  // What is just being written may stand in place of what Undo would take back, so until it is kept nothing is undone.
  const writing = useIsMutating() > 0
  const tell = useMemo<Tell>(() => (toast) => setToast({ ...toast, path: window.location.pathname }), [])
  const toast = told && (told.undo || told.path === path) ? told : null
  useEffect(() => {
    if (told === null || told.undo) return
    const gone = setTimeout(() => setToast(null), NEWS_MS)
    return () => clearTimeout(gone)
  }, [told])
  const undo = async () => {
    const undoing = toast?.undo
    if (!undoing) return
    tell({ sentence: await undoing().catch((fault: Error) => fault.message) })
  }
  return (
    <TellContext value={tell}>
      {children}
      <section className="toasts" aria-label="What was just done">
        <div role="status">
          {toast && (
            <div className="toast">
              <p>
                <Words>{toast.sentence}</Words>
              </p>
              {toast.undo && (
                <Button onClick={undo} waits={writing}>
                  Undo
                </Button>
              )}
              <Button look="bare" onClick={() => setToast(null)}>
                Put away
              </Button>
            </div>
          )}
        </div>
      </section>
    </TellContext>
  )
}
