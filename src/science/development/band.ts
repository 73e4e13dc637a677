import type { Seconds } from '../../kernel/index.js'
import { curveOf, timeOn } from './curve.js'
import type { DevelopingTime, TimeBasis } from './definition.js'
import { halfStep } from './rounding.js'

interface Asked {
  /** Time at the temperature before modifiers. */
  readonly unmodified: Seconds
  /** Product of the modifiers. */
  readonly product: number
  readonly thermometerError: number
}

/**
 * Give or take on a developing time.
 *
 * By sheet and law: half of the sheet's rounding step, and the uncertain slope over the distance to the
 * nearest point, as independent parts. By the thermometer: what its error makes of the time on the worse
 * side; where the basis refuses a time on that side, its slope here is carried on.
 */
export function timeBand(basis: TimeBasis, temperature: number, asked: Asked): DevelopingTime['band'] {
  const { unmodified, product, thermometerError } = asked
  const byRounding = halfStep(basis.points) / unmodified
  const bySlope = distanceToPoint(basis, temperature) * slopeUncertainty(basis)
  const sides = [-thermometerError, thermometerError].map((by) =>
    Math.abs(shifted(basis, temperature, by, unmodified) - unmodified),
  )
  return {
    bySheetAndLaw: (unmodified * product * Math.hypot(byRounding, bySlope)) as Seconds,
    byThermometer: (Math.max(...sides) * product) as Seconds,
    thermometerError,
  }
}

const distanceToPoint = (basis: TimeBasis, temperature: number): number =>
  Math.min(...basis.points.map((point) => Math.abs(point.temperature - temperature)))

/** Half of what ln t per °C may vary by, from the low and high ten-degree coefficient. */
const slopeUncertainty = ({ coefficient }: TimeBasis): number => Math.log(coefficient.high / coefficient.low) / 20

function shifted(basis: TimeBasis, temperature: number, by: number, unmodified: number): number {
  const there = timeOn(basis, temperature + by)
  return there.ok ? there.value : unmodified * Math.exp(curveOf(basis).slopeAt(temperature) * by)
}
