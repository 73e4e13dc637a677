import { failed, ok, problem, type Result } from '../../kernel/index.js'
import { refusedOutside } from '../range.js'
import { short } from '../saying.js'
import { refusedValues } from './checked.js'
import { CONTROL_RANGES } from './limits.js'

/** Steps, from 1, to read on every control strip from now on. */
export interface ControlSteps {
  readonly speed: number
  /** Upper and lower step whose difference is the contrast. */
  readonly upper: number
  readonly lower: number
}

/** What a control strip plots. */
export interface ControlReading {
  readonly baseFog: number
  readonly speedStep: number
  readonly contrast: number
}

/**
 * Which steps to watch. `film`: the speed step is nearest to 0.10 over base and fog, contrast between the steps
 * nearest 1.20 and 0.60 (as a naval manual's worked strip has them). `radiograph`: speed nearest 1.20, contrast between
 * the step nearest 2.20 but not above it and the one nearest 0.45 but not below it.
 *
 * Densities of the steps in order, 3 to 64 of 0 to 6, and base and fog; refused when a needed step is missing.
 * Sources: NAVEDTRA 14209, fig. 10-28; a radiographic quality procedure (mean of five days).
 */
export function controlSteps(
  densities: readonly number[],
  baseFog: number,
  scheme: 'film' | 'radiograph',
): Result<ControlSteps> {
  const refused =
    refusedValues('A control strip', densities, 3) ??
    refusedOutside('control.bad-value', 'Base and fog', baseFog, CONTROL_RANGES.density, 'baseFog')
  if (refused) return refused
  const speed = nearest(densities, scheme === 'film' ? baseFog + 0.1 : 1.2, () => true)
  const [upperAim, lowerAim] = scheme === 'film' ? [1.2, 0.6] : [2.2, 0.45]
  const upper = nearest(densities, upperAim, (density) => scheme === 'film' || density <= upperAim)
  const lower = nearest(densities, lowerAim, (density) => scheme === 'film' || density >= lowerAim)
  if (speed === null || upper === null || lower === null || upper === lower) {
    const wanted = upper === null ? `${upperAim} or less` : `${lowerAim} or more, apart from the upper one`
    const ends = { lowest: short(Math.min(...densities), 3), highest: short(Math.max(...densities), 3) }
    return failed(problem('control.no-step', { wanted, ...ends }, 'densities'))
  }
  return ok({ speed, upper, lower })
}

/** Number, from 1, of the allowed step nearest to a density; the lower number of two equally near. */
function nearest(densities: readonly number[], aim: number, allowed: (density: number) => boolean): number | null {
  let best: number | null = null
  for (const [i, density] of densities.entries()) {
    const away = Math.abs(density - aim)
    if (allowed(density) && (best === null || away < Math.abs((densities[best - 1] as number) - aim) - 1e-9))
      best = i + 1
  }
  return best
}

/** What a strip plots, by the steps chosen once. Steps that it does not have are refused. */
export function readControlStrip(
  densities: readonly number[],
  baseFog: number,
  { speed, upper, lower }: ControlSteps,
): Result<ControlReading> {
  const refused =
    refusedValues('A control strip', densities, 3) ??
    refusedOutside('control.bad-value', 'Base and fog', baseFog, CONTROL_RANGES.density, 'baseFog')
  if (refused) return refused
  const [middle, high, low] = [densities[speed - 1], densities[upper - 1], densities[lower - 1]]
  if (middle === undefined || high === undefined || low === undefined)
    return failed(
      problem('control.too-few', {
        what: 'This control strip',
        fewest: Math.max(speed, upper, lower),
        count: densities.length,
      }),
    )
  return ok({ baseFog, speedStep: middle, contrast: high - low })
}
