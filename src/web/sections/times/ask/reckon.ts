import type { Celsius, Choice, Problem, Reading } from '../../../../kernel/index.js'
import {
  type CorrectedReading,
  type DevelopingTime,
  developingTime,
  effectOfUncorrectedError,
  type TimeBasis,
  type UncorrectedEffect,
} from '../../../../science/index.js'
import type { ThermometerRecord } from '../../../../wire/index.js'
import { correctionFor } from '../../../shared/figures/index.js'

/** The thermometer named with a reading, and what its error would have done. */
export interface Corrected {
  readonly thermometer: ThermometerRecord
  readonly reading: CorrectedReading
  readonly effect: UncorrectedEffect | null
}
export type Outcome =
  | { readonly kind: 'answer'; readonly answer: DevelopingTime; readonly corrected: Corrected | null }
  | { readonly kind: 'asked'; readonly problem: Problem; readonly choices: readonly Choice<Celsius>[] }
  | { readonly kind: 'refused'; readonly sentence: string }

interface Question {
  readonly basis: TimeBasis
  readonly temperature: Reading<Celsius>
  readonly thermometer: ThermometerRecord | null
  readonly factor: Reading<number> | null
}

const refused = ({ sentence }: Problem): Outcome => ({ kind: 'refused', sentence })

/** The answer to the whole question, or the sentence about the part of it that stands in the way. */
export function reckon({ basis, temperature, thermometer, factor }: Question): Outcome {
  if (temperature.kind === 'asked') return { kind: 'asked', problem: temperature.problem, choices: temperature.choices }
  if (temperature.kind === 'refused') return refused(temperature.problem)
  if (factor !== null && factor.kind !== 'read') return refused(factor.problem)
  const correction = thermometer === null ? null : correctionFor(thermometer)
  if (correction !== null && !correction.ok) return refused(correction.problem)
  const reading = correction?.value.at(temperature.value) ?? null
  const answer = developingTime(basis, reading?.true ?? temperature.value, {
    modifiers: factor === null ? [] : [{ name: 'other', factor: factor.value, origin: 'assumption' }],
    ...(reading === null ? {} : { thermometerError: reading.band }),
  })
  if (!answer.ok) return refused(answer.problem)
  if (thermometer === null || reading === null) return { kind: 'answer', answer: answer.value, corrected: null }
  const effect = effectOfUncorrectedError(basis, reading.read, reading.true)
  return {
    kind: 'answer',
    answer: answer.value,
    corrected: { thermometer, reading, effect: effect.ok ? effect.value : null },
  }
}
