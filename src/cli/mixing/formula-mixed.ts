import { all, failed, type Grams, grams, type Millilitres, ok, type Result } from '../../kernel/index.js'
import {
  type BathFormula,
  type MixingSheet,
  mixingSheet,
  mixingWaterFor,
  SHIPPED_FORMULAS,
  type Swap,
  saltNamed,
  volumeFrom,
  type Weighing,
  weighingOf,
  withAtHand,
} from '../../science/index.js'
import type { BathFormulaBody, FormulaQuestion } from '../../wire/index.js'
import { usage } from '../output.js'

/** g; a small scale as many have one, until a step is stated. */
const ASSUMED_STEP = 0.1 as Grams

/** A bath as it is going to be mixed: what its sentences and its working are written from. */
export interface MixedFormula {
  readonly question: FormulaQuestion
  /** As it is called for. */
  readonly called: BathFormula
  /** As it is mixed, from what is at hand. */
  readonly formula: BathFormula
  readonly swaps: readonly Swap[]
  readonly sheet: MixingSheet
  /** One a line of the sheet; null for a liquid. */
  readonly weighings: readonly (Weighing | null)[]
  readonly step: Grams
}

/** The bath that is asked for, its amounts and how each is got. */
export function mixedFrom(question: FormulaQuestion): Result<MixedFormula> {
  const called = formulaOf(question.formula)
  if (!called.ok) return called
  const atHand = question.at_hand.map(({ salt, instead }) => (instead === undefined ? { salt } : { salt, instead }))
  const found = withAtHand(called.value, atHand)
  if (!found.ok) return found
  const { formula, swaps } = found.value
  const volume = volumeOf(question, formula)
  if (!volume.ok) return volume
  const sheet = mixingSheet(formula, volume.value)
  if (!sheet.ok) return sheet
  const step = question.scale_step_g ?? ASSUMED_STEP
  const weighings = all(
    sheet.value.lines.map(({ salt, grams: amount }): Result<Weighing | null> => {
      if (amount === null) return ok(null)
      const facts = saltNamed(salt)
      return facts.ok ? weighingOf(facts.value, amount, step, volume.value) : facts
    }),
  )
  if (!weighings.ok) return weighings
  return ok({
    ...{ question, called: called.value, formula, swaps, sheet: sheet.value },
    ...{ weighings: weighings.value, step },
  })
}

function formulaOf(asked: FormulaQuestion['formula']): Result<BathFormula> {
  if (typeof asked !== 'string') return ownFormula(asked)
  const wanted = asked.trim().toLowerCase()
  const found = SHIPPED_FORMULAS.find(({ id, name }) => id === wanted || name.toLowerCase() === wanted)
  if (found !== undefined) return ok(found)
  const known = SHIPPED_FORMULAS.map(({ id }) => id).join(', ')
  return failed(usage(`No formula called “${asked}” comes with the program. Name a file of JSON, or one of ${known}.`))
}

function ownFormula({ name, role, additions, water_first, water_c, source }: BathFormulaBody): Result<BathFormula> {
  const read = all(
    additions.map(({ salt, grams_per_l, ml_per_l, percent }) => {
      if ((grams_per_l === undefined) === (ml_per_l === undefined))
        return failed(usage(`“${salt}” should have grams_per_l, or ml_per_l for a liquid, and not both.`))
      const facts = saltNamed(salt)
      if (!facts.ok) return facts
      return ok({
        salt: facts.value.id,
        ...(grams_per_l === undefined ? {} : { gramsPerLitre: grams_per_l }),
        ...(ml_per_l === undefined ? {} : { millilitresPerLitre: ml_per_l }),
        ...(percent === undefined ? {} : { percent }),
      })
    }),
  )
  if (!read.ok) return read
  const temperature = water_c === undefined ? mixingWaterFor(role, read.value) : { ...water_c, source }
  return ok({
    ...{ id: 'own', name, role, additions: read.value, waterFirst: water_first, temperature },
    ...{ origin: 'sheet', tag: 'own', source },
  })
}

/** As asked, or as much as all there is of a salt makes; by what is at hand where that was swapped. */
function volumeOf({ volume_ml, all_of }: FormulaQuestion, formula: BathFormula): Result<Millilitres> {
  if ((volume_ml === undefined) === (all_of === undefined))
    return failed(usage('Say how much in the end, --volume 600mL, or what there is of one salt, --all-of hypo=500g.'))
  if (volume_ml !== undefined) return ok(volume_ml)
  const { salt, grams: amount } = all_of as NonNullable<typeof all_of>
  const facts = saltNamed(salt)
  return facts.ok ? volumeFrom(formula, facts.value.id, amount) : facts
}

/** The name of a salt of the table by its id. */
export function nameOf(id: string): string {
  const salt = saltNamed(id)
  return salt.ok ? salt.value.name : id
}

/** Grams of the salt that was called for in the whole of a bath. */
export const calledGrams = ({ wantedPerLitre }: Swap, volume: Millilitres): Grams =>
  grams((wantedPerLitre * volume) / 1000)
