import { andThen, ok, type Result } from '../../kernel/index.js'
import type { Neighbours, StripCurve } from './curve.js'
import type { CharacteristicCurve, Measured } from './definition.js'

/** Half width of a 95 % interval in standard errors that are known. */
export const NORMAL_95 = 1.959964

/** Something read off a curve, or why it cannot be. */
export type Measure = (curve: CharacteristicCurve) => Result<number>

/**
 * A measure of a strip with its 95 % interval. Every reading is moved by half of its error either way and the
 * curve drawn and measured anew; so is the strip's contrast by its scatter. The differences are independent
 * standard errors and add in squares. About 50 measures a call for 21 steps.
 *
 * Where a moved reading makes the measure impossible there is no interval: null. The interval speaks of the film
 * in this development; for this very strip take `byReadings` alone.
 */
export const measured = (of: StripCurve, measure: Measure): Result<Measured> =>
  andThen(measure(of.curve), (value): Result<Measured> => {
    const byReadings = combined(of.byReadings().map((pair) => difference(pair, measure)))
    const byStrips = combined([difference(of.byStrips(), measure)])
    if (byReadings === null || byStrips === null) return ok({ value, low: null, high: null, byReadings, byStrips })
    const half = NORMAL_95 * Math.hypot(byReadings, byStrips)
    return ok({ value, low: value - half, high: value + half, byReadings, byStrips })
  })

function difference({ above, below }: Neighbours, measure: Measure): number | null {
  const [up, down] = [measure(above), measure(below)]
  return up.ok && down.ok ? up.value - down.value : null
}

const combined = (parts: readonly (number | null)[]): number | null =>
  parts.some((part) => part === null) ? null : Math.hypot(...(parts as number[]))
