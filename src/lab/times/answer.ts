import { type Celsius, failed, ok, problem, type Result } from '../../kernel/index.js'
import {
  type DevelopingTime,
  developingTime,
  energyFromCoefficient,
  type Modifier,
  type TimeBasis,
} from '../../science/index.js'
import type { TimeAnswer } from '../../wire/index.js'
import { answerSentence, type Grounds, type Writer, warningSentence, working } from '../../words/index.js'
import { correctedReading } from '../kit/queries.js'
import type { Rooms } from '../store.js'
import type { TimeRecord } from './port.js'
import { basisOf } from './rules.js'

/** What may be asked of a kept time. */
export interface Question {
  readonly at: Celsius
  readonly thermometerError?: number
  readonly thermometerId?: string
  readonly modifiers: readonly Modifier[]
}

/** What the answers of a basis rest on. */
export function groundsOf(basis: TimeBasis, sourceWords: string): Grounds {
  const energy = energyFromCoefficient(basis.coefficient.value)
  return {
    kind: basis.kind,
    law: basis.law,
    coefficient: basis.coefficient,
    activationEnergy: energy.ok ? energy.value : null,
    sourceWords,
  }
}

/** The answer as it goes out, with its sentence and its working: one form for HTTP, `--json` and `--explain`. */
export const answerView = (
  answer: DevelopingTime,
  basis: TimeBasis,
  sourceWords: string,
  writer: Writer,
): TimeAnswer => ({
  temperature_c: answer.temperature,
  time_s: answer.time,
  reference: { temperature_c: answer.reference.temperature, time_s: answer.reference.time },
  position: answer.position,
  law: answer.law,
  factors: answer.factors.map((factor) => ({ ...factor })),
  band: {
    by_sheet_and_law_s: answer.band.bySheetAndLaw,
    by_thermometer_s: answer.band.byThermometer,
    thermometer_error_c: answer.band.thermometerError,
  },
  warnings: answer.warnings.map((warning) => ({ code: warning.code, sentence: warningSentence(warning, writer) })),
  sentence: answerSentence(answer, writer),
  working: working(answer, groundsOf(basis, sourceWords), writer),
})

/** The newest, standing revision of a developing time. */
export async function standingTime(rooms: Rooms, id: string): Promise<Result<TimeRecord>> {
  const record = await rooms.times.newest(id)
  if (record === null) return failed(problem('record.not-found', { what: 'developing time', id }))
  return record.removed ? failed(problem('record.removed', { what: 'developing time' })) : ok(record)
}

/** The developing time on a basis; the reading is corrected by what is known of its thermometer. */
export async function developingTimeOf(
  rooms: Rooms,
  basis: TimeBasis,
  question: Question,
): Promise<Result<DevelopingTime>> {
  const reading =
    question.thermometerId === undefined ? null : await correctedReading(rooms, question.thermometerId, question.at)
  if (reading !== null && !reading.ok) return reading
  // An error stated by the caller counts; else what the thermometer's checks leave open; else the usual half degree.
  const error = question.thermometerError ?? reading?.value.band
  return developingTime(basis, reading?.value.true ?? question.at, {
    modifiers: question.modifiers,
    ...(error === undefined ? {} : { thermometerError: error }),
  })
}

/** The developing time of a kept record, with its sentence and working. */
export async function answerTime(
  rooms: Rooms,
  id: string,
  question: Question,
  writer: Writer,
): Promise<Result<TimeAnswer>> {
  const record = await standingTime(rooms, id)
  if (!record.ok) return record
  const basis = basisOf(record.value)
  if (!basis.ok) return basis
  const answer = await developingTimeOf(rooms, basis.value, question)
  return answer.ok ? ok(answerView(answer.value, basis.value, record.value.sourceWords, writer)) : answer
}
