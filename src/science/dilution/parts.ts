import { all, failed, type Millilitres, millilitres, ok, problem, type Result } from '../../kernel/index.js'
import { refusedOutside } from '../range.js'
import { DILUTION_LIMITS, type Mixture } from './definition.js'

const { total: TOTAL, part: PART, parts: PARTS } = DILUTION_LIMITS

function checkedParts(parts: readonly number[]): Result<readonly number[]> {
  if (parts.length < PARTS.fewest || parts.length > PARTS.most)
    return failed(
      problem('dilution.bad-value', {
        what: 'The number of parts',
        value: parts.length,
        low: PARTS.fewest,
        high: PARTS.most,
      }),
    )
  return all(parts.map((part) => refusedOutside('dilution.bad-value', 'A part', part, PART) ?? ok(part)))
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0)

/**
 * A total volume shared out by a ratio: `[1, 4]` in 300 mL is 60 and 240 mL. One part alone is stock. Volumes are taken
 * as additive, which is the convention of every ratio on a label. Totals 1 mL to 100 L; outside, refused.
 */
export function mix(parts: readonly number[], total: Millilitres): Result<Mixture> {
  const sound = checkedParts(parts)
  if (!sound.ok) return sound
  const refused = refusedOutside('dilution.bad-value', 'A total in millilitres', total, TOTAL, 'total')
  if (refused) return refused
  const whole = sum(parts)
  return ok({ total, parts: parts.map((part) => millilitres((total * part) / whole)) })
}

/** The most that can be mixed from so much of the first part: 50 mL at 1 + 9 make 500 mL. */
export function mostFrom(parts: readonly number[], stock: Millilitres): Result<Mixture> {
  const sound = checkedParts(parts)
  if (!sound.ok) return sound
  const refused = refusedOutside('dilution.bad-value', 'A volume of stock in millilitres', stock, TOTAL, 'stock')
  if (refused) return refused
  return mix(parts, millilitres(Math.min((stock * sum(parts)) / (parts[0] as number), TOTAL.high)))
}

/** What of a working bath is the first part: 1/5 for 1 + 4. */
export function strengthOf(parts: readonly number[]): Result<number> {
  const sound = checkedParts(parts)
  return sound.ok ? ok((parts[0] as number) / sum(parts)) : sound
}

/**
 * Dilutions one after the other as one: 1 + 1 and then 1 + 4 is 1 + 9. Only of two parts each, since with more it
 * matters which concentrate is thinned.
 */
export function chained(ratios: readonly (readonly number[])[]): Result<readonly [1, number]> {
  const strengths = all(
    ratios.map((parts) => (parts.length <= 2 ? strengthOf(parts) : failed(problem('dilution.chain-of-two-parts', {})))),
  )
  if (!strengths.ok) return strengths
  const factor = strengths.value.reduce((product, strength) => product / strength, 1)
  return refusedOutside('dilution.bad-value', 'Thinned in all', factor, { low: 1, high: 1e7 }) ?? ok([1, factor - 1])
}

/** The two ways in which `1:n` is read, with what they come to in a volume. */
export interface ColonReadings {
  /** One part and n parts: usual in photography. */
  readonly plus: Mixture
  /** One part in n parts in all: usual in some laboratories. */
  readonly within: Mixture
  /** How much stronger the second is than the first: 1.25 for 1:4. */
  readonly stronger: number
}

/** Both readings of `1:n`, never chosen between: n above 1. */
export function colonReadings(n: number, total: Millilitres): Result<ColonReadings> {
  const refused = refusedOutside('dilution.bad-value', 'The second number', n, { low: 1.001, high: 1000 })
  if (refused) return refused
  const plus = mix([1, n], total)
  const within = mix([1, n - 1], total)
  if (!plus.ok) return plus
  return within.ok ? ok({ plus: plus.value, within: within.value, stronger: (1 + n) / n }) : within
}

/** The two ways in which “so much into a volume” is done. */
export interface IntoReadings {
  /** Made up to the volume: 50 + 950, which is 1 + 19. */
  readonly madeUpTo: { readonly parts: readonly [1, number]; readonly mixture: Mixture }
  /** Poured into the full volume: 50 + 1000, which is 1 + 20. */
  readonly pouredInto: { readonly parts: readonly [1, number]; readonly mixture: Mixture }
}

/** “50 mL to a litre” done both ways. The amount must be less than the volume. */
export function intoOrUpTo(amount: Millilitres, volume: Millilitres): Result<IntoReadings> {
  if (!(amount > 0 && amount < volume))
    return failed(problem('dilution.more-than-total', { amount: Number(amount), volume: Number(volume) }))
  const upTo = mix([amount, volume - amount], volume)
  const into = mix([amount, volume], millilitres(amount + volume))
  if (!upTo.ok) return upTo
  if (!into.ok) return into
  return ok({
    madeUpTo: { parts: [1, volume / amount - 1], mixture: upTo.value },
    pouredInto: { parts: [1, volume / amount], mixture: into.value },
  })
}
