import type { UnitSystem } from '../quantities/units.js'
import type { Registered } from './registry/registered.js'
import { sinkProblems } from './registry/sink.js'
import type { ProblemCode } from './registry.js'

/** A temperature in a problem, written in the units of whoever reads it. */
export interface QuotedTemperature {
  readonly celsius: number
}
/** A difference of temperatures. */
export interface QuotedDegrees {
  readonly degrees: number
}

/** Values that a sentence may quote. They are shown to people and sent as JSON. */
export type ProblemDetails = Readonly<
  Record<string, string | number | boolean | readonly string[] | QuotedTemperature | QuotedDegrees>
>

/** An expected failure as a value: a registered code, the quoted values, the finished sentence. */
export interface Problem {
  readonly code: ProblemCode
  readonly details: ProblemDetails
  /** In metric units; {@link sentenceIn} gives it in others. */
  readonly sentence: string
  /** The field of the request that it is about, when there is one: `points[2].time`. */
  readonly field?: string
}

/** Makes a problem from its registered code; the sentence is filled from `details`. */
export function problem(code: ProblemCode, details: ProblemDetails = {}, field?: string): Problem {
  return { code, details, sentence: filled(code, details, 'metric'), ...(field === undefined ? {} : { field }) }
}

/** The sentence of a problem with its temperatures in the units given. */
export const sentenceIn = (found: Problem, units: UnitSystem): string =>
  units === 'metric' ? found.sentence : filled(found.code, found.details, units)

const known: Partial<Record<ProblemCode, Registered>> = { ...sinkProblems }

/**
 * Adds sentences to those that problems are told in. This folder's door adds all there are; only the built pages
 * leave that to whoever needs them (see `src/web/vite.config.ts`).
 */
export function learnProblems(problems: Partial<Record<ProblemCode, Registered>>): void {
  Object.assign(known, problems)
}

function filled(code: ProblemCode, details: ProblemDetails, units: UnitSystem): string {
  // A page that has not loaded the sentence still says which problem it is: a running tank stops for nothing.
  const sentence = known[code]?.sentence ?? code
  return sentence.replace(/\{(\w+)\}/g, (_, name: string) => quoted(details[name], name, units))
}

function quoted(value: ProblemDetails[string] | undefined, name: string, units: UnitSystem): string {
  if (value === undefined) return `(${name} missing)`
  if (typeof value !== 'object') return String(value)
  if ('celsius' in value) return inUnits(units === 'us' ? (value.celsius * 9) / 5 + 32 : value.celsius, units)
  if ('degrees' in value) return inUnits(units === 'us' ? (value.degrees * 9) / 5 : value.degrees, units)
  return value.join(', ')
}

/** At most two decimals: the digit that a value is refused for must show (25.01 °C is outside, 25.0 °C would not look it). */
function inUnits(value: number, units: UnitSystem): string {
  const number = Number.isFinite(value) ? String(Number(value.toFixed(2))) : String(value)
  return `${number.replace('-', '−')}\u202f${units === 'us' ? '°F' : '°C'}`
}
