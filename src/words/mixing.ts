import type { Celsius, Grams, Millilitres } from '../kernel/index.js'
import type { deskWords } from './catalogue/desk.js'
import { say } from './say.js'
import type { Writer } from './writer.js'

/** A mixing sheet as planning has it, seen from here only by shape (this folder knows the kernel alone). */
type Code<P extends string> = Extract<keyof typeof deskWords, `${P}${string}`> extends `${P}${infer R}` ? R : never
type Water = 'tap' | 'filtered' | 'distilled'
type Unit = 'ml' | 'g'
export type MixStepShape =
  | {
      readonly do: 'water'
      readonly amount: Millilitres
      readonly low: Celsius
      readonly high: Celsius
      readonly kind: Water
      readonly cold: boolean
      readonly taps: { readonly hot: Millilitres; readonly cold: Millilitres } | null
    }
  | {
      readonly do: 'add'
      readonly name: string
      readonly amount: number | null
      readonly unit: Unit
      readonly percent: number | null
      readonly swap: { readonly wanted: string } | null
      readonly weighing:
        | { readonly by: 'scale' }
        | {
            readonly by: 'solution'
            readonly percent: number
            readonly stock: { readonly grams: Grams; readonly volume: Millilitres }
            readonly measured: Millilitres
            readonly keeps: boolean
          }
        | null
      readonly cautions: readonly (Code<'mix.caution.'> | Code<'formula.caution.'>)[]
    }
  | { readonly do: 'dissolve' | 'label' }
  | { readonly do: 'top-up'; readonly to: Millilitres; readonly kind: Water }
  | { readonly do: 'stand'; readonly hours: number }

export type MixDoubtShape =
  | {
      readonly of: 'not-enough'
      readonly name: string
      readonly wanted: number
      readonly held: number
      readonly unit: Unit
    }
  | { readonly of: 'none-on-hand'; readonly name: string }
  | { readonly of: 'past-date'; readonly name: string; readonly useBy: string }
  | {
      readonly of: 'under-floor'
      readonly rolls: number
      readonly carries: number
      readonly held: Millilitres
      readonly needed: Millilitres
      readonly volumeNeeded: Millilitres
    }
  | { readonly of: 'not-weighable' | 'tap-water'; readonly sentence: string }
  | { readonly of: 'too-little-to-measure'; readonly name: string; readonly amount: number }

/** What a step says, and below it what belongs to it: taps, what it stands for, how it is weighed, cautions. */
export interface MixLine {
  readonly says: string
  readonly below: readonly string[]
}

type CautionCode = Extract<MixStepShape, { do: 'add' }>['cautions'][number]
const cautionSays = (code: CautionCode, w: Writer): string => {
  switch (code) {
    case 'never-with-acid-or-fixer':
    case 'away-from-other-baths':
    case 'irritates':
    case 'poisonous':
    case 'no-flame':
      return say(`mix.caution.${code}`, {}, w)
    default:
      return say(`formula.caution.${code}`, {}, w)
  }
}

/** The numbered steps of a mixing sheet in words; `nameOf` gives the name of a salt by its id. */
export const mixLines = (steps: readonly MixStepShape[], nameOf: (salt: string) => string, w: Writer): MixLine[] =>
  steps.map((step) => lineOf(step, nameOf, w))

function lineOf(step: MixStepShape, nameOf: (salt: string) => string, w: Writer): MixLine {
  switch (step.do) {
    case 'water':
      return { says: say('mix.water', step, w), below: step.taps === null ? [] : [say('mix.taps', step.taps, w)] }
    case 'add':
      return addLine(step, nameOf, w)
    case 'top-up':
      return { says: say('mix.top-up', step, w), below: [] }
    case 'stand':
      return { says: say('mix.stand', step, w), below: [] }
    default:
      return { says: say(`mix.${step.do}`, {}, w), below: [] }
  }
}

function addLine(step: Extract<MixStepShape, { do: 'add' }>, nameOf: (salt: string) => string, w: Writer): MixLine {
  const { name, amount, unit, percent, swap, weighing, cautions } = step
  const solution = weighing?.by === 'solution' ? [say('formula.solution', { ...weighing, ...weighing.stock }, w)] : []
  return {
    says: amount === null ? say('mix.add-packet', { name }, w) : say('mix.add', { amount, unit, name, percent }, w),
    below: [
      ...(swap === null ? [] : [say('mix.stands-for', { wanted: nameOf(swap.wanted) }, w)]),
      ...solution,
      ...cautions.map((code) => cautionSays(code, w)),
    ],
  }
}

/** What is said of a mix before it is begun. */
export function mixDoubt(doubt: MixDoubtShape, w: Writer): string {
  switch (doubt.of) {
    case 'not-weighable':
    case 'tap-water':
      return doubt.sentence
    case 'not-enough':
      return say('mix.doubt.not-enough', doubt, w)
    case 'none-on-hand':
      return say('mix.doubt.none-on-hand', doubt, w)
    case 'past-date':
      return say('mix.doubt.past-date', doubt, w)
    case 'under-floor':
      return say('mix.doubt.under-floor', doubt, w)
    case 'too-little-to-measure':
      return say('mix.doubt.too-little-to-measure', doubt, w)
  }
}
