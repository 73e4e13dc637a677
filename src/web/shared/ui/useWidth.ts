import { type RefObject, useLayoutEffect, useRef, useState } from 'react'

/** The width an element has on the page, for pictures drawn at their true size. 0 until it is known. */
export function useWidth<T extends HTMLElement>(): [RefObject<T | null>, number] {
  const element = useRef<T>(null)
  const [width, setWidth] = useState(0)
  useLayoutEffect(() => {
    const watched = element.current
    if (!watched) return
    setWidth(Math.floor(watched.clientWidth))
    const observer = new ResizeObserver(() => setWidth(Math.floor(watched.clientWidth)))
    observer.observe(watched)
    return () => observer.disconnect()
  }, [])
  return [element, width]
}
