import { failed, ok, problem, type Result, type Seconds } from '../../kernel/index.js'
import { refusedOutside } from '../range.js'
import { short } from '../saying.js'
import type { ContrastLaw } from './definition.js'
import { CONTRAST_LIMITS as LIMITS } from './limits.js'

/** The law itself, for any numbers; before its start there is no contrast. */
export const grown = ({ most, rate, start }: ContrastLaw, time: number): number =>
  Math.max(0, most * -Math.expm1(-rate * (time - start)))

/** Its inverse for a contrast below the most. */
export const timeToGrow = ({ most, rate, start }: ContrastLaw, contrast: number): number =>
  start - Math.log1p(-contrast / most) / rate

const MOST = { low: 0.02, high: 200 } as const
const RATE = { low: 1e-6, high: 5 } as const
const START = { low: 0, high: 21_600 } as const

const refusedLaw = ({ most, rate, start }: ContrastLaw) =>
  refusedOutside('contrast.bad-value', 'The most contrast', most, MOST, 'most') ??
  refusedOutside('contrast.bad-value', 'A rate per second', rate, RATE, 'rate') ??
  refusedOutside('contrast.bad-value', 'The start of the image in seconds', start, START, 'start')

/**
 * Contrast after a time of development: G∞ (1 − exp(−k (t − t0))), zero before t0. G∞ 0.02 to 200, k 0.000001 to 5
 * per second, t0 and t 0 to 6 h; outside, refused.
 * Source: Sheppard & Mees 1907; constants of two developers in Ives, Airplane Photography, 1920, ch. XXII.
 */
export const contrastAfter = (law: ContrastLaw, time: Seconds): Result<number> =>
  refusedLaw(law) ??
  refusedOutside('contrast.bad-value', 'A time in seconds', time, { low: 0, high: 21_600 }, 'time') ??
  ok(grown(law, time))

/**
 * The time that gives a wanted contrast: t0 − ln(1 − G/G∞)/k. A contrast at or above G∞ cannot be had and is
 * refused, as is a time past six hours. Ranges as `contrastAfter`. A straight inverse: `ownTime` also looks at how far the strips reach.
 */
export function timeForContrast(law: ContrastLaw, contrast: number): Result<Seconds> {
  const refused =
    refusedLaw(law) ?? refusedOutside('contrast.bad-value', 'A contrast', contrast, LIMITS.contrast, 'contrast')
  if (refused) return refused
  if (contrast >= law.most)
    return failed(problem('contrast.above-most', { wanted: short(contrast, 3), most: short(law.most, 3) }, 'contrast'))
  const time = timeToGrow(law, contrast)
  return (
    refusedOutside('contrast.bad-value', 'The time for this contrast in seconds', time, { low: 0, high: 21_600 }) ??
    ok(time as Seconds)
  )
}

/**
 * The law at another temperature, where the developer works `rate` times as fast (0.05 to 20, else refused): k is
 * multiplied and t0 divided by it, together; G∞ stays. Fog moves too, and is not told by this.
 */
export const atRate = (law: ContrastLaw, rate: number): Result<ContrastLaw> =>
  refusedLaw(law) ??
  refusedOutside('contrast.bad-value', 'A rate', rate, { low: 0.05, high: 20 }, 'rate') ??
  ok({ most: law.most, rate: law.rate * rate, start: law.start / rate })
