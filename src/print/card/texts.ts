import { type Celsius, expectOk, type UnitSystem, writeTemperature } from '../../kernel/index.js'
import { type DevelopingTime, developingTime, fitLaw, type Modifier } from '../../science/index.js'
import { answerInParts, bandSentence, lawSentence, say, warningSentence, writerFor } from '../../words/index.js'
import { tableRows } from './rows.js'
import type { TimeCardInput } from './time-card.js'

/** Everything a card says, before anything is placed. */
export interface CardTexts {
  readonly title: string
  readonly film: string
  readonly developer: string
  readonly lead: string
  readonly rest: string
  readonly band: string
  readonly columns: readonly [string, string, string]
  readonly rows: (most: number) => { cells: readonly [string, string, string]; asked: boolean }[]
  readonly behind: { readonly heading: string; readonly source: string; readonly others: readonly string[] }
  readonly care: { readonly heading: string; readonly sentences: readonly string[] }
  readonly notes: string
  readonly foot: string
}

export function cardTexts(input: TimeCardInput): CardTexts {
  const { basis, film, developer, units } = input
  const writer = writerFor(units)
  const answer = input.asked ?? expectOk(developingTime(basis, basis.reference.temperature))
  const { lead, rest } = answerInParts(answer, writer)
  return {
    title: say('card.title', { film, developer }, writer),
    film: say('card.film', input, writer),
    developer: say('card.developer', input, writer),
    lead,
    rest: answer.position === 'fixed' ? rest : say('card.at', { temperature: answer.temperature, rest }, writer),
    band: bandSentence(answer, writer),
    columns: [
      say('card.column.temperature', {}, writer),
      say('card.column.time', {}, writer),
      say('card.column.origin', {}, writer),
    ],
    rows: (most) => rowTexts(input, answer, most),
    behind: {
      heading: say('card.behind', {}, writer),
      source: say('card.source', { words: input.sourceWords }, writer),
      others: groundsOf(input, answer),
    },
    care: {
      heading: say('card.care', {}, writer),
      sentences: answer.warnings.map((warning) => warningSentence(warning, writer)),
    },
    notes: say('card.notes', {}, writer),
    foot: say('card.foot', { saved: input.savedAt, printed: input.today }, writer),
  }
}

/** The factors of the answer beside temperature, to be carried into the table. */
const modifiersOf = (answer: DevelopingTime): Modifier[] =>
  answer.factors.flatMap(({ name, factor, origin }) => (name === 'temperature' ? [] : [{ name, factor, origin }]))

function rowTexts(input: TimeCardInput, answer: DevelopingTime, most: number) {
  const rows = tableRows({ ...input, modifiers: modifiersOf(answer), asked: answer.temperature, most })
  const digits = rows.every(({ temperature }) => isWhole(temperature, input.units)) ? 0 : 1
  const writer = writerFor(input.units)
  return rows.map(({ temperature, time, position }) => {
    const origin =
      position === 'sheet-point' || position === 'fixed'
        ? 'sheet'
        : position === 'between'
          ? input.basis.kind === 'single-bath'
            ? 'between'
            : 'law'
          : 'beyond'
    return {
      cells: [
        writeTemperature(temperature, input.units, digits),
        writer.time(time),
        say(`card.row.${origin}`, {}, writer),
      ] as const,
      asked: Math.abs(temperature - answer.temperature) < 0.005,
    }
  })
}

function isWhole(temperature: Celsius, units: UnitSystem): boolean {
  const degree = units === 'us' ? temperature * 1.8 + 32 : temperature
  return Math.abs(degree - Math.round(degree)) < 0.05
}

/** What the number rests on beside the words of its source. */
function groundsOf({ basis, units, sourceWords }: TimeCardInput, answer: DevelopingTime): string[] {
  const writer = writerFor(units)
  const activationEnergy = basis.points.length > 1 ? fitLaw(basis, basis.law).activationEnergy : null
  const law = lawSentence({ ...basis, activationEnergy, sourceWords }, writer)
  const modified = modifiersOf(answer).length > 0
  const unmoved = !modified && answer.time === answer.reference.time
  const steps = answer.factors.map(({ name, factor, note }) => {
    const words =
      name === 'temperature'
        ? say('time.factor.temperature', answer, writer)
        : (note ?? say(`time.factor.${name}`, {}, writer))
    return say('time.working.factor', { factor, name: words }, writer)
  })
  return [
    say('card.law', { law }, writer),
    ...(unmoved ? [] : [say('card.working', { start: answer.reference.time, steps, time: answer.time }, writer)]),
    ...(modified ? [say('card.modified', {}, writer)] : []),
  ]
}
