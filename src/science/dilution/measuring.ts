import { type Millilitres, millilitres, ok, type Result } from '../../kernel/index.js'
import type { Origin } from '../development/index.js'
import { refusedOutside } from '../range.js'
import { DILUTION_LIMITS } from './definition.js'

/** Something to measure a volume with, a syringe being one too. */
export interface Graduate {
  readonly name: string
  readonly kind: 'graduate' | 'syringe'
  readonly holds: Millilitres
  /** mL from mark to mark. */
  readonly marks: Millilitres
}

const measure = (kind: Graduate['kind'], holds: number, marks: number): Graduate => ({
  name: `${kind} of ${holds} mL`,
  kind,
  holds: millilitres(holds),
  marks: millilitres(marks),
})

/** What lies about in many darkrooms: assumptions, until a bench says what it has. */
export const COMMON_MEASURES: readonly Graduate[] = [
  measure('syringe', 2, 0.1),
  measure('syringe', 5, 0.2),
  measure('syringe', 10, 0.5),
  measure('syringe', 20, 1),
  measure('graduate', 50, 1),
  measure('graduate', 100, 2),
  measure('graduate', 250, 5),
  measure('graduate', 600, 10),
  measure('graduate', 1000, 10),
]

/** How well a volume can be measured with something. */
export interface GraduateError {
  readonly measure: Graduate
  /** How often it is filled. */
  readonly fills: number
  /** Half a mark each fill, as a part of the volume: common practice. */
  readonly error: number
  /** Whether the error is too much to be let pass. */
  readonly tooCoarse: boolean
}

/** An error above this part of the volume is too much: common practice, the trade's five in a hundred. */
export const WORTH_SAYING = 0.05

/**
 * The least volume that a measure tells to five in a hundred, half a mark being its error: ten marks, so 50 mL for a
 * graduate marked every 5 mL. For less, a syringe.
 */
export const leastMeasurable = ({ marks }: Graduate): Millilitres => millilitres(marks / 2 / WORTH_SAYING)

/**
 * How well each measure does for a volume of 0.01 mL – 100 L, best first; with as little error, fewer fills first. What
 * a measure holds 1 mL – 100 L, marks 0.01–1000 mL; else refused.
 */
export function measuresFor(
  volume: Millilitres,
  measures: readonly Graduate[] = COMMON_MEASURES,
): Result<readonly GraduateError[]> {
  const refused = refusedOutside('dilution.bad-value', 'A volume in mL', volume, { low: 0.01, high: 100_000 }, 'volume')
  if (refused) return refused
  for (const [i, { holds, marks }] of measures.entries()) {
    const wrong =
      refusedOutside(
        'dilution.bad-value',
        'What a measure holds in mL',
        holds,
        DILUTION_LIMITS.total,
        `measures[${i}]`,
      ) ?? refusedOutside('dilution.bad-value', 'Its marks in mL', marks, DILUTION_LIMITS.marks, `measures[${i}]`)
    if (wrong) return wrong
  }
  const judged = measures.map((one): GraduateError => {
    const fills = Math.ceil(volume / one.holds - 1e-9)
    const error = (fills * one.marks) / 2 / volume
    return { measure: one, fills, error, tooCoarse: error > WORTH_SAYING + 1e-9 }
  })
  return ok(judged.sort((a, b) => a.error - b.error || a.fills - b.fills))
}

/** Drops of water in a millilitre, from an ordinary dropper; one's own count replaces it. */
export const DROPS_A_MILLILITRE = { value: 20, origin: 'practice' as Origin, source: 'common practice' } as const

/** A volume in drops. */
export interface Drops {
  /** Whole, at least one. */
  readonly drops: number
  /** What those drops are, mL. */
  readonly volume: Millilitres
}

/**
 * A volume (0.01–50 mL) in whole drops, as wetting agent is often counted: 0.5 mL is 10 drops. Drops in a millilitre
 * 5–60; else refused. Thick liquids and wetting agents themselves give smaller drops: count yours once.
 */
export function dropsFor(volume: Millilitres, dropsEach: number = DROPS_A_MILLILITRE.value): Result<Drops> {
  const refused =
    refusedOutside('dilution.bad-value', 'A volume in mL', volume, { low: 0.01, high: 50 }, 'volume') ??
    refusedOutside('dilution.bad-value', 'Drops in a millilitre', dropsEach, { low: 5, high: 60 }, 'drops')
  if (refused) return refused
  const drops = Math.max(1, Math.round(volume * dropsEach))
  return ok({ drops, volume: millilitres(drops / dropsEach) })
}
