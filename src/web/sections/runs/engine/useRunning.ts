import { useCallback, useEffect, useMemo, useState, useSyncExternalStore } from 'react'
import { type Instant, uuidV7 } from '../../../../kernel/index.js'
import {
  type Following,
  fold,
  follow,
  type Happening,
  nowOf,
  type RunEvent,
  type RunState,
  type Score,
} from '../../../../score/index.js'
import { useBench } from '../../../shared/api/index.js'
import { deviceClock, deviceRandom, notebook, useOnline } from '../../../shared/platform/index.js'
import { Journal, type Written } from './journal.js'
import { RunClock } from './runClock.js'
import type { Opened } from './useOpened.js'
import { useResumed } from './useResumed.js'

/** Writes down that something happened now. Gives the id of what was written. */
export type WriteDown = (tank: string, bath: number | null, happening: Happening) => string

/** A run under way on this screen. */
export interface Running {
  readonly score: Score
  readonly events: readonly RunEvent[]
  readonly state: RunState
  /** By the clocks as they stand; while a time is in doubt the wall clock's. */
  readonly now: Instant
  /** When `now` was read, by the page's monotonic clock, ms. */
  readonly lookedAt: number
  readonly following: Following
  readonly written: Written
  readonly clock: RunClock
  readonly write: WriteDown
}

/** How often the screen looks at the clock, ms. */
const LOOK_MS = 100

export function useRunning({ run, kept, serverOffset }: Opened, score: Score): Running {
  const role = useBench().data?.role ?? 'here'
  const [clock] = useState(() => {
    const made = new RunClock(deviceClock, run.plan.practice ?? 1, Date.parse(run.planned_at))
    made.metServer(serverOffset)
    return made
  })
  const [journal] = useState(() => new Journal(run, notebook, kept))
  useEffect(() => journal.open(), [journal])
  const online = useOnline()
  const heard = useSyncExternalStore(journal.subscribe, journal.written)
  const written = useMemo(() => ({ ...heard, away: heard.away || !online }), [heard, online])
  const write = useCallback<WriteDown>(
    (tank, bath, happening) => {
      const id = uuidV7({ now: deviceClock.wall }, deviceRandom)
      journal.add({ ...clock.read(), id, tank, bath, actor: role, ...happening })
      return id
    },
    [journal, clock, role],
  )
  const { events } = written
  const state = useMemo(() => fold(score, events), [score, events])
  const { reading, lookedAt } = useReading(clock)
  const now = nowOf(events, reading)
  const at = now.kind === 'sure' ? now.at : now.doubt.byWall
  const told = follow(score, state, at)
  const following: Following = now.kind === 'sure' ? told : { tanks: [], doubts: [now.doubt], next: null }
  useResumed({ run, score, clock, state, away: written.away, write })
  return { score, events, state, now: at, lookedAt, following, written, clock, write }
}

/** The clocks, looked at again and again. */
function useReading(clock: RunClock) {
  const [, look] = useState(0)
  useEffect(() => {
    const looking = setInterval(() => look((times) => times + 1), LOOK_MS)
    return () => clearInterval(looking)
  }, [])
  return { reading: clock.read(), lookedAt: deviceClock.monotonic() }
}
