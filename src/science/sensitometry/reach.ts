import { failed, ok, problem, type Result } from '../../kernel/index.js'
import { short } from '../saying.js'
import { firstReaching } from './curve.js'
import type { CharacteristicCurve } from './definition.js'

/** Readings of exposure this close to the end of the curve still count as on it. */
const HAIR = 1e-9

/** Log exposure of a net density, or the refusal that says which end of the curve is missing. */
export function exposureAtNet(curve: CharacteristicCurve, net: number, what: string): Result<number> {
  const wanted = curve.baseFog + net
  const found = firstReaching(curve, wanted)
  if (found !== null) return ok(found)
  const lightest = curve.at(curve.from)
  if (lightest > wanted)
    return failed(
      problem('curve.starts-too-dense', { what, wanted: short(wanted, 3), reached: short(lightest, 3) }, 'steps'),
    )
  const details = { what, wanted: short(wanted, 3), reached: short(curve.at(curve.to), 3) }
  return failed(problem('curve.not-reached', details, 'steps'))
}

/** Density at a log exposure that the steps must reach. */
export function densityAt(curve: CharacteristicCurve, logExposure: number, what: string): Result<number> {
  if (logExposure <= curve.to + HAIR && logExposure >= curve.from - HAIR) return ok(curve.at(logExposure))
  const details = { what, wanted: short(logExposure, 3), reached: short(curve.to, 3) }
  return failed(problem('curve.beyond-exposure', details, 'steps'))
}
