import { type Millilitres, millilitres, ok, type Result } from '../../kernel/index.js'
import type { Origin } from '../development/index.js'
import { leastOf } from '../left/index.js'
import { refusedOutside } from '../range.js'
import { ACIDS, chargeAt } from '../waste/index.js'

/** Acids of stop baths, with g/mol for strengths in per cent by weight and volume. */
export const STOP_ACIDS = {
  acetic: { molarMass: 60.052 },
  citric: { molarMass: 192.123 },
} as const
/** The acid of a stop bath by its name. */
export type StopAcid = keyof typeof STOP_ACIDS

/** Bromocresol purple: yellow below, purple above (recipe citing the Merck Index, 2006). */
export const INDICATOR = { yellowBelow: 5.2, purpleAbove: 6.8 } as const

/** mol/L of so many grams in 100 mL: 1 % of acetic acid is 0.1665. From 0.01 to 30 %; citric as the anhydrous acid. */
export function stopMolarity(percent: number, acid: StopAcid = 'acetic'): Result<number> {
  const refused = refusedOutside('life.bad-value', 'Acid in per cent', percent, { low: 0.01, high: 30 }, 'percent')
  return refused ?? ok((percent * 10) / STOP_ACIDS[acid].molarMass)
}

/** Part of an acid's whole uptake that is neutralised at a pH from 0 to 14: of acetic 0.735 at 5.2 (pKa 4.756). */
export function neutralisedAt(pH: number, acid: StopAcid = 'acetic'): Result<number> {
  const refused = refusedOutside('life.bad-value', 'A pH', pH, { low: 0, high: 14 }, 'pH')
  return refused ?? ok(chargeAt(ACIDS[acid], pH) / ACIDS[acid].pKa.length)
}

/** What a roll brings along: developer, and its alkali in mol/L. */
export interface CarriedAlkali {
  /** 0.1 to 500 mL */
  readonly volume: Millilitres
  /** 0.001 to 5 mol/L */
  readonly alkali: number
  readonly origin: Origin
}
/** What one roll carries over until it is measured. */
export const CARRIED_ALKALI: CarriedAlkali = { volume: millilitres(20), alkali: 0.25, origin: 'assumption' }

/** A stop bath in use. */
export interface StopInUse {
  /** As it was mixed, 50 mL to 100 L. */
  readonly volume: Millilitres
  /** mol/L of acid as it was mixed, 0.001 to 5: {@link stopMolarity}. */
  readonly molarity: number
  readonly acid?: StopAcid
  /** Rolls that went through it. */
  readonly rolls?: number
  readonly carried?: CarriedAlkali
  /** Rolls a litre, where a count is published for this bath: 12 for one with sulfate (textbook, 3rd ed. 2008). */
  readonly published?: number
}

/** Rolls that a stop bath carries, counted from fresh. */
export interface StopCapacity {
  /** Part of the acid neutralised, and mol of alkali taken, when the indicator begins to turn. */
  readonly part: number
  readonly takes: number
  /** Rolls until it begins to turn, and until it is purple. */
  readonly byAcid: number
  readonly toPurple: number
  readonly byPublished: number | null
  /** The lower of the acid's count to the turning and the published one. */
  readonly carries: number
  readonly decides: 'acid' | 'published'
  readonly left: number
}

/**
 * Alkali carried in against acid left, up to where the indicator begins to turn. Where a count is published for that
 * bath and is lower, it rules. A litre of 1 % acetic acid with 20 mL of 0.25 mol/L a roll: 24.5 rolls, purple at 33.0;
 * published at 12 a litre, 12.
 */
export function stopCapacity(bath: StopInUse): Result<StopCapacity> {
  const { volume, molarity, acid = 'acetic', rolls = 0, carried = CARRIED_ALKALI, published } = bath
  const refused =
    refusedOutside('life.bad-value', 'A volume in millilitres', volume, { low: 50, high: 100_000 }, 'volume') ??
    refusedOutside('life.bad-value', 'Acid in mol/L', molarity, { low: 0.001, high: 5 }, 'molarity') ??
    refusedOutside('life.bad-value', 'Rolls', rolls, { low: 0, high: 100_000 }, 'rolls') ??
    refusedOutside('life.bad-value', 'What a roll brings, in millilitres,', carried.volume, { low: 0.1, high: 500 }) ??
    refusedOutside('life.bad-value', 'Its alkali in mol/L', carried.alkali, { low: 0.001, high: 5 }) ??
    (published === undefined
      ? null
      : refusedOutside('life.bad-value', 'A published count', published, { low: 0.1, high: 500 }, 'published'))
  if (refused) return refused
  const takesTo = (pH: number) => (volume / 1000) * molarity * chargeAt(ACIDS[acid], pH)
  const perRoll = (carried.volume / 1000) * carried.alkali
  const takes = takesTo(INDICATOR.yellowBelow)
  const byAcid = takes / perRoll
  const byPublished = published === undefined ? null : (published * volume) / 1000
  const least = leastOf<'acid' | 'published'>({ acid: byAcid, published: byPublished })
  const { amount, decides } = least as NonNullable<typeof least>
  return ok({
    part: takes / takesTo(14),
    takes,
    byAcid,
    toPurple: takesTo(INDICATOR.purpleAbove) / perRoll,
    byPublished,
    carries: amount,
    decides,
    left: Math.max(0, amount - rolls),
  })
}

/** Why water may stand in for an acid stop. */
export type WaterStopReason = 'alkaline-fixer' | 'staining-developer' | 'strong-carbonate'

/** What stands before and after the stop. */
export interface StopBetween {
  readonly developer: 'ordinary' | 'staining' | 'strong-carbonate'
  readonly fixer: 'acid' | 'alkaline'
}

/** Which stop suits, and every reason for water. */
export interface StopAdvice {
  readonly stop: 'acid' | 'water'
  readonly reasons: readonly WaterStopReason[]
}

/**
 * Water where acid would upset an alkaline fixer, take the stain, or foam and blister after strong carbonate; acid
 * otherwise. Common practice. Running water takes about 30 s where acid takes 15 (textbook, 3rd ed. 2008, p. 104).
 */
export function stopFor({ developer, fixer }: StopBetween): StopAdvice {
  const reasons: WaterStopReason[] = []
  if (fixer === 'alkaline') reasons.push('alkaline-fixer')
  if (developer === 'staining') reasons.push('staining-developer')
  if (developer === 'strong-carbonate') reasons.push('strong-carbonate')
  return { stop: reasons.length > 0 ? 'water' : 'acid', reasons }
}
