import { ok, type Result } from '../../kernel/index.js'
import type { Origin } from '../development/index.js'
import { refusedOutside } from '../range.js'

/** pKa of acetic acid at 25 °C (LibreTexts table E1). */
export const ACETIC_PKA = 4.756
/** Bromocresol purple: yellow below, purple above (recipe citing the Merck Index, 2006). */
export const INDICATOR = { yellowBelow: 5.2, purpleAbove: 6.8 } as const

/** Part of an acid that is neutralised at a pH: 1/(1 + 10^(pKa − pH)). pH 0 to 14. */
export function neutralisedAt(pH: number, pKa: number = ACETIC_PKA): Result<number> {
  const refused =
    refusedOutside('life.bad-value', 'A pH', pH, { low: 0, high: 14 }, 'pH') ??
    refusedOutside('life.bad-value', 'A pKa', pKa, { low: -2, high: 14 }, 'pKa')
  return refused ?? ok(1 / (1 + 10 ** (pKa - pH)))
}

/** What a roll brings along: mL of developer, and its alkali in mol/L. Assumed, 20 mL at 0.25 mol/L. */
export interface CarriedAlkali {
  readonly volume: number
  readonly alkali: number
  readonly origin: Origin
}
export const CARRIED: CarriedAlkali = { volume: 20, alkali: 0.25, origin: 'assumption' }

/** Rolls that a stop bath carries. */
export interface StopCapacity {
  /** mol of alkali that it takes up to the pH. */
  readonly takes: number
  /** Rolls by the acid. */
  readonly byAcid: number
  /** Rolls that count: the lower of the acid's and a published figure. */
  readonly rolls: number
  readonly decides: 'acid' | 'published'
}

/**
 * Alkali carried in against acid left, up to the pH where the indicator turns. Where a count is published for that bath
 * and is lower, it rules. Volumes 50 mL to 100 L, 0.001 to 5 mol/L.
 */
export function stopCapacity(asked: {
  readonly volume: number
  readonly molarity: number
  readonly toPH?: number
  readonly pKa?: number
  readonly carried?: CarriedAlkali
  /** Rolls a litre, as published for this bath. */
  readonly published?: number
}): Result<StopCapacity> {
  const { volume, molarity, toPH = INDICATOR.yellowBelow, pKa = ACETIC_PKA, carried = CARRIED, published } = asked
  const refused =
    refusedOutside('life.bad-value', 'A volume in millilitres', volume, { low: 50, high: 100_000 }, 'volume') ??
    refusedOutside('life.bad-value', 'Acid in mol/L', molarity, { low: 0.001, high: 5 }, 'molarity') ??
    refusedOutside('life.bad-value', 'What a roll brings, in millilitres,', carried.volume, { low: 0.1, high: 500 }) ??
    refusedOutside('life.bad-value', 'Its alkali in mol/L', carried.alkali, { low: 0.001, high: 5 }) ??
    (published === undefined
      ? null
      : refusedOutside('life.bad-value', 'A published count', published, { low: 0.1, high: 500 }))
  if (refused) return refused
  const part = neutralisedAt(toPH, pKa)
  if (!part.ok) return part
  const takes = (volume / 1000) * molarity * part.value
  const byAcid = takes / ((carried.volume / 1000) * carried.alkali)
  const byBook = published === undefined ? Number.POSITIVE_INFINITY : (published * volume) / 1000
  return ok({ takes, byAcid, rolls: Math.min(byAcid, byBook), decides: byBook < byAcid ? 'published' : 'acid' })
}

/** Why water may stand in for an acid stop. */
export type WaterStopReason = 'alkaline-fixer' | 'staining-developer' | 'strong-carbonate'

/** Which stop suits: water after what would foam, stain or upset an alkaline fixer; acid otherwise. Common practice. */
export function stopFor(bath: {
  readonly fixer: 'acid' | 'alkaline'
  readonly developer: 'ordinary' | 'staining' | 'strong-carbonate'
}): { readonly stop: 'acid' | 'water'; readonly reasons: readonly WaterStopReason[] } {
  const reasons: WaterStopReason[] = []
  if (bath.fixer === 'alkaline') reasons.push('alkaline-fixer')
  if (bath.developer === 'staining') reasons.push('staining-developer')
  if (bath.developer === 'strong-carbonate') reasons.push('strong-carbonate')
  return { stop: reasons.length > 0 ? 'water' : 'acid', reasons }
}
