import { useState } from 'react'
import type { Celsius } from '../../../../kernel/index.js'
import type { Happening, TankFollowing } from '../../../../score/index.js'
import type { Running } from '../engine/useRunning.js'
import { developingBath } from '../names.js'
import { triedReading } from '../run/Thermometer.js'

/** The developer before the pour. */
export interface ReadyDeveloper {
  readonly index: number
  readonly planned: Celsius
  readonly shown: Celsius
  readonly step: (by: number) => void
  /** Seconds by the plan, and as it reads; null where it cannot be followed at what it reads. */
  readonly plannedTime: number
  readonly time: number | null
  /** Seconds that half a degree of error makes. */
  readonly halfDegree: number
  /** What is written down at the pour; null where nothing was read. */
  readonly reading: Extract<Happening, { kind: 'reading' }> | null
}

const HALF = 0.5

/** What the developer reads and what that makes of its time; null for lists that are not timed by temperature. */
export function useDeveloper(running: Running, tank: TankFollowing): ReadyDeveloper | null {
  const [typed, setTyped] = useState<Celsius | null>(null)
  const began = running.score.tanks.find(({ tank: { tank: name } }) => name === tank.tank)
  const bath = began === undefined ? null : developingBath(began)
  if (bath?.development?.from !== 'basis') return null
  const planned = bath.development.course.start
  const shown = typed ?? planned
  const plannedTime = bath.clockEnd - bath.in
  const tried = triedReading(running, tank, shown, true)
  const beside = triedReading(running, tank, (shown + HALF) as Celsius, true)
  const outside = tried === null || tried.verdict === 'outside'
  return {
    index: bath.index,
    planned,
    shown,
    step: (by) => setTyped((Math.round((shown + by) * 10) / 10) as Celsius),
    plannedTime,
    time: outside ? null : plannedTime + tried.shift,
    halfDegree: outside || beside === null ? 0 : Math.abs(beside.shift - tried.shift),
    reading: typed === null ? null : { kind: 'reading', temperature: shown, confirmed: true },
  }
}
