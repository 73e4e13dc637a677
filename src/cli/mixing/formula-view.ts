import { ok, type Result } from '../../kernel/index.js'
import { doubtsAbout, type MixingSheet } from '../../science/index.js'
import type { FormulaAnswer, FormulaQuestion } from '../../wire/index.js'
import { say, type Writer } from '../../words/index.js'
import { calledGrams, type MixedFormula, mixedFrom } from './formula-mixed.js'
import { formulaSentences } from './formula-sentences.js'
import { formulaWorking } from './formula-working.js'

/** A bath mixed by weight, with its sentences and its working. */
export function formulaView(question: FormulaQuestion, w: Writer): Result<FormulaAnswer> {
  const mixed = mixedFrom(question)
  if (!mixed.ok) return mixed
  const { called, formula, sheet } = mixed.value
  const { water, temperature, volume } = sheet
  const doubts = doubtsAbout(formula).map((code) => ({ code, sentence: say(`formula.doubt.${code}`, {}, w) }))
  return ok({
    formula: {
      id: called.tag === 'own' ? null : called.id,
      ...{ name: called.name, role: called.role, tag: called.tag, source: called.source },
    },
    volume_ml: volume,
    water: {
      ...{ first_ml: water, low_c: temperature.low, high_c: temperature.high },
      ...{ source: temperature.source, cold: temperature.cold },
    },
    lines: sheet.lines.map((_, i) => lineOf(mixed.value, i, w)),
    doubts,
    sentences: formulaSentences(mixed.value, doubts, w),
    working: formulaWorking(mixed.value, w),
  })
}

function lineOf({ swaps, sheet, weighings }: MixedFormula, place: number, w: Writer): FormulaAnswer['lines'][number] {
  const line = sheet.lines[place] as MixingSheet['lines'][number]
  const swap = swaps.find(({ have }) => have === line.salt)
  const weighing = weighings[place]
  return {
    salt: line.salt,
    ...{ name: line.name, grams: line.grams, ml: line.millilitres, percent: line.percent },
    called_for:
      swap === undefined
        ? null
        : {
            ...{ salt: swap.wanted, grams: calledGrams(swap, sheet.volume) },
            ...{ factor: swap.substitution.factor, source: swap.substitution.source },
            kind: swap.substitution.kind === 'published' ? 'published' : 'hydrate',
          },
    solution:
      weighing?.by === 'solution'
        ? {
            ...{ percent: weighing.percent, measured_ml: weighing.measured },
            ...{ grams: weighing.stock.grams, made_up_to_ml: weighing.stock.volume },
          }
        : null,
    cautions: line.cautions.map((code) => ({ code, sentence: say(`formula.caution.${code}`, {}, w) })),
  }
}
