import { useSyncExternalStore } from 'react'

/** Where the person is: path and what is asked of it. */
interface Place {
  readonly path: string
  readonly search: URLSearchParams
}

let stepped = false
if (typeof window !== 'undefined')
  window.addEventListener('popstate', () => {
    stepped = true
  })

/** True once after the person went to another page; the first page after loading is no step. */
export function tookStep(): boolean {
  const was = stepped
  stepped = false
  return was
}

const listeners = new Set<() => void>()
const tell = () => {
  for (const listener of listeners) listener()
}
const href = () => window.location.pathname + window.location.search

function subscribe(listener: () => void): () => void {
  listeners.add(listener)
  window.addEventListener('popstate', listener)
  return () => {
    listeners.delete(listener)
    window.removeEventListener('popstate', listener)
  }
}

/** Goes to a path of this program. `replace` leaves no step to go back to. */
export function go(to: string, { replace = false } = {}): void {
  if (to === href()) return
  try {
    window.history[replace ? 'replaceState' : 'pushState'](null, '', to)
  } catch {
    // Some browsers allow only so many changes in half a minute; the page itself is as it should be.
    if (!replace) window.location.assign(to)
    return
  }
  if (!replace) {
    stepped = true
    window.scrollTo(0, 0)
  }
  tell()
}

export function usePlace(): Place {
  const url = new URL(useSyncExternalStore(subscribe, href), 'http://here')
  return { path: url.pathname, search: url.searchParams }
}

/** The values of `:name` parts when `path` fits `pattern`, else null. */
export function fit(pattern: string, path: string): Record<string, string> | null {
  const want = pattern.split('/')
  const have = path === '/' ? ['', ''] : path.replace(/\/$/, '').split('/')
  if (want.length !== have.length) return null
  const values: Record<string, string> = {}
  for (const [index, part] of want.entries()) {
    const given = have[index] ?? ''
    if (part.startsWith(':')) values[part.slice(1)] = readable(given)
    else if (part !== given) return null
  }
  return values
}

function readable(part: string): string {
  try {
    return decodeURIComponent(part)
  } catch {
    return part
  }
}
