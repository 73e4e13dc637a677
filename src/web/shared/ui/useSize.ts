import { type RefObject, useLayoutEffect, useRef, useState } from 'react'

interface Size {
  readonly width: number
  readonly height: number
}

/** The room an element has on the page, for pictures drawn at their true size; px, 0 until it is known. */
export function useSize<T extends HTMLElement>(): [RefObject<T | null>, Size] {
  const element = useRef<T>(null)
  const [size, setSize] = useState<Size>({ width: 0, height: 0 })
  useLayoutEffect(() => {
    const watched = element.current
    if (!watched) return
    const measure = () => {
      const found = { width: Math.floor(watched.clientWidth), height: Math.floor(watched.clientHeight) }
      setSize((known) => (known.width === found.width && known.height === found.height ? known : found))
    }
    measure()
    const observer = new ResizeObserver(measure)
    observer.observe(watched)
    return () => observer.disconnect()
  }, [])
  return [element, size]
}

/** The width alone. */
export function useWidth<T extends HTMLElement>(): [RefObject<T | null>, number] {
  const [element, { width }] = useSize<T>()
  return [element, width]
}
