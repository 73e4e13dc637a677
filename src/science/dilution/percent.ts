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
import { refusedOutside } from '../range.js'
import { DILUTION_LIMITS } from './definition.js'

const percentWrong = (what: string, value: number, field: string) =>
  refusedOutside('dilution.bad-value', what, value, DILUTION_LIMITS.percent, field)
const densityWrong = (density: number) =>
  refusedOutside('dilution.bad-value', 'A density in g/mL', density, DILUTION_LIMITS.density, 'density')
const totalWrong = (total: number) =>
  refusedOutside('dilution.bad-value', 'A total in millilitres', total, DILUTION_LIMITS.total, 'total')

/** Parts of a strong and a weak solution that make one between them. */
export interface CrissCross {
  readonly strong: number
  readonly weak: number
}

/**
 * Two strengths blended to a third: so many parts of the strong one as the wanted is above the weak one, and the other
 * way round. By weight percentages the parts are weights; by volume percentages, volumes taken as additive. Strengths
 * 0 to 100 %; one that does not lie between the two is refused. Source: US Army SS0513-9, Photographic Quality Control.
 */
export function crissCross(strong: number, weak: number, wanted: number): Result<CrissCross> {
  const refused =
    percentWrong('The stronger percentage', strong, 'strong') ??
    percentWrong('The weaker percentage', weak, 'weak') ??
    percentWrong('The wanted percentage', wanted, 'wanted')
  if (refused) return refused
  if (strong <= weak) return failed(problem('dilution.strong-is-weak', { strong, weak }))
  if (wanted < weak || wanted > strong)
    return failed(problem('dilution.out-of-reach', { wanted, strong, weak }, 'wanted'))
  return ok({ strong: wanted - weak, weak: strong - wanted })
}

/** A blend as volumes of a total, by criss-cross of volume percentages. */
export function blendOf(
  strong: number,
  weak: number,
  wanted: number,
  total: Millilitres,
): Result<{ readonly strong: Millilitres; readonly weak: Millilitres }> {
  const refused = totalWrong(total)
  if (refused) return refused
  const parts = crissCross(strong, weak, wanted)
  if (!parts.ok) return parts
  const { strong: a, weak: b } = parts.value
  return ok({ strong: millilitres((total * a) / (a + b)), weak: millilitres((total * b) / (a + b)) })
}

/** How much of a dry chemical a percent solution needs, weight in volume: 10 % is 10 g made up to 100 mL. */
export function dryFor(percent: number, total: Millilitres): Result<Grams> {
  const refused = percentWrong('A percentage', percent, 'percent') ?? totalWrong(total)
  return refused ?? ok(grams((percent / 100) * total))
}

/** How much of a percent solution, weight in volume, holds so many grams: 0.5 g from 10 % is 5 mL. */
export function solutionHolding(amount: Grams, percent: number): Result<Millilitres> {
  const refused =
    refusedOutside('dilution.bad-value', 'A percentage', percent, { low: 0.01, high: 100 }, 'percent') ??
    refusedOutside('dilution.bad-value', 'An amount in grams', amount, { low: 0, high: 10_000 }, 'amount')
  if (refused) return refused
  const volume = (amount * 100) / percent
  return (
    refusedOutside('dilution.bad-value', 'A volume in millilitres', volume, { low: 0, high: 100_000 }) ??
    ok(millilitres(volume))
  )
}

/** Percent by weight from a volume percentage of a liquid, and densities in g/mL: of the liquid and of the mixture's other part. */
export interface ByWeight {
  readonly percent: number
  /** What the volumes alone would say. */
  readonly byVolume: number
}

/**
 * So many volumes of an acid of a weight percentage and density, with so many of water, as percent by weight. The sum
 * of the weights is true; volumes are not additive, which is why 3 + 8 of glacial acid is 28 % and not 27 %.
 */
export function weightPercent(
  acid: { readonly volumes: number; readonly percent: number; readonly density: number },
  water: { readonly volumes: number; readonly density: number },
): Result<ByWeight> {
  const volumes = { low: 0.001, high: 100_000 }
  const refused =
    percentWrong('The percentage of the acid', acid.percent, 'percent') ??
    refusedOutside('dilution.bad-value', 'Volumes of acid', acid.volumes, volumes) ??
    refusedOutside('dilution.bad-value', 'Volumes of water', water.volumes, volumes) ??
    densityWrong(acid.density) ??
    densityWrong(water.density)
  if (refused) return refused
  const [heavy, light] = [acid.volumes * acid.density, water.volumes * water.density]
  return ok({
    percent: (heavy * acid.percent) / (heavy + light),
    byVolume: (acid.volumes * acid.percent) / (acid.volumes + water.volumes),
  })
}

/** A solution by weight: what is weighed out for a volume. */
export interface WeighedOut {
  readonly dissolved: Grams
  readonly water: Grams
}

/**
 * What a volume of a solution by weight is made of: 10 % of density 1.03 g/mL, 500 mL, is 51.5 g and 463.5 g of water.
 * Percent 0–100, density 0.5–2 g/mL, total 1 mL – 100 L; else refused.
 */
export function weighedFor(percent: number, density: number, total: Millilitres): Result<WeighedOut> {
  const refused = percentWrong('A percentage', percent, 'percent') ?? densityWrong(density) ?? totalWrong(total)
  if (refused) return refused
  const mass = total * density
  return ok({ dissolved: grams((mass * percent) / 100), water: grams(mass * (1 - percent / 100)) })
}

/** Grams in 100 mL of a solution by weight: percent × density. 28 % at 1.0345 g/mL is 28.97 g in 100 mL. */
export function weightInVolume(percent: number, density: number): Result<number> {
  return percentWrong('A percentage', percent, 'percent') ?? densityWrong(density) ?? ok(percent * density)
}
