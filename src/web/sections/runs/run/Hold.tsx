import {
  type KeyboardEvent,
  type MouseEvent,
  type PointerEvent,
  type ReactNode,
  useEffect,
  useRef,
  useState,
} from 'react'
import { say } from '../../../../words/index.js'
import { Words } from '../../../shared/ui/index.js'

interface HoldProps {
  readonly label: string
  /** A second line. */
  readonly more?: string | undefined
  /** The second line while it is held. */
  readonly holding?: string | undefined
  readonly className?: string
  readonly onHeld: () => void
  readonly children?: ReactNode
}

/** Half a second: wet glass and gloves tap by themselves. */
export const HOLD_MS = 500

/** Confirms by being held, by finger or key; a bar fills meanwhile. */
export function Hold({ label, more, holding = more, className = '', onHeld, children }: HoldProps) {
  const [held, setHeld] = useState(false)
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined)
  const confirm = useRef(onHeld)
  confirm.current = onHeld
  const end = () => {
    clearTimeout(timer.current)
    timer.current = undefined
    setHeld(false)
  }
  useEffect(() => () => clearTimeout(timer.current), [])
  const begin = () => {
    if (timer.current !== undefined) return
    setHeld(true)
    timer.current = setTimeout(() => {
      end()
      confirm.current()
    }, HOLD_MS)
  }
  const press = (event: PointerEvent) => {
    if (event.button === 0) begin()
  }
  const key = (event: KeyboardEvent) => {
    if (event.key !== 'Enter' && event.key !== ' ') return
    event.preventDefault()
    event.stopPropagation()
    begin()
  }
  // A click without a pointer comes from a reader of screens, which cannot hold.
  const click = (event: MouseEvent) => {
    if (event.detail === 0) confirm.current()
  }
  return (
    <button
      type="button"
      className={`hold ${held ? 'held' : ''} ${className}`}
      onPointerDown={press}
      onPointerUp={end}
      onPointerLeave={end}
      onPointerCancel={end}
      onKeyDown={key}
      onKeyUp={end}
      onBlur={end}
      onClick={click}
      onContextMenu={(event) => event.preventDefault()}
    >
      <span className="hold-label">
        <Words>{held ? say('tank.keep-holding', {}, 'metric') : label}</Words>
      </span>
      {(held ? holding : more) && (
        <span className="hold-more">
          <Words>{(held ? holding : more) ?? ''}</Words>
        </span>
      )}
      {children}
    </button>
  )
}
