import { useEffect, useRef } from 'react'
import { deviceVoice } from '../../../shared/platform/index.js'

const COUNTED = ['three', 'two', 'one'] as const
const SECOND_MS = 1000

/** A page without light or words, woken only by a hold of three seconds, counted aloud where there is a voice. */
export function Blackout({ onWake }: { onWake: () => void }) {
  const counting = useRef<ReturnType<typeof setInterval> | null>(null)
  const page = useRef<HTMLButtonElement>(null)
  const end = () => {
    if (counting.current !== null) clearInterval(counting.current)
    counting.current = null
  }
  useEffect(() => {
    page.current?.focus()
    return () => {
      if (counting.current !== null) clearInterval(counting.current)
    }
  }, [])
  const begin = () => {
    if (counting.current !== null) return
    let said = 0
    deviceVoice.say(COUNTED[0])
    counting.current = setInterval(() => {
      said += 1
      const word = COUNTED[said]
      if (word !== undefined) return deviceVoice.say(word)
      end()
      onWake()
    }, SECOND_MS)
  }
  return (
    <button
      ref={page}
      type="button"
      className="blackout"
      aria-label="Hold for three seconds to bring the screen back"
      onPointerDown={begin}
      onPointerUp={end}
      onPointerLeave={end}
      onPointerCancel={end}
      onKeyDown={begin}
      onKeyUp={end}
      onBlur={end}
      onContextMenu={(event) => event.preventDefault()}
    />
  )
}
