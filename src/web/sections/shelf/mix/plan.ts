import { type Celsius, type Grams, type Millilitres, millilitres, ok, type Result } from '../../../../kernel/index.js'
import { productToMix } from '../../../../planning/index.js'
import {
  type BathFormula,
  doubtsAbout,
  floorFor,
  MIXING_WATER,
  type MixingCaution,
  mix,
  mixingSheet,
  SALTS,
  type Swap,
  type Weighing,
  weighingOf,
  withAtHand,
} from '../../../../science/index.js'
import type { OnShelf, ProductRecord } from '../../../shared/api/index.js'

/** What is to be mixed, as far as it was chosen. */
export interface MixAsked {
  readonly product: ProductRecord
  /** Parts by volume; null for stock, for what is used as it is, and for what is mixed by weight. */
  readonly parts: readonly number[] | null
  readonly volume: Millilitres
  /** What a scale tells apart. */
  readonly scaleStep: Grams
  /** Rolls that it is mixed for; null where nobody said. */
  readonly rolls: number | null
  /** The salt at hand in place of the one that the formula calls for, by the id of that one. */
  readonly instead: Readonly<Record<string, string>>
}

/** One thing that goes in. */
export interface MixLine {
  /** Id of a salt, or the place of a part. */
  readonly key: string
  readonly name: string
  readonly amount: number
  readonly unit: 'ml' | 'g'
  readonly percent: number | null
  readonly cautions: readonly MixingCaution[]
  readonly swap: Swap | null
  readonly weighing: Result<Weighing> | null
  /** The part of a package that it comes from; empty where there is one only. */
  readonly part: string
}

/** What goes into what, in order. */
export interface MixPlan {
  readonly water: {
    readonly ml: Millilitres
    readonly low: Celsius
    readonly high: Celsius
    readonly cold: boolean
  } | null
  readonly lines: readonly MixLine[]
  /** Null where nothing is topped up: liquids by a ratio come to their volume by themselves. */
  readonly topUpTo: Millilitres | null
  readonly doubts: ReturnType<typeof doubtsAbout>
  /** What the label's least for a roll makes of it; null where none is known or no rolls were named. */
  readonly floor: { readonly carries: number; readonly wanted: number } | null
}

/** A mix in its order, or why it cannot be. */
export function mixPlan(asked: MixAsked): Result<MixPlan> {
  const { formula } = productToMix(asked.product)
  if (formula !== null) return byWeight(asked, formula)
  return asked.product.form === 'powder' ? ofPowder(asked) : byParts(asked)
}

function byWeight({ volume, scaleStep, instead }: MixAsked, formula: BathFormula): Result<MixPlan> {
  const atHand = Object.entries(instead).map(([wanted, salt]) => ({ salt, instead: wanted }))
  const mixed = withAtHand(formula, atHand)
  if (!mixed.ok) return mixed
  const sheet = mixingSheet(mixed.value.formula, volume)
  if (!sheet.ok) return sheet
  const lines = sheet.value.lines.map((line): MixLine => {
    const salt = SALTS.find(({ id }) => id === line.salt)
    const weighed = salt !== undefined && line.grams !== null && line.grams > 0
    return {
      key: line.salt,
      name: line.name,
      amount: line.grams ?? line.millilitres ?? 0,
      unit: line.grams === null ? 'ml' : 'g',
      percent: line.percent,
      cautions: line.cautions,
      swap: mixed.value.swaps.find(({ have }) => have === line.salt) ?? null,
      weighing: weighed ? weighingOf(salt, line.grams as Grams, scaleStep, volume) : null,
      part: '',
    }
  })
  const { low, high, cold } = sheet.value.temperature
  const water = { ml: sheet.value.water, low, high, cold }
  return ok({ water, lines, topUpTo: volume, doubts: doubtsAbout(mixed.value.formula), floor: null })
}

/** Concentrates in their parts, and the water first: acid goes into water, whatever the label shows. */
function byParts({ product, parts, volume, rolls }: MixAsked): Result<MixPlan> {
  const shared = mix(parts ?? [1], volume)
  if (!shared.ok) return shared
  const volumes = shared.value.parts
  const concentrates = volumes.length === 1 ? volumes : volumes.slice(0, -1)
  const lines = concentrates.map((amount, place): MixLine => {
    const part = product.package_parts[place] ?? ''
    return {
      ...BARE,
      key: String(place),
      name: part === '' ? product.name : `${product.name}, part ${part}`,
      amount,
      unit: 'ml',
      part,
    }
  })
  const { low, high } = MIXING_WATER.tap
  const water = volumes.length === 1 ? null : { ml: volumes.at(-1) as Millilitres, low, high, cold: false }
  const floor = floorOf(product, parts, volume, rolls)
  return ok({ water, lines, topUpTo: null, doubts: [], floor })
}

const BARE = { percent: null, cautions: [], swap: null, weighing: null }

/** A powder goes in whole: what lies in a bag is not mixed evenly, so that no part of it is taken. */
function ofPowder({ product, volume }: MixAsked): Result<MixPlan> {
  const { low, high } = product.role === 'developer' ? MIXING_WATER.developer : MIXING_WATER.fixer
  const names = product.package_parts.length === 0 ? [''] : product.package_parts
  const lines = names.map((part, place): MixLine => {
    const name = part === '' ? product.name : `${product.name}, part ${part}`
    return { ...BARE, key: String(place), name, amount: 0, unit: 'g', part, cautions: ['no-dust'] }
  })
  const water = { ml: millilitres(volume * 0.75), low, high, cold: false }
  return ok({ water, lines, topUpTo: volume, doubts: [], floor: null })
}

function floorOf(product: ProductRecord, parts: MixAsked['parts'], volume: Millilitres, rolls: number | null) {
  if (product.floor_ml_per_roll === null || rolls === null) return null
  const answer = floorFor({ parts: parts ?? [1], volume, floor: millilitres(product.floor_ml_per_roll), rolls })
  return answer.ok && !answer.value.enough ? { carries: answer.value.rolls, wanted: rolls } : null
}

/** Packages that a line can come from, the likeliest first. */
export function packagesFor(line: MixLine, product: ProductRecord, all: readonly OnShelf[]): OnShelf[] {
  const fitting = all.filter(
    ({ statement, unit, held }) => statement.kind === 'package' && unit === line.unit && held > 0,
  )
  if (product.formula === null)
    return fitting.filter(
      ({ statement }) =>
        statement.kind === 'package' &&
        statement.product_id === product.id &&
        (line.part === '' || statement.part === line.part),
    )
  const like = (one: OnShelf) =>
    [one.product, one.statement.name].some((name) => name.toLowerCase() === line.name.toLowerCase())
  return [...fitting.filter(like), ...fitting.filter((one) => !like(one))]
}

/** The package that is taken unless another is chosen; none where the name does not say so. */
export function usualPackage(line: MixLine, product: ProductRecord, all: readonly OnShelf[]): OnShelf | null {
  const [first] = packagesFor(line, product, all)
  if (first === undefined) return null
  const named = [first.product, first.statement.name].some((name) => name.toLowerCase() === line.name.toLowerCase())
  return product.formula === null || named ? first : null
}

/** How much each bottle takes, filled one after the other; null where they do not hold it all. */
export function sharedOut(volume: number, bottles: readonly OnShelf[]): { container_id: string; ml: number }[] | null {
  let left = volume
  const into: { container_id: string; ml: number }[] = []
  for (const { id, statement } of bottles) {
    if (statement.kind !== 'bottle' || left <= 0) continue
    const ml = Math.min(left, statement.holds_ml)
    into.push({ container_id: id, ml: Math.round(ml * 1000) / 1000 })
    left -= ml
  }
  return left > 0.0005 || into.length === 0 ? null : into
}
