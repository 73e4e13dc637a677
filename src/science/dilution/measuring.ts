import type { Millilitres } from '../../kernel/index.js'
import { ok, type Result } from '../../kernel/index.js'
import { refusedOutside } from '../range.js'
import { DILUTION_LIMITS } from './definition.js'

/** A graduate or a syringe. */
export interface Graduate {
  readonly name: string
  readonly holds: Millilitres
  /** mL from mark to mark. */
  readonly marks: Millilitres
}

/** How well a volume can be measured with something. */
export interface GraduateError {
  readonly measure: Graduate
  /** How often it is filled. */
  readonly fills: number
  /** Half a mark each fill, as a part of the volume: common practice. */
  readonly error: number
}

/** An error above this part of the volume is said: common practice, the trade's five in a hundred. */
export const WORTH_SAYING = 0.05

/** How well each measure does for a volume, best first; fewer fills first where they are as good. */
export function measuresFor(volume: Millilitres, measures: readonly Graduate[]): Result<GraduateError[]> {
  const refused = refusedOutside('dilution.bad-value', 'A volume in millilitres', volume, { low: 0.01, high: 100_000 })
  if (refused) return refused
  for (const { holds, marks } of measures) {
    const wrong =
      refusedOutside('dilution.bad-value', 'What a measure holds in millilitres', holds, DILUTION_LIMITS.total) ??
      refusedOutside('dilution.bad-value', 'Its marks in millilitres', marks, DILUTION_LIMITS.marks)
    if (wrong) return wrong
  }
  const judged = measures.map((measure) => {
    const fills = Math.ceil(volume / measure.holds - 1e-9)
    return { measure, fills, error: (fills * measure.marks) / 2 / volume }
  })
  return ok(judged.sort((a, b) => a.error - b.error || a.fills - b.fills))
}

/** Drops a millilitre of water from an ordinary dropper: common practice, 20; one's own count replaces it. */
export const DROPS_A_MILLILITRE = 20

/** A volume in drops, for wetting agent; whole drops, at least one. */
export function dropsFor(volume: Millilitres, dropsEach: number = DROPS_A_MILLILITRE): Result<number> {
  const refused =
    refusedOutside('dilution.bad-value', 'A volume in millilitres', volume, { low: 0.01, high: 50 }, 'volume') ??
    refusedOutside('dilution.bad-value', 'Drops in a millilitre', dropsEach, { low: 5, high: 60 }, 'drops')
  return refused ?? ok(Math.max(1, Math.round(volume * dropsEach)))
}
