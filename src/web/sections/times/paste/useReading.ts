import { keepPreviousData, useQuery } from '@tanstack/react-query'
import { useEffect, useState } from 'react'
import { readTable } from '../../../shared/desk/index.js'

/** How the server reads the pasted text, asked once the typing has stopped for a moment. */
export function useReading(text: string) {
  const [settled, setSettled] = useState(text)
  useEffect(() => {
    const change = setTimeout(() => setSettled(text), 250)
    return () => clearTimeout(change)
  }, [text])
  const query = useQuery({
    queryKey: ['reading', settled],
    queryFn: () => readTable({ text: settled }),
    enabled: settled.trim() !== '',
    placeholderData: keepPreviousData,
    staleTime: Number.POSITIVE_INFINITY,
  })
  // Until the reading is of this very text, it must not be kept.
  return {
    ...query,
    data: text.trim() === '' ? undefined : query.data,
    isFetching: query.isFetching || settled !== text,
  }
}
