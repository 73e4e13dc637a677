import { type Failed, failed, ok, problem, type Result } from '../../kernel/index.js'
import { brent } from '../fitting/index.js'
import { refusedOutside } from '../range.js'

/** An acid with its pKa values and the charge of the form that has all its protons. */
export interface Acid {
  readonly name: string
  readonly pKa: readonly number[]
}

/** pKa at 25 °C (LibreTexts table E1; boric 9.24 between two tables; sulfurous 1.85 and 7.2). */
export const ACIDS = {
  acetic: { name: 'acetic acid', pKa: [4.756] },
  carbonic: { name: 'carbonic acid', pKa: [6.35, 10.33] },
  boric: { name: 'boric acid', pKa: [9.24] },
  sulfurous: { name: 'sulfurous acid', pKa: [1.85, 7.2] },
  citric: { name: 'citric acid', pKa: [3.13, 4.76, 6.4] },
  hypochlorous: { name: 'hypochlorous acid', pKa: [7.4] },
  phosphoric: { name: 'phosphoric acid', pKa: [2.16, 7.21, 12.32] },
} as const satisfies Readonly<Record<string, Acid>>

/** An acid of {@link ACIDS}. */
export type AcidName = keyof typeof ACIDS

const WATER = 1e-14

/** What is in a solution: each acid in all its forms, 0 to 20 mol/L, and the ions that never change, as charge. */
export interface Solution {
  readonly acids: readonly { readonly acid: AcidName; readonly molarity: number }[]
  /** Sodium, potassium as positive mol/L; bromide, sulfate and thiosulfate (both twice) as negative. −40 to 40. */
  readonly spectators: number
}

/** Parts of an acid in each of its forms at a pH, most protons first; they sum to 1. */
export function formsAt(acid: Acid, pH: number): number[] {
  const terms = [1]
  for (const pKa of acid.pKa) terms.push((terms.at(-1) as number) * 10 ** (pH - pKa))
  const whole = terms.reduce((sum, term) => sum + term, 0)
  return terms.map((term) => term / whole)
}

/** Negative charge that one mole of an acid carries at a pH: the alkali it has taken up, in moles. */
export const chargeAt = (acid: Acid, pH: number): number =>
  formsAt(acid, pH).reduce((sum, part, protonsLost) => sum + part * protonsLost, 0)

/** Null, or why a solution cannot be: molarities 0 to 20, charges of −40 to 40 mol/L. */
export function solutionRefused({ acids, spectators }: Solution): Failed | null {
  const most = { low: 0, high: 20 }
  for (const { molarity } of acids) {
    const refused = refusedOutside('waste.bad-value', 'A molarity', molarity, most)
    if (refused) return refused
  }
  const range = { low: -40, high: 40 }
  return refusedOutside('waste.bad-value', 'Charge of spectator ions in mol/L', spectators, range)
}

/**
 * pH at which the charges of a solution balance, activities taken as concentrations (a few tenths off in strong baths).
 * Monotone in pH, so there is one. Refused when no pH from −1 to 15 balances. Found by Brent's method; cost grows with
 * the acids. A litre with 0.1665 mol of acetic acid and nothing else: 2.77.
 */
export function pHOf(solution: Solution): Result<number> {
  const refused = solutionRefused(solution)
  if (refused) return refused
  const [low, high] = [excess(solution, -1), excess(solution, 15)]
  if (low < 0 || high > 0) return failed(problem('waste.no-balance', { spectators: solution.spectators }))
  return ok(brent((pH) => excess(solution, pH), -1, 15, 1e-12))
}

/** Positive charge less negative at a pH, mol/L: falls as pH rises, 0 at the solution's own. */
export function excess({ acids, spectators }: Solution, pH: number): number {
  const hydrogen = 10 ** -pH
  return acids.reduce(
    (sum, { acid, molarity }) => sum - molarity * chargeAt(ACIDS[acid], pH),
    spectators + hydrogen - WATER / hydrogen,
  )
}
