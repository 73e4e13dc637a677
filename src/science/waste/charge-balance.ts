import { failed, ok, problem, type Result } from '../../kernel/index.js'
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

export type AcidName = keyof typeof ACIDS

const WATER = 1e-14

/** What is in a solution: each acid in all its forms, mol/L, and the ions that never change, as moles of charge. */
export interface Solution {
  readonly acids: readonly { readonly acid: AcidName; readonly molarity: number }[]
  /** Sodium, potassium, ammonium as positive mol/L; bromide, sulfate (twice) as negative. */
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

/**
 * pH at which the charges of a solution balance, activities taken as concentrations (a few tenths off in strong baths).
 * Monotone in pH, so there is one. Molarities 0 to 10; refused when no pH from −1 to 15 balances.
 */
export function pHOf(solution: Solution): Result<number> {
  for (const { molarity } of solution.acids) {
    const refused = refusedOutside('waste.bad-value', 'A molarity', molarity, { low: 0, high: 20 })
    if (refused) return refused
  }
  const refused = refusedOutside('waste.bad-value', 'Charge of spectator ions in mol/L', solution.spectators, {
    low: -40,
    high: 40,
  })
  if (refused) return refused
  const [low, high] = [excess(solution, -1), excess(solution, 15)]
  if (low < 0 || high > 0)
    return failed(
      problem('waste.bad-value', {
        what: 'The pH of this mixture',
        value: low < 0 ? 'below −1' : 'above 15',
        low: -1,
        high: 15,
      }),
    )
  return ok(brent((pH) => excess(solution, pH), -1, 15, 1e-12))
}

/** Positive charge less negative: falls as pH rises. */
function excess({ acids, spectators }: Solution, pH: number): number {
  const hydrogen = 10 ** -pH
  return acids.reduce(
    (sum, { acid, molarity }) => sum - molarity * chargeAt(ACIDS[acid], pH),
    spectators + hydrogen - WATER / hydrogen,
  )
}

/** Part of sulfite that has become dissolved sulfur dioxide at a pH. pH −1 to 15. */
export function sulfurDioxideShare(pH: number): Result<number> {
  const refused = refusedOutside('waste.bad-value', 'A pH', pH, { low: -1, high: 15 }, 'pH')
  return refused ?? ok(formsAt(ACIDS.sulfurous, pH)[0] as number)
}

/**
 * How much of an acid solution a litre of a bath takes to come to a pH, mL: the sum that shows why a sulfite bath is not
 * neutralised by the spoon. Refused when the acid cannot bring it there.
 */
export function acidToReach(bath: Solution, acid: Solution, pH: number): Result<number> {
  const wrong = refusedOutside('waste.bad-value', 'A pH', pH, { low: 0, high: 14 }, 'pH')
  if (wrong) return wrong
  for (const part of [bath, acid]) {
    const sound = pHOf(part)
    if (!sound.ok) return sound
  }
  // Mixing is linear in the charges, so the volume at which the two excesses cancel is their ratio.
  const water = 10 ** -pH - WATER / 10 ** -pH
  const [surplus, each] = [excess(bath, pH) - water, excess(acid, pH) - water]
  const litres = (surplus + water) / -(each + water)
  return (
    refusedOutside('waste.bad-value', 'The acid in litres a litre', litres, { low: 0, high: 1000 }) ?? ok(litres * 1000)
  )
}
