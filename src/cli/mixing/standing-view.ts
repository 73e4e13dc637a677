import { type Celsius, failed, ok, type Result, type Seconds, seconds } from '../../kernel/index.js'
import {
  constantFrom,
  guessConstant,
  meanOver,
  reachesAt,
  readAgainAfter,
  type Standing,
  standsAt,
  startForMean,
  type TimeConstant,
} from '../../science/index.js'
import type { TemperAnswer, TemperQuestion } from '../../wire/index.js'
import { say, type Writer } from '../../words/index.js'
import { usage } from '../output.js'

type Asked = Extract<TemperQuestion, { ask: 'standing' }>
type Answer = Extract<TemperAnswer, { ask: 'standing' }>

/** Where something that stands will be, and when. What it starts from is stated, or is the last reading. */
export function standingView(question: Asked, w: Writer): Result<TemperAnswer> {
  const constant = constantOf(question, w)
  if (!constant.ok) return constant
  const from = question.from_c ?? question.readings?.at(-1)?.temperature_c ?? null
  const standing = from === null ? null : { from, around: question.around_c, constant: constant.value.value }
  const course = standing === null ? ok(NO_COURSE) : courseOf(standing, question)
  if (!course.ok) return course
  const start = startOf(question, constant.value.value)
  if (!start.ok) return start
  const { value, low, high, origin, source } = constant.value
  const answer = { from_c: from, ...course.value, start_for_mean_c: start.value }
  return ok({
    ask: 'standing',
    constant: { value_s: value, low_s: low, high_s: high, origin, source },
    ...answer,
    sentences: [constantSays(constant.value, w), ...sentencesOf(question, answer, w)],
    working: [
      { line: say('temper.work.constant', { value }, w), source },
      ...(from === null
        ? []
        : [
            {
              line: say('temper.work.law', { from, around: question.around_c }, w),
              source: say('temper.source.newton', {}, w),
            },
          ]),
    ],
  })
}

/** By readings, as stated, or guessed, in that order. */
function constantOf(
  { around_c, from_c, wanted_c, after_s, constant_s, readings, reading_error_c, vessel }: Asked,
  w: Writer,
): Result<TimeConstant> {
  if (constant_s !== undefined) {
    const nothingAsked =
      from_c === undefined && readings === undefined && !(wanted_c !== undefined && after_s !== undefined)
    if (nothingAsked) return failed(usage('Say what it starts from, such as --from 24C.'))
    // Its range is checked by what is worked out with it.
    const value = constant_s as Seconds
    return ok({ value, low: null, high: null, origin: 'sheet', source: say('temper.source.stated', {}, w) })
  }
  if (readings !== undefined)
    return constantFrom(
      readings.map(({ at_s, temperature_c }) => ({ at: at_s, temperature: temperature_c })),
      around_c,
      reading_error_c,
    )
  if (vessel !== undefined) return guessConstant(vessel.volume_ml, vessel.material, vessel.stands_in)
  return failed(usage('Give a time constant, two readings or more, or a volume with its material.'))
}

type Course = Pick<Answer, 'then_c' | 'mean_c' | 'reached_after_s' | 'read_again_after_s'>
const NO_COURSE: Course = { then_c: null, mean_c: null, reached_after_s: null, read_again_after_s: null }

function courseOf(standing: Standing, { after_s, wanted_c }: Asked): Result<Course> {
  const again = readAgainAfter(standing)
  if (!again.ok) return again
  const then = after_s === undefined ? null : standsAt(standing, after_s)
  if (then?.ok === false) return then
  const mean = after_s === undefined ? null : meanOver(standing, after_s)
  if (mean?.ok === false) return mean
  // With a time the wanted temperature is asked for as a mean; without one, when it comes.
  const reached = wanted_c === undefined || after_s !== undefined ? null : reachesAt(standing, wanted_c)
  if (reached?.ok === false) return reached
  return ok({
    then_c: then?.value ?? null,
    mean_c: mean?.value ?? null,
    reached_after_s: reached?.value ?? null,
    read_again_after_s: again.value,
  })
}

function startOf({ around_c, after_s, wanted_c }: Asked, constant: Seconds): Result<Celsius | null> {
  if (wanted_c === undefined || after_s === undefined) return ok(null)
  return startForMean(wanted_c, around_c, constant, after_s)
}

function constantSays({ value, low, high, origin }: TimeConstant, w: Writer): string {
  if (low === null) return say('temper.constant-stated', { value }, w)
  return origin === 'assumption'
    ? say('temper.constant-guess', { value, low, high: high as Seconds }, w)
    : say('temper.constant', { value, low, high }, w)
}

function sentencesOf(
  { after_s, wanted_c }: Asked,
  found: Course & Pick<Answer, 'from_c' | 'start_for_mean_c'>,
  w: Writer,
): string[] {
  const { from_c, then_c, mean_c, reached_after_s, read_again_after_s, start_for_mean_c } = found
  const sentences: string[] = []
  if (then_c !== null && mean_c !== null)
    sentences.push(say('temper.then', { after: after_s as Seconds, at: then_c as Celsius, mean: mean_c as Celsius }, w))
  if (reached_after_s !== null)
    sentences.push(say('temper.reached', { wanted: wanted_c as Celsius, after: seconds(reached_after_s) }, w))
  if (start_for_mean_c !== null)
    sentences.push(
      say(
        'temper.start',
        { start: start_for_mean_c as Celsius, wanted: wanted_c as Celsius, time: after_s as Seconds },
        w,
      ),
    )
  if (from_c !== null)
    sentences.push(
      read_again_after_s === null
        ? say('temper.steady', {}, w)
        : say('temper.read-again', { after: seconds(read_again_after_s) }, w),
    )
  return sentences
}
