import { celsius, type Grams, type Millilitres } from '../../kernel/index.js'
import type { Weighing } from '../../science/index.js'
import { say, type Writer } from '../../words/index.js'
import { calledGrams, type MixedFormula, nameOf } from './formula-mixed.js'

/** What is done, in its order: water, each addition with its cautions below it, topping up; then what is doubtful. */
export function formulaSentences(
  mixed: MixedFormula,
  doubts: readonly { readonly sentence: string }[],
  w: Writer,
): string[] {
  const { called, sheet } = mixed
  const { volume, water, temperature, lines } = sheet
  const warmth = { water, low: celsius(temperature.low), high: celsius(temperature.high) }
  return [
    say('formula.head', { name: called.name, volume }, w),
    say(`formula.tag.${called.tag}`, { source: called.source }, w),
    say(temperature.cold ? 'formula.water-cold' : 'formula.water', warmth, w),
    ...lines.flatMap((_, place) => lineSays(mixed, place, w)),
    ...(lines.length > 1 ? [say('formula.each-dissolved', {}, w)] : []),
    say('formula.top-up', { volume }, w),
    ...doubts.map(({ sentence }) => sentence),
  ]
}

function lineSays(mixed: MixedFormula, place: number, w: Writer): string[] {
  const { swaps, sheet, weighings } = mixed
  const line = sheet.lines[place] as (typeof sheet.lines)[number]
  const swap = swaps.find(({ have }) => have === line.salt)
  const companionOf = swaps.find(({ substitution }) => substitution.companion?.salt === line.name)
  const { name } = line
  const said =
    line.grams === null
      ? say(
          'formula.liquid',
          { place: place + 1, amount: line.millilitres as Millilitres, name, percent: line.percent },
          w,
        )
      : say(
          'formula.line',
          {
            ...{ place: place + 1, amount: line.grams, name },
            wanted: swap === undefined ? null : nameOf(swap.wanted),
            called: swap === undefined ? line.grams : calledGrams(swap, sheet.volume),
          },
          w,
        )
  const below = [
    ...solutionSays(weighings[place] ?? null, w),
    ...(companionOf?.substitution.companion
      ? [
          say(
            'formula.companion',
            { wanted: nameOf(companionOf.wanted), why: companionOf.substitution.companion.why },
            w,
          ),
        ]
      : []),
    // Said once for all of them at the end.
    ...line.cautions
      .filter((code) => code !== 'dissolve-before-next')
      .map((code) => say(`formula.caution.${code}`, {}, w)),
  ]
  return [said, ...below.map((sentence) => `   ${sentence}`)]
}

function solutionSays(weighing: Weighing | null, w: Writer): string[] {
  if (weighing?.by !== 'solution') return []
  const { percent, measured, stock, keeps } = weighing
  const values: { measured: Millilitres; percent: number; grams: Grams; volume: Millilitres; keeps: boolean } = {
    ...{ measured, percent, keeps },
    ...stock,
  }
  return [say('formula.solution', values, w)]
}
