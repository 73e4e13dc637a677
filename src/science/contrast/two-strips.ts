import { failed, ok, problem, type Result, type Seconds } from '../../kernel/index.js'
import { refusedOutside } from '../range.js'
import { sayTime, short } from '../saying.js'
import type { ContrastLaw } from './definition.js'
import { CONTRAST_LIMITS as LIMITS } from './limits.js'

/**
 * The law from two strips, the second developed exactly twice as long, in closed form:
 * k = ln(G1 / (G2 − G1)) / t and G∞ = G1² / (2 G1 − G2). It holds only if the image begins at once (t0 = 0).
 *
 * Time 1 s to 3 h, contrasts 0.02 to 6; needs G1 < G2 < 2 G1, else the two lie on no such curve and are refused.
 * Source: the law at t and 2t solved; Ives 1920 says that k is had from the times for two contrasts.
 */
export function lawFromTwoStrips(time: Seconds, first: number, second: number): Result<ContrastLaw> {
  const refused =
    refusedOutside('contrast.bad-value', 'A time in seconds', time, { low: 1, high: 10_800 }, 'time') ??
    refusedOutside('contrast.bad-value', 'A contrast', first, LIMITS.contrast, 'first') ??
    refusedOutside('contrast.bad-value', 'A contrast', second, LIMITS.contrast, 'second')
  if (refused) return refused
  const most = (first * first) / (2 * first - second)
  const tooStraight = !(most > 0 && most <= LIMITS.mostOverStrips * second)
  if (!(first < second && second < 2 * first) || tooStraight) return notALaw(time, first, second)
  return ok({ most, rate: Math.log(first / (second - first)) / time, start: 0 })
}

export function notALaw(time: number, first: number, second: number, secondTime = 2 * time): Result<never> {
  const details = {
    first: short(first, 3),
    second: short(second, 3),
    firstTime: sayTime(time),
    secondTime: sayTime(secondTime),
  }
  return failed(problem('contrast.not-a-law', details))
}
