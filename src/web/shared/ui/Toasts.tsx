import { createContext, type ReactNode, useContext, useMemo, useState } from 'react'
import { Button } from './Button.js'
import { Words } from './Words.js'

interface Toast {
  readonly sentence: string
  /** Takes back what was done; gives the sentence to show then. */
  readonly undo?: () => Promise<string>
}
type Tell = (toast: Toast) => void

const TellContext = createContext<Tell>(() => {})

/** Says quietly what was done, with Undo where it can be undone. Stays until it is put away or the next one comes. */
export const useTell = (): Tell => useContext(TellContext)

export function Toasts({ children }: { children: ReactNode }) {
  const [toast, setToast] = useState<Toast | null>(null)
  const tell = useMemo<Tell>(() => setToast, [])
  const undo = async () => {
    const undoing = toast?.undo
    if (!undoing) return
    setToast({ sentence: await undoing().catch((fault: Error) => fault.message) })
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
              {toast.undo && <Button onClick={undo}>Undo</Button>}
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
