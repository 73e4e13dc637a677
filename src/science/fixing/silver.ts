import { type Grams, grams, type Millilitres, ok, type Result } from '../../kernel/index.js'
import type { Origin } from '../development/index.js'
import { refusedOutside } from '../range.js'
import { ROLL_AREA_CM2 } from './formats.js'

export type FixerKind = 'sodium-thiosulfate' | 'ammonium-thiosulfate'

/** Silver at which a single bath ends, g/L: a compliance guide for printers. Lower where film must last. */
export const SILVER_LIMITS: Readonly<Record<FixerKind, { readonly gramsPerLitre: number; readonly origin: Origin }>> = {
  'sodium-thiosulfate': { gramsPerLitre: 2, origin: 'practice' },
  'ammonium-thiosulfate': { gramsPerLitre: 4, origin: 'practice' },
}

/** Silver of film and the part of it that the fixer takes: from memory, so an estimate with its band. */
export const SILVER_OF_FILM = {
  gramsPerM2: { low: 3, usual: 5, high: 8 },
  share: { low: 0.5, usual: 0.6, high: 0.8 },
  origin: 'assumption' as Origin,
} as const

const ROLL_AREA_M2 = ROLL_AREA_CM2 / 10_000

/** Grams of silver that one roll's worth of film leaves in the fixer. 0.1 to 20 g/m², share 0 to 1. */
export function silverOfARoll(gramsPerM2: number, share: number): Result<Grams> {
  const refused =
    refusedOutside('fixing.bad-value', 'Silver in g/m²', gramsPerM2, { low: 0.1, high: 20 }, 'silver') ??
    refusedOutside('fixing.bad-value', 'The part that the fixer takes', share, { low: 0, high: 1 }, 'share')
  return refused ?? ok(grams(gramsPerM2 * share * ROLL_AREA_M2))
}

/** Silver in a bath after so many rolls, g/L: the estimate and its band. */
export interface SilverInBath {
  readonly low: number
  readonly usual: number
  readonly high: number
}

/** Silver that rolls have left in a volume of fixer. Rolls 0 to 10 000, 50 mL to 100 L. */
export function silverAfter(rolls: number, volume: Millilitres): Result<SilverInBath> {
  const refused =
    refusedOutside('fixing.bad-value', 'Rolls', rolls, { low: 0, high: 10_000 }, 'rolls') ??
    refusedOutside('fixing.bad-value', 'A volume in millilitres', volume, { low: 50, high: 100_000 }, 'volume')
  if (refused) return refused
  const { gramsPerM2, share } = SILVER_OF_FILM
  const perLitre = (silver: number, part: number) => (rolls * silver * part * ROLL_AREA_M2 * 1000) / volume
  return ok({
    low: perLitre(gramsPerM2.low, share.low),
    usual: perLitre(gramsPerM2.usual, share.usual),
    high: perLitre(gramsPerM2.high, share.high),
  })
}

/** Rolls a litre until the bath holds its limit of silver. */
export function rollsToSilver(limit: number, gramsPerM2: number, share: number): Result<number> {
  const refused = refusedOutside('fixing.bad-value', 'A limit of silver in g/L', limit, { low: 0.1, high: 20 }, 'limit')
  if (refused) return refused
  const each = silverOfARoll(gramsPerM2, share)
  if (!each.ok) return each
  return (
    refusedOutside('fixing.bad-value', 'Silver of a roll in grams', each.value, { low: 1e-6, high: 10 }) ??
    ok(limit / each.value)
  )
}
