import { failed, ok, problem, type Result } from '../../kernel/index.js'
import { molarMass } from '../formulas/index.js'
import { refusedOutside } from '../range.js'
import { ACIDS, excess, formsAt, pHOf, type Solution, solutionRefused } from './charge-balance.js'

/** Part of sulfite that has become dissolved sulfur dioxide at a pH. pH −1 to 15. */
export function sulfurDioxideShare(pH: number): Result<number> {
  const refused = refusedOutside('waste.bad-value', 'A pH', pH, { low: -1, high: 15 }, 'pH')
  return refused ?? ok(formsAt(ACIDS.sulfurous, pH)[0] as number)
}

/** A bath of so many g/L of anhydrous sodium sulfite, 0 to 300. */
export function sulfiteBath(gramsPerLitre: number): Result<Solution> {
  const refused = refusedOutside('waste.bad-value', 'Sulfite in g/L', gramsPerLitre, { low: 0, high: 300 }, 'sulfite')
  if (refused) return refused
  const mass = molarMass('Na2SO3')
  if (!mass.ok) return mass
  const molarity = gramsPerLitre / mass.value
  return ok({ acids: [{ acid: 'sulfurous', molarity }], spectators: 2 * molarity })
}

const SULFUR_DIOXIDE = 64.064

/** Sulfite of a solution in its three forms, as parts, with the gas in g/L. */
export interface SulfiteForms {
  readonly pH: number
  readonly sulfurDioxide: number
  readonly bisulfite: number
  readonly sulfite: number
  readonly gasGramsPerLitre: number
  /** g/L if all of the sulfite became gas: more forms as it leaves, and no acid can bring more than this. */
  readonly wholeGramsPerLitre: number
}

/** What the sulfite of a solution has become at the solution's own pH: nearly no gas in a developer, much in acid. */
export function sulfiteIn(solution: Solution): Result<SulfiteForms> {
  const pH = pHOf(solution)
  if (!pH.ok) return pH
  const [sulfurDioxide, bisulfite, sulfite] = formsAt(ACIDS.sulfurous, pH.value) as [number, number, number]
  const molarity = solution.acids.reduce((sum, one) => sum + (one.acid === 'sulfurous' ? one.molarity : 0), 0)
  return ok({
    pH: pH.value,
    sulfurDioxide,
    bisulfite,
    sulfite,
    gasGramsPerLitre: molarity * sulfurDioxide * SULFUR_DIOXIDE,
    wholeGramsPerLitre: molarity * SULFUR_DIOXIDE,
  })
}

/** Two solutions poured together, so many parts of each by volume; neither part below 0, not both 0. */
export function pouredTogether(one: Solution, parts: number, other: Solution, otherParts: number): Result<Solution> {
  const range = { low: 0, high: 1e6 }
  const refused =
    solutionRefused(one) ??
    solutionRefused(other) ??
    refusedOutside('waste.bad-value', 'Parts of a solution', parts, range, 'parts') ??
    refusedOutside('waste.bad-value', 'Parts of a solution', otherParts, range, 'parts') ??
    refusedOutside('waste.bad-value', 'Parts of both', parts + otherParts, { low: 1e-6, high: 2e6 }, 'parts')
  if (refused) return refused
  const whole = parts + otherParts
  const thinned = (solution: Solution, part: number) =>
    solution.acids.map(({ acid, molarity }) => ({ acid, molarity: (molarity * part) / whole }))
  return ok({
    acids: [...thinned(one, parts), ...thinned(other, otherParts)],
    spectators: (one.spectators * parts + other.spectators * otherParts) / whole,
  })
}

/**
 * How much of an acid solution a litre of a bath takes to come to a pH, mL: the sum that shows why a sulfite bath is not
 * neutralised by the spoon. Refused when the acid cannot bring it there. pH 0 to 14.
 */
export function acidToReach(bath: Solution, acid: Solution, pH: number): Result<number> {
  const outside = refusedOutside('waste.bad-value', 'A pH', pH, { low: 0, high: 14 }, 'pH')
  if (outside) return outside
  for (const part of [bath, acid]) {
    const sound = pHOf(part)
    if (!sound.ok) return sound
  }
  // Mixing is linear in the charges, so the volume at which the two excesses cancel is their ratio.
  const litres = excess(bath, pH) / -excess(acid, pH)
  return litres >= 0 && litres <= MOST_LITRES
    ? ok(litres * 1000)
    : failed(problem('waste.pH-out-of-reach', { pH }, 'pH'))
}
const MOST_LITRES = 1000

const MOLAR_VOLUME = 24.45

/**
 * So many grams of sulfur dioxide in the air of a room, ppm by volume, nothing blown out, at 25 °C and sea level: a gram
 * in 10 m³ is 38. 0 to 100 kg, 1 to 10 000 m³.
 */
export function ppmInRoom(grams: number, cubicMetres: number): Result<number> {
  const refused =
    refusedOutside('waste.bad-value', 'Sulfur dioxide in grams', grams, { low: 0, high: 100_000 }, 'grams') ??
    refusedOutside('waste.bad-value', 'A room in cubic metres', cubicMetres, { low: 1, high: 10_000 }, 'room')
  return refused ?? ok(((grams / SULFUR_DIOXIDE) * MOLAR_VOLUME * 1000) / cubicMetres)
}
