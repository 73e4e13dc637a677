import { failed, ok, problem, type Result } from '../../kernel/index.js'
import { strengthOf } from './parts.js'

/** The same working bath named from the concentrate and from the stock, with the factor between them. */
export interface ConcentrateAndStock {
  readonly fromConcentrate: readonly [1, number]
  readonly fromStock: readonly [1, number]
  /** Stock is so many times as thin as the concentrate. */
  readonly factor: number
}

/**
 * A developer sold as a concentrate that is first made into a stock: 1 + 31 from the concentrate is 1 + 7 from a stock
 * of 1 + 3. Refused when the working bath would be stronger than the stock.
 */
export function concentrateAndStock(
  stock: readonly [number, number],
  workingFromConcentrate: readonly [number, number],
): Result<ConcentrateAndStock> {
  const stockStrength = strengthOf(stock)
  const strength = strengthOf(workingFromConcentrate)
  if (!stockStrength.ok) return stockStrength
  if (!strength.ok) return strength
  const factor = 1 / stockStrength.value
  const thinned = 1 / strength.value
  if (thinned < factor * (1 - 1e-12)) return failed(problem('dilution.stronger-than-stock', { factor, thinned }))
  return ok({ fromConcentrate: [1, thinned - 1], fromStock: [1, Math.max(0, thinned / factor - 1)], factor })
}
