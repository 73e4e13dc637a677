import type { Celsius, Seconds } from '../kernel/index.js'
import { say } from './say.js'
import type { Writer } from './writer.js'

/**
 * The answer to "how long at this temperature" as the science gives it, seen from here only by shape
 * (this folder knows the kernel alone).
 */
export interface Developed {
  readonly temperature: Celsius
  readonly time: Seconds
  readonly reference: { readonly temperature: Celsius; readonly time: Seconds }
  readonly position: 'sheet-point' | 'between' | 'beyond-cold' | 'beyond-warm' | 'fixed'
  readonly factors: readonly {
    readonly name: 'temperature' | 'agitation' | 'pre-wet' | 'repeat-use' | 'push-pull' | 'own-strips' | 'other'
    readonly factor: number
    readonly origin: 'measured' | 'sheet' | 'law' | 'practice' | 'assumption'
    readonly note?: string
  }[]
  readonly band: { readonly bySheetAndLaw: Seconds; readonly byThermometer: Seconds; readonly thermometerError: number }
  readonly warnings: readonly DevelopedWarning[]
}

export type DevelopedWarning =
  | { readonly code: 'beyond-sheet'; readonly by: number; readonly from: Celsius; readonly to: Celsius }
  | {
      readonly code: 'assumed-coefficient'
      readonly value: number
      readonly low: number
      readonly high: number
      readonly shortest: Seconds
      readonly longest: Seconds
    }
  | { readonly code: 'short-time'; readonly time: Seconds; readonly limit: Seconds }
  | { readonly code: 'outside-practice'; readonly from: Celsius; readonly to: Celsius }
  | { readonly code: 'colour-cast-likely'; readonly from: Celsius; readonly to: Celsius }
  | { readonly code: 'single-bath-sheet-only' }

type OriginName = Developed['factors'][number]['origin']

/** What the number rests on, for the lines that explain it. */
export interface Grounds {
  readonly kind: 'ordinary' | 'single-bath' | 'fixed'
  readonly law: 'exponential' | 'arrhenius'
  readonly coefficient: { readonly value: number; readonly origin: OriginName }
  /** kJ/mol */
  readonly activationEnergy: number | null
  readonly sourceWords: string
}

/** One line of the working, and where its number comes from. */
export interface WorkingLine {
  readonly line: string
  readonly source: string
}

/** “Develop 8:15 in place of 9:30 at 20.0 °C”: the answer in two parts, so that the first can stand out. */
export function answerInParts(answer: Developed, writer: Writer): { lead: string; rest: string } {
  const lead = say('time.develop', { time: answer.time }, writer)
  if (answer.position === 'fixed') return { lead, rest: say('time.fixed', answer.reference, writer) }
  const unmoved = answer.time === answer.reference.time && answer.temperature === answer.reference.temperature
  return {
    lead,
    rest: unmoved ? say('time.as-the-sheet-says', {}, writer) : say('time.in-place-of', answer.reference, writer),
  }
}

export function answerSentence(answer: Developed, writer: Writer): string {
  const { lead, rest } = answerInParts(answer, writer)
  return `${lead} ${rest}.`
}

export const bandSentence = (answer: Developed, writer: Writer): string =>
  answer.position === 'fixed'
    ? say('time.band-fixed', {}, writer)
    : say(
        'time.band',
        {
          bySheet: answer.band.bySheetAndLaw,
          byThermometer: answer.band.byThermometer,
          error: answer.band.thermometerError,
        },
        writer,
      )

export function warningSentence(warning: DevelopedWarning, writer: Writer): string {
  switch (warning.code) {
    case 'beyond-sheet':
      return warning.from === warning.to
        ? say('time.warning.beyond-single', warning, writer)
        : say('time.warning.beyond-sheet', warning, writer)
    case 'assumed-coefficient':
      return say('time.warning.assumed-coefficient', warning, writer)
    case 'short-time':
      return say('time.warning.short-time', warning, writer)
    case 'outside-practice':
      return say('time.warning.outside-practice', warning, writer)
    case 'colour-cast-likely':
      return say('time.warning.colour-cast-likely', warning, writer)
    case 'single-bath-sheet-only':
      return say('time.warning.single-bath-sheet-only', {}, writer)
  }
}

/** The law behind the number, in words. */
export function lawSentence(grounds: Grounds, writer: Writer): string {
  if (grounds.kind === 'fixed') return say('time.law.fixed', {}, writer)
  if (grounds.kind === 'single-bath') return say('time.law.single-bath', {}, writer)
  return grounds.law === 'arrhenius' && grounds.activationEnergy !== null
    ? say('time.law.arrhenius', { energy: grounds.activationEnergy }, writer)
    : say('time.law.exponential', { coefficient: grounds.coefficient.value }, writer)
}

/** The working, line by line, as a teacher would put it on a board: start, every factor, result. */
export function working(answer: Developed, grounds: Grounds, writer: Writer): WorkingLine[] {
  const origin = (name: OriginName) => say(`time.origin.${name}`, {}, writer)
  const start: WorkingLine = {
    line: say('time.working.reference', answer.reference, writer),
    source: grounds.sourceWords === '' ? origin('sheet') : grounds.sourceWords,
  }
  // At the sheet's own temperature there is nothing to multiply by, and a line saying so would be noise.
  const told = answer.factors.filter(
    ({ name }) => name !== 'temperature' || answer.temperature !== answer.reference.temperature,
  )
  const factors = told.map((factor): WorkingLine => {
    const name =
      factor.name === 'temperature'
        ? say('time.factor.temperature', answer, writer)
        : (factor.note ?? say(`time.factor.${factor.name}`, {}, writer))
    const place = say(`time.position.${answer.position}`, {}, writer)
    const law =
      answer.position === 'beyond-cold' || answer.position === 'beyond-warm' ? `; ${lawSentence(grounds, writer)}` : ''
    const source = factor.name === 'temperature' ? `${place}${law}` : origin(factor.origin)
    return { line: say('time.working.factor', { factor: factor.factor, name }, writer), source }
  })
  return [start, ...factors, { line: say('time.working.result', answer, writer), source: lawSentence(grounds, writer) }]
}
