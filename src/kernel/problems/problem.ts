import { type ProblemCode, registry } from './registry.js'

/** Values that a sentence may quote. They are shown to people and sent as JSON. */
export type ProblemDetails = Readonly<Record<string, string | number | boolean | readonly string[]>>

/** An expected failure as a value: a registered code, the quoted values, the finished sentence. */
export interface Problem {
  readonly code: ProblemCode
  readonly details: ProblemDetails
  readonly sentence: string
  /** The field of the request that it is about, when there is one: `points[2].time`. */
  readonly field?: string
}

/** Makes a problem from its registered code; the sentence is filled from `details`. */
export function problem(code: ProblemCode, details: ProblemDetails = {}, field?: string): Problem {
  const sentence = registry[code].sentence.replace(/\{(\w+)\}/g, (_, name: string) => {
    const value = details[name]
    return value === undefined ? `(${name} missing)` : Array.isArray(value) ? value.join(', ') : String(value)
  })
  return { code, details, sentence, ...(field === undefined ? {} : { field }) }
}
