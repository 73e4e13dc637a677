import { type Failed, type Millilitres, ok, type Result } from '../../kernel/index.js'
import { SILVER_OF_FILM, type SilverOfFilm, silverOfARoll } from '../fixing/index.js'
import { refusedOutside } from '../range.js'
import { SILVER_RULE } from './reference.js'

/** Something that was poured into a waste jug, with how its silver is known. */
export interface JugPour {
  readonly volume: Millilitres
  readonly silver: SilverKnown
}

/**
 * By the rolls that went through it, over the band of negative film or with one's own film; by a reading in g/L, which
 * may be so much off either way; or none: water, stop, developer.
 */
export type SilverKnown =
  | { readonly by: 'rolls'; readonly rolls: number; readonly film?: SilverOfFilm }
  | { readonly by: 'reading'; readonly gramsPerLitre: number; readonly offBy?: number }
  | { readonly by: 'none' }

/** An estimate with its band; all three alike where nothing is in doubt. */
export interface SilverBand {
  readonly low: number
  readonly usual: number
  readonly high: number
}

/** A concentration against a limit: in doubt where the band lies on both sides. At the limit counts as above. */
export interface AgainstLimit {
  /** mg/L */
  readonly limit: number
  readonly says: 'above' | 'in-doubt' | 'below'
}

/** Silver in a jug. */
export interface SilverHeld {
  /** mL in the jug, and the part of it that held silver when it was poured. */
  readonly volume: number
  readonly silverRich: number
  /** g; water poured in changes none of it. */
  readonly grams: SilverBand
  /** As it stands in the jug. */
  readonly gramsPerLitre: SilverBand
  /** mg/L as if nothing without silver had been poured in: what the limits are held against. */
  readonly undiluted: SilverBand
  /** The federal figure of the United States. */
  readonly rule: AgainstLimit
  /** The person's own limit, from whoever takes the waste. */
  readonly own: AgainstLimit | null
  /** `measured` where every reading was one; else the assumed silver of film is in it. */
  readonly origin: 'measured' | 'assumption'
}

const VOLUME = { low: 1, high: 1_000_000 }
const MOST_POURS = 10_000
const NONE: SilverBand = { low: 0, usual: 0, high: 0 }

/**
 * Silver held in a jug, against the limits. Both are answered from the silver-rich part alone, so that pouring in water
 * moves no verdict: dilution is not disposal. Whether any of it may go down a drain is not answered here.
 * 1 mL to 1000 L a pour, 1 to 10 000 pours, rolls to 100 000, readings to 50 g/L; outside, refused.
 */
export function silverHeld(pours: readonly JugPour[], ownLimit?: number): Result<SilverHeld> {
  const refused =
    refusedOutside('waste.bad-value', 'A number of pours', pours.length, { low: 1, high: MOST_POURS }, 'pours') ??
    wrongLimit(ownLimit)
  if (refused) return refused
  let [volume, silverRich, grams] = [0, 0, NONE]
  for (const pour of pours) {
    const silver = gramsOf(pour)
    if (!silver.ok) return silver
    volume += pour.volume
    if (pour.silver.by !== 'none') silverRich += pour.volume
    grams = eachOf((name) => grams[name] + silver.value[name])
  }
  const undiluted = perLitre(grams, silverRich, 1e6)
  return ok({
    volume,
    silverRich,
    grams,
    gramsPerLitre: perLitre(grams, volume, 1000),
    undiluted,
    rule: against(undiluted, SILVER_RULE.milligramsPerLitre),
    own: ownLimit === undefined ? null : against(undiluted, ownLimit),
    origin: pours.some(({ silver }) => silver.by === 'rolls' && silver.film === undefined) ? 'assumption' : 'measured',
  })
}

const eachOf = (of: (name: keyof SilverBand) => number): SilverBand => ({
  low: of('low'),
  usual: of('usual'),
  high: of('high'),
})

const perLitre = (grams: SilverBand, volume: number, scale: number): SilverBand =>
  volume === 0 ? NONE : eachOf((name) => (grams[name] * scale) / volume)

const against = ({ low, high }: SilverBand, limit: number): AgainstLimit => ({
  limit,
  says: low >= limit ? 'above' : high >= limit ? 'in-doubt' : 'below',
})

const LIMIT = { low: 0.001, high: 1000 }
const wrongLimit = (limit: number | undefined): Failed | null =>
  limit === undefined ? null : refusedOutside('waste.bad-value', 'A limit in mg/L', limit, LIMIT, 'limit')

/** Grams of silver in one pour. */
function gramsOf({ volume, silver }: JugPour): Result<SilverBand> {
  const refused = refusedOutside('waste.bad-value', 'A volume in millilitres', volume, VOLUME, 'volume')
  if (refused) return refused
  if (silver.by === 'rolls') return ofRolls(silver.rolls, silver.film)
  if (silver.by === 'reading') return ofReading(volume, silver.gramsPerLitre, silver.offBy ?? 0)
  return ok(NONE)
}

function ofReading(volume: number, gramsPerLitre: number, offBy: number): Result<SilverBand> {
  const refused =
    refusedOutside('waste.bad-value', 'Silver in g/L', gramsPerLitre, { low: 0, high: 50 }, 'gramsPerLitre') ??
    refusedOutside('waste.bad-value', 'What a reading may be off, in g/L,', offBy, { low: 0, high: 50 }, 'offBy')
  if (refused) return refused
  const litres = volume / 1000
  return ok({
    low: Math.max(0, gramsPerLitre - offBy) * litres,
    usual: gramsPerLitre * litres,
    high: (gramsPerLitre + offBy) * litres,
  })
}

function ofRolls(rolls: number, film: SilverOfFilm | undefined): Result<SilverBand> {
  const refused = refusedOutside('waste.bad-value', 'Rolls', rolls, { low: 0, high: 100_000 }, 'rolls')
  if (refused) return refused
  const { gramsPerM2, share } = SILVER_OF_FILM
  const each = (name: keyof SilverBand) =>
    silverOfARoll(film?.gramsPerM2 ?? gramsPerM2[name], film?.share ?? share[name])
  const [low, usual, high] = [each('low'), each('usual'), each('high')]
  if (!low.ok) return low
  if (!usual.ok) return usual
  return high.ok ? ok({ low: rolls * low.value, usual: rolls * usual.value, high: rolls * high.value }) : high
}

/** How many fold a concentration would have to be thinned to fall below a limit: the proof that nobody should. */
export function foldsToLimit(gramsPerLitre: number, limit: number = SILVER_RULE.milligramsPerLitre): Result<number> {
  const refused =
    refusedOutside('waste.bad-value', 'Silver in g/L', gramsPerLitre, { low: 0, high: 50 }, 'gramsPerLitre') ??
    wrongLimit(limit)
  return refused ?? ok((gramsPerLitre * 1000) / limit)
}
