import { expectOk, type Grams, type Millilitres } from '../../kernel/index.js'
import { molarMass, SALTS, type Swap } from '../../science/index.js'
import { say, type WorkingLine, type Writer } from '../../words/index.js'
import { calledGrams, type MixedFormula, nameOf } from './formula-mixed.js'

/** How each amount came about, each number with its source. */
export function formulaWorking(mixed: MixedFormula, w: Writer): WorkingLine[] {
  const { called, sheet, swaps, weighings, step, question } = mixed
  const { volume, water, temperature } = sheet
  const figures = say('formula.source.figures', { tag: called.tag, source: called.source }, w)
  const stated = called.additions.map(({ salt, gramsPerLitre: each, millilitresPerLitre: liquid = 0 }) => ({
    line:
      each === undefined
        ? say(
            'formula.work.liquid',
            { name: nameOf(salt), each: liquid, volume, amount: ((liquid * volume) / 1000) as Millilitres },
            w,
          )
        : say('formula.work.mass', { name: nameOf(salt), each, volume, amount: ((each * volume) / 1000) as Grams }, w),
    source: figures,
  }))
  const byScale = weighings.some((weighing) => weighing?.by === 'solution')
  return [
    ...allOf(mixed, w),
    ...stated,
    ...swaps.flatMap((swap) => swapWork(swap, volume, w)),
    ...(byScale
      ? [
          {
            line: say('formula.work.scale', { step, least: 20 * step }, w),
            source: say(
              question.scale_step_g === undefined ? 'formula.source.scale-assumed' : 'formula.source.scale-stated',
              {},
              w,
            ),
          },
        ]
      : []),
    ...solutions(mixed, w),
    {
      line: say('formula.work.water', { part: called.waterFirst, volume, water }, w),
      source: figures,
    },
    {
      line: say('formula.work.warmth', { low: temperature.low, high: temperature.high }, w),
      source: say('formula.source.of', { source: temperature.source }, w),
    },
  ]
}

/** Why it is so much of it, where all of one salt is to be used. */
function allOf({ question: { all_of }, sheet }: MixedFormula, w: Writer): WorkingLine[] {
  if (all_of === undefined) return []
  const each = (1000 * all_of.grams) / sheet.volume
  return [
    {
      line: say('formula.work.all-of', { amount: all_of.grams, each, volume: sheet.volume }, w),
      source: say('formula.source.stated', {}, w),
    },
  ]
}

const massOf = (id: string): number => {
  const salt = SALTS.find((one) => one.id === id)
  if (salt === undefined) throw new Error(`The table of salts has no ${id}.`)
  return expectOk(molarMass(salt.formula))
}

function swapWork(swap: Swap, volume: Millilitres, w: Writer): WorkingLine[] {
  const { wanted, have, substitution } = swap
  const called = calledGrams(swap, volume)
  const amount = (called * substitution.factor) as Grams
  const [molesOfWanted, molesOfHave] = [massOf(wanted), massOf(have)]
  const byMoles = Math.abs(substitution.factor / (molesOfHave / molesOfWanted) - 1) < 1e-9
  const weights = say('formula.source.weights', {}, w)
  const source =
    substitution.kind === 'published' ? say('formula.source.of', { source: substitution.source }, w) : weights
  const line = byMoles
    ? say('formula.work.moles', { called, have: molesOfHave, wanted: molesOfWanted, amount }, w)
    : say('formula.work.factor', { called, factor: substitution.factor, amount }, w)
  const { companion } = substitution
  if (companion === null) return [{ line, source }]
  const beside = ((companion.amount * volume) / 1000) as Grams
  const partner = SALTS.find(({ name }) => name === companion.salt)?.id ?? have
  return [
    { line, source },
    {
      line: say('formula.work.moles', { called, have: massOf(partner), wanted: molesOfWanted, amount: beside }, w),
      source: weights,
    },
  ]
}

const solutions = ({ sheet, weighings }: MixedFormula, w: Writer): WorkingLine[] =>
  weighings.flatMap((weighing, i) => {
    const amount = sheet.lines[i]?.grams
    if (weighing?.by !== 'solution' || !amount) return []
    const { percent, measured } = weighing
    return [
      {
        line: say('formula.work.solution', { amount, percent, measured }, w),
        source: say('formula.source.percent', {}, w),
      },
    ]
  })
