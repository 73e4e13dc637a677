import { failed, type Grams, grams, type Millilitres, ok, problem, type Result } from '../../kernel/index.js'
import type { Origin } from '../development/index.js'
import { refusedOutside } from '../range.js'
import { ROLL_AREA_CM2 } from './formats.js'

/** The two salts that fix: ammonium thiosulfate works faster and carries more silver. */
export const FIXER_KINDS = ['sodium-thiosulfate', 'ammonium-thiosulfate'] as const
/** The salt of a fixer by its name. */
export type FixerKind = (typeof FIXER_KINDS)[number]

/**
 * Silver at which a single bath ends, g/L: a compliance guide for printers, where salts begin to form that no wash takes
 * out. Where film must last people go lower; nobody may go higher.
 */
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

/** Silver of one's own film, where known. */
export interface SilverOfFilm {
  readonly gramsPerM2: number
  /** Part that goes into the fixer, 0.01 to 1; the rest is the picture. */
  readonly share: number
}

const USUAL: SilverOfFilm = { gramsPerM2: SILVER_OF_FILM.gramsPerM2.usual, share: SILVER_OF_FILM.share.usual }
const ROLL_AREA_M2 = ROLL_AREA_CM2 / 10_000
const VOLUME = { low: 50, high: 100_000 }

/** Grams of silver that one roll's worth of film leaves in the fixer: 5 g/m² × 0.6 is 0.155 g. 0.1 to 20 g/m². */
export function silverOfARoll(gramsPerM2: number, share: number): Result<Grams> {
  const refused =
    refusedOutside('fixing.bad-value', 'Silver in g/m²', gramsPerM2, { low: 0.1, high: 20 }, 'gramsPerM2') ??
    refusedOutside('fixing.bad-value', 'The part that the fixer takes', share, { low: 0.01, high: 1 }, 'share')
  return refused ?? ok(grams(gramsPerM2 * share * ROLL_AREA_M2))
}

/** Silver in a bath, g/L: the estimate and its band; all three alike when the film's own silver was given. */
export interface SilverInBath {
  readonly low: number
  readonly usual: number
  readonly high: number
}

/**
 * Silver that rolls have left in a volume of fixer: 20 rolls of 5 g/m², of which 0.6 goes into a litre, are 3.10 g/L.
 * Without `film` the band of negative film is taken. Rolls 0 to 10 000, 50 mL to 100 L; else refused.
 */
export function silverAfter(rolls: number, volume: Millilitres, film?: SilverOfFilm): Result<SilverInBath> {
  const refused =
    refusedOutside('fixing.bad-value', 'Rolls', rolls, { low: 0, high: 10_000 }, 'rolls') ??
    refusedOutside('fixing.bad-value', 'A volume in millilitres', volume, VOLUME, 'volume')
  if (refused) return refused
  const perLitre = (silver: number, share: number): Result<number> => {
    const each = silverOfARoll(silver, share)
    return each.ok ? ok((rolls * each.value * 1000) / volume) : each
  }
  const usual = perLitre(film?.gramsPerM2 ?? USUAL.gramsPerM2, film?.share ?? USUAL.share)
  if (!usual.ok) return usual
  if (film !== undefined) return ok({ low: usual.value, usual: usual.value, high: usual.value })
  const { gramsPerM2, share } = SILVER_OF_FILM
  const low = perLitre(gramsPerM2.low, share.low)
  if (!low.ok) return low
  const high = perLitre(gramsPerM2.high, share.high)
  return high.ok ? ok({ low: low.value, usual: usual.value, high: high.value }) : high
}

/** The limit that holds: the guide's for this fixer, or the person's own where that is lower. Higher is refused. */
export function silverLimit(kind: FixerKind, own?: number): Result<number> {
  const guide = SILVER_LIMITS[kind].gramsPerLitre
  if (own === undefined) return ok(guide)
  if (own > guide) return failed(problem('fixing.silver-limit-too-high', { own, guide, kind }, 'silverLimit'))
  return refusedOutside('fixing.bad-value', 'A limit of silver in g/L', own, { low: 0.1, high: guide }) ?? ok(own)
}

/** Rolls a litre until a bath holds so much silver: 12.9 to 2 g/L. */
export function rollsToSilver(
  limit: number,
  gramsPerM2: number = USUAL.gramsPerM2,
  share: number = USUAL.share,
): Result<number> {
  const refused = refusedOutside('fixing.bad-value', 'A limit of silver in g/L', limit, { low: 0.1, high: 20 }, 'limit')
  if (refused) return refused
  const each = silverOfARoll(gramsPerM2, share)
  return each.ok ? ok(limit / each.value) : each
}
