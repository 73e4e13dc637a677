import { all, failed, ok, type Result } from '../../kernel/index.js'
import {
  calibrationOf,
  NOMINAL_TABLETS,
  nominalDensities,
  type StripInput,
  stepsBehindTablet,
} from '../../science/index.js'
import type { StripQuestion } from '../../wire/index.js'
import { isJson, jsonIn } from '../asked.js'
import { numbersIn, rowsOf } from '../lists.js'
import { numbersOf, pairOf } from '../options.js'
import { usage } from '../output.js'

/** How a strip is stated on the command line. */
export interface StripOptions {
  readonly tablet?: keyof typeof NOMINAL_TABLETS
  readonly lamp?: string
  readonly base?: string
  readonly known?: readonly string[]
  readonly readingError?: string
  readonly scatter?: string
}

/** What of a strip options say: everything but its densities. */
export function stripBy(options: StripOptions): Result<Omit<StripQuestion, 'densities' | 'steps'>> {
  const numbers = numbersOf(options, ['lamp', 'base', 'readingError', 'scatter'])
  if (!numbers.ok) return numbers
  const known = all((options.known ?? []).map((text) => pairOf('known', text, '0.085=0.10')))
  if (!known.ok) return known
  const { lamp, base, readingError, scatter } = numbers.value
  return ok({
    exposure: 'relative',
    known: known.value.map(([read, truth]) => ({ read, true: truth })),
    ...(options.tablet === undefined ? {} : { tablet: options.tablet }),
    ...(lamp === undefined ? {} : { lamp_log_exposure: lamp }),
    ...(base === undefined ? {} : { base_fog: { density: base, readings: 1 } }),
    ...(readingError === undefined ? {} : { reading_error: readingError }),
    ...(scatter === undefined ? {} : { strip_scatter: scatter }),
  })
}

/**
 * A strip out of JSON or lines. Lines of one number are densities in the order of the tablet's steps. Lines of two
 * are the tablet's density and the film's; with a heading that says exposure, the log exposure and the density.
 */
export async function stripAsked(text: string, options: StripOptions): Promise<Result<StripQuestion>> {
  if (isJson(text)) return jsonIn(text, 'the strip', 'strip-question')
  const stated = stripBy(options)
  if (!stated.ok) return stated
  const { heading, rows } = rowsOf(text)
  const numbers = all(rows.map((row) => numbersIn(row, '0.35 1.21')))
  if (!numbers.ok) return numbers
  const columns = numbers.value[0]?.length ?? 0
  if (columns > 2 || numbers.value.some((row) => row.length !== columns))
    return failed(usage('A strip has one step a line: its density, or the tablet’s density there and the film’s.'))
  const densities = numbers.value.map((row) => row.at(-1) as number)
  if (columns === 1) return ok({ ...stated.value, densities })
  const first = numbers.value.map((row) => row[0] as number)
  if (heading === null || !/exposure|lux|log/i.test(heading)) return ok({ ...stated.value, tablet: first, densities })
  const steps = densities.map((density, i) => ({ log_exposure: first[i] as number, density }))
  return ok({ ...stated.value, steps, exposure: /lux/i.test(heading) ? 'lux-seconds' : 'relative' })
}

/** A strip as the science takes it: densities put right by known ones, exposures behind the tablet. */
export function stripInput(question: StripQuestion): Result<StripInput> {
  const read = question.steps?.map(({ density }) => density) ?? question.densities ?? []
  const corrected = correctedBy(question, read)
  if (!corrected.ok) return corrected
  const { densities, baseFog, readingError } = corrected.value
  const steps = exposed(question, densities)
  if (!steps.ok) return steps
  return ok({
    steps: steps.value,
    exposure: question.steps || question.lamp_log_exposure === undefined ? question.exposure : 'lux-seconds',
    ...(question.base_fog && baseFog !== null ? { baseFog: { ...question.base_fog, density: baseFog } } : {}),
    ...(readingError === undefined ? {} : { readingError }),
    ...(question.strip_scatter === undefined ? {} : { stripScatter: question.strip_scatter }),
  })
}

function exposed(question: StripQuestion, densities: readonly number[]): Result<StripInput['steps']> {
  if (question.steps)
    return ok(
      question.steps.map(({ log_exposure }, i) => ({ logExposure: log_exposure, density: densities[i] as number })),
    )
  const { tablet, lamp_log_exposure = 0 } = question
  if (tablet === undefined)
    return failed(usage('Say which tablet it was, like --tablet 21-step, or give its own densities beside the film’s.'))
  const behind = typeof tablet === 'string' ? nominalDensities(NOMINAL_TABLETS[tablet]) : tablet
  return stepsBehindTablet(lamp_log_exposure, behind, densities)
}

interface Corrected {
  readonly densities: readonly number[]
  readonly baseFog: number | null
  /** With known steps, the largest error that they leave on any reading. */
  readonly readingError: number | undefined
}

function correctedBy(question: StripQuestion, read: readonly number[]): Result<Corrected> {
  const base = question.base_fog?.density ?? null
  if (question.known.length === 0) return ok({ densities: read, baseFog: base, readingError: question.reading_error })
  const calibration = calibrationOf(question.known, question.reading_error)
  if (!calibration.ok) return calibration
  const found = all([...read, ...(base === null ? [] : [base])].map((one) => calibration.value.correct(one)))
  if (!found.ok) return found
  const densities = found.value.map(({ density }) => density)
  return ok({
    densities: densities.slice(0, read.length),
    baseFog: densities[read.length] ?? null,
    readingError: Math.max(...found.value.map(({ standardError }) => standardError)),
  })
}
