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
import type { Origin } from '../development/index.js'
import { refusedOutside } from '../range.js'
import { SALTS } from './salts.js'
import { MIXING_WATER, type MixingWater } from './water.js'

/** What a bath mixed by weight is for. */
export type BathRole = 'developer' | 'stop' | 'fixer' | 'wash-aid' | 'other'

/** One addition to a bath mixed by weight: grams of a salt a litre, or millilitres of a liquid. */
export interface Addition {
  /** Id in the table of salts. */
  readonly salt: string
  readonly gramsPerLitre?: number
  readonly millilitresPerLitre?: number
  /** Percent by weight of a liquid. */
  readonly percent?: number
}

/** A bath by weight, as it is mixed: in this order, each dissolved before the next, topped up at the end. */
export interface BathFormula {
  readonly id: string
  readonly name: string
  readonly role: BathRole
  readonly additions: readonly Addition[]
  /** Part of the final volume to begin with. */
  readonly waterFirst: number
  readonly temperature: MixingWater
  readonly origin: Origin
  /** `memory`: no page was at hand to check it against; `own`: as somebody typed it. */
  readonly tag: 'source' | 'memory' | 'practice' | 'own'
  readonly source: string
}

/** One line of a mixing sheet. */
export interface SheetLine {
  readonly salt: string
  readonly name: string
  readonly grams: Grams | null
  readonly millilitres: Millilitres | null
  /** Percent by weight of a liquid; null for what is weighed. */
  readonly percent: number | null
  readonly cautions: readonly MixingCaution[]
}

/** A caution at the line of a mixing sheet where it counts; its words are in the catalogue. */
export type MixingCaution =
  | 'caustic-into-cold-water'
  | 'acid-into-water'
  | 'goggles-and-gloves'
  | 'no-dust'
  | 'sensitiser'
  | 'fumes'
  | 'dissolve-before-next'
  | 'pinch-of-sulfite-first'

/** A bath scaled to a volume. */
export interface MixingSheet {
  readonly volume: Millilitres
  readonly water: Millilitres
  /** Cold for caustic, whatever the bath's own mixing temperature. */
  readonly temperature: MixingWater & { readonly cold: boolean }
  readonly lines: readonly SheetLine[]
}

/** Null, or why an addition cannot be: up to 1000 g or mL a litre, a liquid of 0 to 100 %. */
export const wrongAmounts = ({ gramsPerLitre = 0, millilitresPerLitre = 0, percent = 0 }: Addition) =>
  refusedOutside('formula.bad-value', 'Grams a litre', gramsPerLitre, { low: 0, high: 1000 }) ??
  refusedOutside('formula.bad-value', 'Millilitres a litre', millilitresPerLitre, { low: 0, high: 1000 }) ??
  refusedOutside('formula.bad-value', 'The percentage of a liquid', percent, { low: 0, high: 100 })

/** A formula scaled to a volume from 10 mL to 100 L, with its cautions at their lines. */
export function mixingSheet(formula: BathFormula, volume: Millilitres): Result<MixingSheet> {
  const refused = refusedOutside(
    'formula.bad-value',
    'A volume in millilitres',
    volume,
    { low: 10, high: 100_000 },
    'volume',
  )
  if (refused) return refused
  const litres = volume / 1000
  const lines: SheetLine[] = []
  for (const addition of formula.additions) {
    const { salt, gramsPerLitre, millilitresPerLitre, percent } = addition
    const facts = SALTS.find(({ id }) => id === salt)
    if (facts === undefined)
      return failed(
        problem('formula.salt-unknown', { name: salt.slice(0, 60), known: SALTS.map(({ id }) => id).join(', ') }),
      )
    const wrong = wrongAmounts(addition)
    if (wrong) return wrong
    lines.push({
      salt,
      name: facts.name,
      grams: gramsPerLitre === undefined ? null : grams(gramsPerLitre * litres),
      millilitres: millilitresPerLitre === undefined ? null : millilitres(millilitresPerLitre * litres),
      percent: percent ?? null,
      cautions: cautionsOf(formula, salt, facts.handling),
    })
  }
  const cold = formula.additions.some(({ salt }) => SALTS.find(({ id }) => id === salt)?.handling === 'caustic')
  return ok({
    volume,
    water: millilitres(volume * formula.waterFirst),
    temperature: { ...(cold ? MIXING_WATER.caustic : formula.temperature), cold },
    lines,
  })
}

function cautionsOf(formula: BathFormula, salt: string, handling: (typeof SALTS)[number]['handling']): MixingCaution[] {
  const cautions: MixingCaution[] = []
  if (salt === 'metol') cautions.push('pinch-of-sulfite-first')
  if (handling === 'caustic') cautions.push('caustic-into-cold-water', 'goggles-and-gloves')
  if (handling === 'strong-acid') cautions.push('acid-into-water', 'goggles-and-gloves')
  if (handling === 'sensitiser') cautions.push('sensitiser', 'no-dust')
  if (handling === 'dust') cautions.push('no-dust')
  if (handling === 'fumes') cautions.push('fumes')
  if (formula.additions.at(-1)?.salt !== salt) cautions.push('dissolve-before-next')
  return cautions
}

/** A bath's amounts for so much of one of its salts, when that is all there is: the volume it makes. */
export function volumeFrom(formula: BathFormula, salt: string, atHand: Grams): Result<Millilitres> {
  const each = formula.additions.find((addition) => addition.salt === salt)?.gramsPerLitre
  if (each === undefined || each === 0)
    return failed(
      problem('formula.salt-unknown', {
        name: salt.slice(0, 60),
        known: formula.additions.map((one) => one.salt).join(', '),
      }),
    )
  const volume = (atHand / each) * 1000
  return (
    refusedOutside('formula.bad-value', 'A volume in millilitres', volume, { low: 0, high: 1_000_000 }) ??
    ok(millilitres(volume))
  )
}

/** Whether a scale tells an amount: at least twenty of its steps, common practice; else by a percent solution. */
export function weighable(name: string, amount: Grams, step: Grams): Result<null> {
  const refused = refusedOutside('formula.bad-value', 'The step of a scale in grams', step, { low: 0.0001, high: 100 })
  if (refused) return refused
  const least = 20 * step
  return amount >= least
    ? ok(null)
    : failed(problem('formula.too-little-to-weigh', { name, amount: Number(amount), least }))
}
