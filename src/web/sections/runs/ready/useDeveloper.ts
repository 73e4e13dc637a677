import { useState } from 'react'
import type { Celsius } from '../../../../kernel/index.js'
import type { Happening, TankFollowing } from '../../../../score/index.js'
import type { Run } from '../../../shared/api/index.js'
import type { Running } from '../engine/useRunning.js'
import { developingBath, pullOf } from '../names.js'
import { triedReading } from '../run/Thermometer.js'

/** The developer before the pour. */
export interface ReadyDeveloper {
  readonly index: number
  readonly planned: Celsius
  /** By the thermometer put right. */
  readonly shown: Celsius
  /** What the thermometer itself shows then. */
  readonly shows: Celsius
  readonly step: (by: number) => void
  /** Seconds by the plan, and as it reads; null where it cannot be followed at what it reads. */
  readonly plannedTime: number
  readonly time: number | null
  /** How far the thermometer may be out, and the seconds that this makes. */
  readonly error: { readonly degrees: number; readonly seconds: number }
  /** What the room makes of the developer until the pour-out; null where it is not reckoned with. */
  readonly pull: number | null
  /** What is written down at the pour; null where nothing was read. */
  readonly reading: Extract<Happening, { kind: 'reading' }> | null
}

/** A thermometer of which nothing is known is taken to be this far out, °C. */
const UNKNOWN = 0.5

/** What the developer reads and what that makes of its time; null for lists that are not timed by temperature. */
export function useDeveloper(running: Running, run: Run, tank: TankFollowing): ReadyDeveloper | null {
  const [typed, setTyped] = useState<Celsius | null>(null)
  const began = running.score.tanks.find(({ tank: { tank: name } }) => name === tank.tank)
  const bath = began === undefined ? null : developingBath(began)
  if (bath?.development?.from !== 'basis') return null
  const planned = bath.development.course.start
  const shown = typed ?? planned
  const { off_c: off = 0, band_c: degrees = UNKNOWN } = run.plan.thermometer ?? {}
  const { room } = bath.development.course
  const plannedTime = bath.clockEnd - bath.in
  const tried = triedReading(running, tank, shown, true)
  const beside = triedReading(running, tank, (shown + degrees) as Celsius, true)
  const outside = tried === null || tried.verdict === 'outside'
  return {
    index: bath.index,
    planned,
    shown,
    shows: (shown + off) as Celsius,
    step: (by) => setTyped((Math.round((shown + by) * 10) / 10) as Celsius),
    plannedTime,
    time: outside ? null : plannedTime + tried.shift,
    error: { degrees, seconds: outside || beside === null ? 0 : Math.abs(beside.shift - tried.shift) },
    pull: room === null ? null : pullOf(room, bath),
    reading: typed === null ? null : { kind: 'reading', temperature: shown, confirmed: true },
  }
}
