import type { ThermometerCheck } from './definition.js'
import { THERMOMETER_LIMITS as LIMITS } from './limits.js'

/**
 * Of a thermometer's checks, oldest first, those that still count: a newer check takes the place of older ones
 * whose readings lie within 3 °C of its own, since thermometers drift. Checks elsewhere on the scale stay, and
 * so does the order.
 */
export function newestChecks<Check extends ThermometerCheck>(checks: readonly Check[]): Check[] {
  return checks.filter((check, i) =>
    checks.slice(i + 1).every((newer) => Math.abs(newer.read - check.read) > LIMITS.replaces),
  )
}
