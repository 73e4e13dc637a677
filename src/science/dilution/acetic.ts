import { type Grams, grams, type Millilitres, millilitres, ok, type Result } from '../../kernel/index.js'
import { refusedOutside } from '../range.js'

/** Molar mass of acetic acid, g/mol. */
export const ACETIC_MOLAR_MASS = 60.052
/** Water at 20 °C, g/mL (IAPWS-95). */
export const WATER_20 = 0.998207

/**
 * Density of acetic acid in water at 20 °C by percent of weight: organic-acid density table, handbook. It peaks near
 * 75 % and falls again, so that a density alone does not tell a strength above about 40 %.
 */
export const ACETIC_DENSITIES: readonly (readonly [percent: number, density: number])[] = [
  [0, WATER_20],
  [1, 0.9996],
  [5, 1.0052],
  [10, 1.0121],
  [20, 1.025],
  [30, 1.0369],
  [40, 1.0474],
  [50, 1.0562],
  [70, 1.0673],
  [100, 1.0477],
]

/** Between two rows of the table by a straight line. */
function densityAt(percent: number): number {
  const above = Math.max(
    1,
    ACETIC_DENSITIES.findIndex(([at]) => at >= percent),
  )
  const [[low, thin], [high, thick]] = [ACETIC_DENSITIES[above - 1], ACETIC_DENSITIES[above]] as [Row, Row]
  return thin + ((thick - thin) * (percent - low)) / (high - low)
}

type Row = (typeof ACETIC_DENSITIES)[number]

/** What a strength of acetic acid comes to at 20 °C. */
export interface AceticAcid {
  /** g/mL, between the rows of the table by a straight line. */
  readonly density: number
  readonly gramsPerLitre: number
  /** mol/L */
  readonly molarity: number
}

/** Density, mass and molarity of acetic acid of a percentage by weight, 0 to 100 %, at 20 °C. */
export function aceticAcid(percent: number): Result<AceticAcid> {
  const refused = refusedOutside('dilution.bad-value', 'A percentage', percent, { low: 0, high: 100 }, 'percent')
  if (refused) return refused
  const density = densityAt(percent)
  const gramsPerLitre = percent * density * 10
  return ok({ density, gramsPerLitre, molarity: gramsPerLitre / ACETIC_MOLAR_MASS })
}

/** How a volume of weaker acid is made from a stronger one by weight, which is exact where volumes are not. */
export interface AcidByWeight {
  readonly acid: Grams
  readonly acidVolume: Millilitres
  readonly water: Grams
}

/** Acid and water for a volume of a weaker acetic acid, both percentages by weight, at 20 °C. Add the acid to the water. */
export function dilutedAcetic(from: number, to: number, total: Millilitres): Result<AcidByWeight> {
  const strong = aceticAcid(from)
  if (!strong.ok) return strong
  const weak = aceticAcid(to)
  if (!weak.ok) return weak
  const refused =
    refusedOutside(
      'dilution.bad-value',
      'The percentage at hand',
      from,
      { low: Math.max(to, 0.01), high: 100 },
      'from',
    ) ?? refusedOutside('dilution.bad-value', 'A total in millilitres', total, { low: 1, high: 100_000 }, 'total')
  if (refused) return refused
  const mass = total * weak.value.density
  // The same strength takes no water; the last digit of the division must not make it less than none.
  const acid = Math.min(mass, (mass * to) / from)
  return ok({ acid: grams(acid), acidVolume: millilitres(acid / strong.value.density), water: grams(mass - acid) })
}
