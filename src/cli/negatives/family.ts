import { all, failed, ok, type Result, readDuration, seconds } from '../../kernel/index.js'
import {
  answerOf,
  characteristicCurve,
  type FamilyAnswer,
  type FittedContrast,
  familyOf,
  fitContrast,
  type OwnTime,
  ownTime,
  type TimedCurve,
} from '../../science/index.js'
import type { ContrastQuestion } from '../../wire/index.js'
import { numbersIn, rowsOf } from '../lists.js'
import { typed, usage } from '../output.js'
import { type StripOptions, stripBy, stripInput } from './strip-asked.js'

type Strips = Pick<ContrastQuestion, 'contrasts' | 'strips'>

/** Rows of `4:00 0.50` or `4:00 0.50 0.01` are contrasts; a time with four numbers or more is a whole strip. */
export function stripsIn(text: string, options: StripOptions): Result<Strips> {
  const rows = all(rowsOf(text).rows.map(rowIn))
  if (!rows.ok) return rows
  const whole = rows.value.filter(({ numbers }) => numbers.length >= 4)
  if (whole.length === 0)
    return ok({
      contrasts: rows.value.map(({ time_s, numbers: [contrast = 0, standard_error = 0] }) => ({
        time_s,
        contrast,
        standard_error,
      })),
    })
  if (whole.length < rows.value.length)
    return failed(usage('Give either the contrast of every strip or the steps of every strip, not both.'))
  const stated = stripBy(options)
  if (!stated.ok) return stated
  // A scatter stated for the family is that of the law, and counts there.
  const { strip_scatter: _, ...strip } = stated.value
  return ok({ strips: whole.map(({ time_s, numbers }) => ({ time_s, strip: { ...strip, densities: numbers } })) })
}

function rowIn(row: string): Result<{ readonly time_s: number; readonly numbers: number[] }> {
  const [, clock, rest] = row.match(/^(\S+?)[,;\s]+(.*)$/) ?? []
  if (clock === undefined || rest === undefined)
    return failed(usage(`“${row}” is not a strip. Write its time and its contrast, like “4:00 0.50”.`))
  const time = typed(readDuration(clock, { what: 'a developing time' }))
  if (!time.ok) return time
  const numbers = numbersIn(rest, '4:00 0.50')
  if (!numbers.ok) return numbers
  const count = numbers.value.length
  return count === 3
    ? failed(usage(`“${row}” has three numbers: a contrast has one, or two with its error, and a strip four or more.`))
    : ok({ time_s: time.value, numbers: numbers.value })
}

/** The answer, with what strips alone can tell: their measure, fog and speed. */
export interface FamilyFound {
  readonly fitted: FittedContrast
  readonly time: OwnTime
  readonly strips: FamilyAnswer | null
}

/** Fits the law through contrasts or strips, and asks it for the wanted contrast. */
export function familyBy(question: ContrastQuestion): Result<FamilyFound> {
  const { contrasts, strips, wanted, measure, scatter } = question
  if ((contrasts === undefined) === (strips === undefined))
    return failed(usage('Give either the contrasts of the strips or their steps.'))
  if (contrasts !== undefined) {
    const points = contrasts.map((one) => ({
      time: seconds(one.time_s),
      contrast: one.contrast,
      standardError: one.standard_error,
    }))
    const fitted = fitContrast(points, scatter)
    if (!fitted.ok) return fitted
    const time = ownTime(fitted.value, wanted)
    return time.ok ? ok({ fitted: fitted.value, time: time.value, strips: null }) : time
  }
  const curves = all((strips ?? []).map(timedCurve))
  if (!curves.ok) return curves
  const family = familyOf(curves.value, measure, scatter)
  if (!family.ok) return family
  const answer = answerOf(family.value, wanted)
  if (!answer.ok) return answer
  return ok({ fitted: family.value.fitted, time: answer.value.time, strips: answer.value })
}

function timedCurve({ time_s, strip }: NonNullable<ContrastQuestion['strips']>[number]): Result<TimedCurve> {
  const input = stripInput(strip)
  if (!input.ok) return input
  const curve = characteristicCurve(input.value)
  return curve.ok ? ok({ time: seconds(time_s), curve: curve.value }) : curve
}
