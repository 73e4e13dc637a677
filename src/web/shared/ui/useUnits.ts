import { useMemo } from 'react'
import type { UnitSystem } from '../../../kernel/index.js'
import { type Writer, writerFor } from '../../../words/index.js'
import { useBench } from '../api/index.js'

/** The units of the bench; metric until it is known. */
export const useUnits = (): UnitSystem => useBench().data?.units ?? 'metric'

export function useWriter(): Writer {
  const units = useUnits()
  return useMemo(() => writerFor(units), [units])
}
