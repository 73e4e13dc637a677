import type { ComponentProps, MouseEvent } from 'react'
import { go } from './place.js'

/** A link inside the program; opens elsewhere as any link does when the person asks the browser to. */
export function Link({ href, ...rest }: ComponentProps<'a'> & { href: string }) {
  const follow = (event: MouseEvent) => {
    if (event.defaultPrevented || event.button !== 0 || event.metaKey || event.ctrlKey || event.shiftKey) return
    event.preventDefault()
    go(href)
  }
  return <a href={href} {...rest} onClick={follow} />
}
