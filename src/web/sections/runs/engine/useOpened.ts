import { useQuery } from '@tanstack/react-query'
import { ApiProblem, getRun, type Run } from '../../../shared/api/index.js'
import { deviceClock, notebook } from '../../../shared/platform/index.js'
import { type KeptRun, keptUnder } from './journal.js'
import { askServerTime } from './serverTime.js'

/** A run as it was found when its page was opened. */
export interface Opened {
  readonly run: Run
  readonly kept: KeptRun | undefined
  readonly serverOffset: number | null
}

async function openRun(id: string): Promise<Opened> {
  const kept = await notebook.read<KeptRun>(keptUnder(id))
  try {
    const [run, serverOffset] = await Promise.all([getRun(id), askServerTime(deviceClock)])
    return { run, kept, serverOffset }
  } catch (fault) {
    const away = fault instanceof ApiProblem && (fault.status === 0 || fault.status >= 500)
    if (kept === undefined || !away) throw fault
    return { run: kept.run, kept, serverOffset: null }
  }
}

/** Opens a run once per visit; from then on its journal follows what happens. */
export const useOpened = (id: string) =>
  useQuery({ queryKey: ['opened-run', id], queryFn: () => openRun(id), staleTime: Number.POSITIVE_INFINITY, gcTime: 0 })
