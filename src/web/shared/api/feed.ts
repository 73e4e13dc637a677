import { useQueryClient } from '@tanstack/react-query'
import { useEffect } from 'react'
import { feedAddress } from './client.js'
import { KINDS, type Kind, refresh } from './queries.js'

/** Follows the live feed for as long as the page is open; the browser reconnects and says where it was. */
export function useFeed(wanted: boolean): void {
  const queries = useQueryClient()
  useEffect(() => {
    if (!wanted) return
    const feed = new EventSource(feedAddress())
    const hear = (event: MessageEvent<string>) => void refresh(queries, kindsOf(event.data))
    feed.addEventListener('change', hear)
    return () => feed.close()
  }, [queries, wanted])
}

/** The kind that an event names; one that cannot be read makes the page look at everything again. */
function kindsOf(data: string): readonly Kind[] {
  try {
    const { kind } = JSON.parse(data) as { kind?: unknown }
    return KINDS.filter((known) => known === kind)
  } catch {
    return KINDS
  }
}
