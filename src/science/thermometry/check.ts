import { failed, ok, problem, type Result } from '../../kernel/index.js'
import { sayDegrees, sayTemperature } from '../saying.js'
import type { CheckMethod } from './definition.js'
import { THERMOMETER_LIMITS } from './limits.js'

/** What is said of a check that is possible and still needs care. */
export type CheckWarning =
  /** A spirit thermometer bursts in water hotter than its scale. */
  | { readonly code: 'bursts-above-scale'; readonly above: number }
  /** The check speaks for its own mark only, not for developing temperatures. */
  | { readonly code: 'says-nothing-near'; readonly temperature: number }

/** A check that a scale allows, with what is to be said of it. */
export interface PossibleCheck {
  readonly method: CheckMethod
  readonly warnings: readonly CheckWarning[]
}

const NAMES: Readonly<Record<CheckMethod, string>> = {
  entered: 'An entered error',
  comparison: 'A comparison',
  ice: 'Melting ice',
  boiling: 'Boiling water',
}
/** Scales that end below this belong to thermometers that hot water can burst. */
const SHORT_SCALE = 60

/**
 * Whether a thermometer of this scale can be checked so: melting ice only when the scale reaches 0 °C or below,
 * boiling water only when it reads past 100 °C. Warns that a short spirit scale bursts in hot water.
 * A scale that is not from low to high, at least 5 °C long, within −50–200 °C is refused.
 */
export function checkIsPossible(method: CheckMethod, scaleLow: number, scaleHigh: number): Result<PossibleCheck> {
  const { scale, shortestScale } = THERMOMETER_LIMITS
  const [low, high] = [sayTemperature(scaleLow), sayTemperature(scaleHigh)]
  if (!(scaleLow >= scale.low && scaleHigh <= scale.high && scaleHigh - scaleLow >= shortestScale))
    return failed(problem('thermometer.bad-scale', { low, high, shortest: sayDegrees(shortestScale) }, 'scale'))
  const needed = neededBy(method, scaleLow, scaleHigh)
  if (needed !== null)
    return failed(problem('thermometer.method-out-of-scale', { method: NAMES[method], needed, low, high }, 'method'))
  return ok({ method, warnings: [...burst(scaleHigh), ...silentNearTwenty(method)] })
}

function neededBy(method: CheckMethod, scaleLow: number, scaleHigh: number): string | null {
  if (method === 'ice' && scaleLow > 0) return 'down to 0 °C'
  if (method === 'boiling' && !(scaleHigh > 100)) return 'past 100 °C'
  return null
}

const burst = (scaleHigh: number): CheckWarning[] =>
  scaleHigh < SHORT_SCALE ? [{ code: 'bursts-above-scale', above: scaleHigh }] : []

const silentNearTwenty = (method: CheckMethod): CheckWarning[] =>
  method === 'ice' || method === 'boiling' ? [{ code: 'says-nothing-near', temperature: 20 }] : []
