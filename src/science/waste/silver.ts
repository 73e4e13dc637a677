import { ok, type Result } from '../../kernel/index.js'
import { SILVER_OF_FILM, silverOfARoll } from '../fixing/index.js'
import { refusedOutside } from '../range.js'
import { SILVER_RULE } from './reference.js'

/** A jug of spent fixer: how much, and the rolls that went through it. */
export interface Jug {
  /** mL */
  readonly volume: number
  readonly rolls: number
  /** g/L when it was measured, by a strip or by whoever received it; counts before any estimate. */
  readonly measured?: number
}

/** Silver in a jug. */
export interface SilverHeld {
  /** g: the estimate and its band; all three the same when measured. */
  readonly grams: { readonly low: number; readonly usual: number; readonly high: number }
  /** mg/L by the usual figure. */
  readonly milligramsPerLitre: number
  /** The federal figure of the United States, or the person's own where that is stricter. */
  readonly limit: number
  readonly above: boolean
  readonly origin: 'measured' | 'assumption'
}

/**
 * Silver held in a jug, against the limit. Water poured in changes the concentration and none of the grams, so `grams`
 * is what is handed over: dilution is not disposal.
 */
export function silverHeld(jug: Jug, ownLimit?: number): Result<SilverHeld> {
  const { volume, rolls, measured } = jug
  const refused =
    refusedOutside('waste.bad-value', 'A volume in millilitres', volume, { low: 1, high: 1_000_000 }, 'volume') ??
    refusedOutside('waste.bad-value', 'Rolls', rolls, { low: 0, high: 100_000 }, 'rolls') ??
    (measured === undefined
      ? null
      : refusedOutside('waste.bad-value', 'Silver in g/L', measured, { low: 0, high: 50 }, 'measured')) ??
    (ownLimit === undefined
      ? null
      : refusedOutside('waste.bad-value', 'A limit in mg/L', ownLimit, { low: 0.001, high: 1000 }, 'limit'))
  if (refused) return refused
  const grams = measured === undefined ? estimated(rolls) : ok(sameThrice((measured * volume) / 1000))
  if (!grams.ok) return grams
  const milligramsPerLitre = (grams.value.usual * 1e6) / volume
  const limit = Math.min(SILVER_RULE.milligramsPerLitre, ownLimit ?? Number.POSITIVE_INFINITY)
  return ok({
    grams: grams.value,
    milligramsPerLitre,
    limit,
    above: milligramsPerLitre >= limit,
    origin: measured === undefined ? 'assumption' : 'measured',
  })
}

const sameThrice = (value: number) => ({ low: value, usual: value, high: value })

function estimated(rolls: number): Result<SilverHeld['grams']> {
  const { gramsPerM2, share } = SILVER_OF_FILM
  const low = silverOfARoll(gramsPerM2.low, share.low)
  const usual = silverOfARoll(gramsPerM2.usual, share.usual)
  const high = silverOfARoll(gramsPerM2.high, share.high)
  if (!low.ok) return low
  if (!usual.ok) return usual
  return high.ok ? ok({ low: rolls * low.value, usual: rolls * usual.value, high: rolls * high.value }) : high
}

/** How many fold a concentration would have to be thinned to fall below a limit: the proof that nobody should. */
export function foldsToLimit(gramsPerLitre: number, limit: number = SILVER_RULE.milligramsPerLitre): Result<number> {
  const refused =
    refusedOutside('waste.bad-value', 'Silver in g/L', gramsPerLitre, { low: 0, high: 50 }) ??
    refusedOutside('waste.bad-value', 'A limit in mg/L', limit, { low: 0.001, high: 1000 }, 'limit')
  return refused ?? ok((gramsPerLitre * 1000) / limit)
}
