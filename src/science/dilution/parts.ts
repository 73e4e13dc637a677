import {
  all,
  failed,
  type Millilitres,
  millilitres,
  ok,
  problem,
  type Ratio,
  type Result,
  readRatio,
} from '../../kernel/index.js'
import { refusedOutside } from '../range.js'
import { short } from '../saying.js'
import { DILUTION_LIMITS, type Mixture } from './definition.js'

const { total: TOTAL, stock: STOCK, part: PART, parts: PARTS } = DILUTION_LIMITS

export function checkedParts(parts: readonly number[]): Result<readonly number[]> {
  const count = refusedOutside('dilution.bad-value', 'The number of parts', parts.length, PARTS, 'parts')
  return (
    count ??
    all(parts.map((part, i) => refusedOutside('dilution.bad-value', 'A part', part, PART, `parts[${i}]`) ?? ok(part)))
  )
}

export const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0)

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
  const refused = refusedOutside('dilution.bad-value', 'A volume of stock in millilitres', stock, STOCK, 'stock')
  if (refused) return refused
  return mix(parts, millilitres(Math.min((stock * sum(parts)) / (parts[0] as number), TOTAL.high)))
}

/** The most that can be mixed from several stocks, as with developers of parts A and B. */
export interface FromStocks {
  readonly mixture: Mixture
  /** Which part runs out first, from 0. */
  readonly limitedBy: number
  /** What is left of each stock; null where none was stated, such as water. */
  readonly left: readonly (Millilitres | null)[]
}

/**
 * The most that can be mixed when several parts are limited: 1 + 1 + 100 from 6 mL of A and 5 mL of B makes 510 mL and
 * leaves 1 mL of A. One stock a part in the order of the ratio, null for what there is enough of; one at least.
 * Held at 100 L, which nobody mixes at once.
 */
export function mostFromStocks(parts: readonly number[], stocks: readonly (Millilitres | null)[]): Result<FromStocks> {
  const sound = checkedParts(parts)
  if (!sound.ok) return sound
  const stated = stocks.flatMap((stock, place) => (stock === null ? [] : [{ stock, place }]))
  if (stated.length === 0 || stocks.length > parts.length)
    return failed(problem('dilution.stocks-mismatch', { stocks: stocks.length, parts: parts.length }, 'stocks'))
  for (const { stock, place } of stated) {
    const refused = refusedOutside('dilution.bad-value', 'A volume of stock in mL', stock, STOCK, `stocks[${place}]`)
    if (refused) return refused
  }
  const reach = stated.map(({ stock, place }) => ({ place, total: (stock * sum(parts)) / (parts[place] as number) }))
  const least = reach.reduce((one, other) => (other.total < one.total ? other : one))
  const mixture = mix(parts, millilitres(Math.min(least.total, TOTAL.high)))
  if (!mixture.ok) return mixture
  const left = stocks.map((stock, i) =>
    stock === null ? null : millilitres(Math.max(0, stock - (mixture.value.parts[i] as number))),
  )
  return ok({ mixture: mixture.value, limitedBy: least.place, left })
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

/** One way to read a ratio, with what it comes to. */
export interface RatioReading {
  readonly ratio: Ratio
  readonly mixture: Mixture
  /** What of the whole is the first part. */
  readonly strength: number
}

/** What each reading of a doubtful ratio comes to in a volume, in the order given; never chosen between. */
export const eachReading = (ratios: readonly Ratio[], total: Millilitres): Result<RatioReading[]> =>
  all(
    ratios.map((ratio): Result<RatioReading> => {
      const mixture = mix(ratio.parts, total)
      return mixture.ok
        ? ok({ ratio, mixture: mixture.value, strength: (mixture.value.parts[0] as number) / total })
        : mixture
    }),
  )

/** The two ways in which `1:n` is read, with what they come to in a volume. */
export interface ColonReadings {
  /** One part and n parts: usual in photography. */
  readonly plus: Mixture
  /** One part in n parts in all: usual in some laboratories. */
  readonly within: Mixture
  /** How much stronger the second is than the first: 1.25 for 1:4. */
  readonly stronger: number
}

/**
 * Both readings of `1:n`, never chosen between: 1:4 in 300 mL is 60 + 240 or 75 + 225. n from 2 to 1000; the reading
 * itself is the kernel's ({@link readRatio}).
 */
export function colonReadings(n: number, total: Millilitres): Result<ColonReadings> {
  const refused = refusedOutside('dilution.bad-value', 'The second number', n, { low: 2, high: PART.high }, 'n')
  if (refused) return refused
  const read = readRatio(`1:${n}`)
  const both = eachReading(read.kind === 'asked' ? read.choices.map(({ value }) => value) : [], total)
  if (!both.ok) return both
  const [plus, within] = both.value
  if (plus === undefined || within === undefined)
    return failed(problem('quantity.unreadable', { text: `1:${n}`, what: 'a mixing ratio', example: '1:4' }, 'n'))
  return ok({ plus: plus.mixture, within: within.mixture, stronger: within.strength / plus.strength })
}

/** The two ways in which “so much into a volume” is done. */
export interface IntoReadings {
  /** Made up to the volume: 50 + 950, which is 1 + 19. */
  readonly madeUpTo: { readonly parts: readonly [1, number]; readonly mixture: Mixture }
  /** Poured into the full volume: 50 + 1000, which is 1 + 20. */
  readonly pouredInto: { readonly parts: readonly [1, number]; readonly mixture: Mixture }
}

/**
 * “50 mL to a litre” done both ways. The amount must be less than the volume (1 mL – 100 L) and at least a thousandth of
 * it; else refused.
 */
export function intoOrUpTo(amount: Millilitres, volume: Millilitres): Result<IntoReadings> {
  const refused = refusedOutside('dilution.bad-value', 'A volume in mL', volume, TOTAL, 'volume')
  if (refused) return refused
  if (!(amount > 0 && amount < volume))
    return failed(problem('dilution.more-than-total', { amount: short(amount, 3), volume: short(volume, 3) }))
  const upTo: readonly [1, number] = [1, volume / amount - 1]
  const into: readonly [1, number] = [1, volume / amount]
  const filled = mix(upTo, volume)
  if (!filled.ok) return filled
  const poured = mix(into, millilitres(amount + volume))
  if (!poured.ok) return poured
  return ok({
    madeUpTo: { parts: upTo, mixture: filled.value },
    pouredInto: { parts: into, mixture: poured.value },
  })
}
