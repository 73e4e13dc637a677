import {
  failed,
  type Grams,
  grams,
  type Millilitres,
  millilitres,
  ok,
  problem,
  type Result,
} from '../../kernel/index.js'
import { COMMON_MEASURES, leastMeasurable } from '../dilution/index.js'
import { refusedOutside } from '../range.js'
import { short } from '../saying.js'
import { AGENTS, dissolves } from './plausible.js'
import { weighable } from './recipe.js'
import type { Salt } from './salts.js'

/** How so many grams are got: off the scale, or measured out of a percent solution that was weighed for. */
export type Weighing =
  | { readonly by: 'scale' }
  | {
      readonly by: 'solution'
      /** Grams in 100 mL. */
      readonly percent: number
      /** What the solution is made of: so many grams, made up to so many millilitres. */
      readonly stock: { readonly grams: Grams; readonly volume: Millilitres }
      /** mL of it that hold what is called for; they count as water of the bath. */
      readonly measured: Millilitres
      /** Whether it may stand for another day: solutions of developing agents go brown. */
      readonly keeps: boolean
    }

/** Grams that are weighed out at all. */
const AMOUNTS = { low: 0.0001, high: 100_000 }
/** Percent solutions as the trade makes them, strongest first. */
const STRENGTHS = [10, 5, 2, 1]
/** Part of the bath that one solution may be, so that water is left for the rest: an assumption. */
const ROOM = 0.2
/** mL of a percent solution that anybody would make for this: an assumption. */
const MOST_STOCK = 500
/** mL: the least that the finest of common measures tells. */
const LEAST = Math.min(...COMMON_MEASURES.map(leastMeasurable))

/**
 * How an amount of a salt for a bath of so much is got with a scale of such steps: weighed from twenty steps up, else
 * out of the strongest percent solution that dissolves, is weighed for with half a litre at most, and is neither too
 * little to measure nor more than a fifth of the bath. Where none is, refused with the batch that would do. Amounts
 * 0.1 mg–100 kg.
 */
export function weighingOf(salt: Salt, amount: Grams, step: Grams, bath: Millilitres): Result<Weighing> {
  const refused = refusedOutside('formula.bad-value', 'An amount in grams', amount, AMOUNTS, 'amount')
  if (refused) return refused
  const weighed = weighable(salt.name, amount, step)
  if (weighed.ok) return ok({ by: 'scale' })
  if (weighed.problem.code !== 'formula.too-little-to-weigh') return weighed
  const least = 20 * step
  const measuredOf = (percent: number) => (amount * 100) / percent
  const strengths = STRENGTHS.filter(
    (percent) =>
      percent * 10 <= dissolves(salt.id) && (least * 100) / percent <= MOST_STOCK && measuredOf(percent) <= ROOM * bath,
  )
  const percent = strengths.find((one) => measuredOf(one) >= LEAST)
  if (percent === undefined) {
    const weakest = strengths.at(-1)
    // A larger batch comes to what a syringe tells of the weakest solution, or else to the scale's least.
    const times = weakest === undefined ? least / amount : LEAST / measuredOf(weakest)
    const values = { name: salt.name, amount: short(amount, 4), least, times: short(Math.ceil(times * 10) / 10, 1) }
    return failed(problem('formula.too-little-for-a-solution', values))
  }
  const measured = millilitres(measuredOf(percent))
  return ok({ by: 'solution', percent, stock: stockOf(percent, least, measured), measured, keeps: keeps(salt) })
}

const keeps = ({ id }: Salt): boolean => !AGENTS.includes(id)

/** Hundreds of millilitres, as many as it takes to weigh for them and to have enough. */
function stockOf(percent: number, least: number, measured: number) {
  const needed = Math.max((least * 100) / percent, measured)
  const volume = Math.ceil(needed / 100 - 1e-9) * 100
  return { grams: grams((volume * percent) / 100), volume: millilitres(volume) }
}
