import { useEffect, useRef } from 'react'
import type { ClockReading, RunState, Score } from '../../../../score/index.js'
import type { Run } from '../../../shared/api/index.js'
import { deviceClock, keptOnDevice, pageLife } from '../../../shared/platform/index.js'
import type { RunClock } from './runClock.js'
import { askServerTime } from './serverTime.js'
import type { WriteDown } from './useRunning.js'

interface Resuming {
  readonly run: Run
  readonly score: Score
  readonly clock: RunClock
  readonly state: RunState
  readonly away: boolean
  readonly write: WriteDown
}

type Moment = Pick<ClockReading, 'life' | 'monotonicMs' | 'wallMs' | 'serverOffsetMs'>

/** How often the moment is kept, so that a reloaded page knows when its predecessor last lived. */
const KEEP_MS = 1000
const lastMoment = (id: string) => `wetside.run.${id}.last`

/**
 * Hands time on from one loading of the page to the next: keeps the last moment while the run is under way, and
 * writes it down first thing after a reload; once more when the server is reached, which ends any doubt.
 */
export function useResumed({ run, score, clock, state, away, write }: Resuming): void {
  const underWay = state.tanks.some(({ started, steps }) => started !== null || steps.size > 0)
  const previous = useRef(underWay ? momentBefore(run.id) : null)
  const tank = score.tanks[0]?.tank.tank ?? ''
  const said = useRef(false)
  useEffect(() => {
    if (said.current) return
    said.current = true
    if (previous.current !== null) write(tank, null, { kind: 'resumed', previous: previous.current })
    if (clock.knowsServer) previous.current = null
  }, [write, tank, clock])
  useEffect(() => {
    if (!underWay) return
    const keep = () => {
      const { life, monotonicMs, wallMs, serverOffsetMs } = clock.read()
      keptOnDevice.write(lastMoment(run.id), JSON.stringify({ life, monotonicMs, wallMs, serverOffsetMs }))
    }
    keep()
    const keeping = setInterval(keep, KEEP_MS)
    return () => clearInterval(keeping)
  }, [underWay, clock, run.id])
  useEffect(() => {
    if (away || clock.knowsServer) return
    let over = false
    void askServerTime(deviceClock).then((offset) => {
      if (over || offset === null || clock.knowsServer) return
      clock.metServer(offset)
      if (previous.current !== null) write(tank, null, { kind: 'resumed', previous: previous.current })
      previous.current = null
    })
    return () => {
      over = true
    }
  }, [away, clock, write, tank])
}

/** The last moment of the loading before this one; null when this is the first, or nothing was kept. */
function momentBefore(id: string): Moment | null {
  const kept = keptOnDevice.read(lastMoment(id))
  if (kept === null) return null
  try {
    const moment = JSON.parse(kept) as Moment
    return moment.life === pageLife ? null : moment
  } catch {
    return null
  }
}
