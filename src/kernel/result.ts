import type { Problem } from './problems/problem.js'

/** What a use case gives back: a value, or the problem that prevented it. Only bugs throw. */
export type Result<T, P = Problem> = Ok<T> | Failed<P>
export interface Ok<T> {
  readonly ok: true
  readonly value: T
}
export interface Failed<P = Problem> {
  readonly ok: false
  readonly problem: P
}

export const ok = <T>(value: T): Ok<T> => ({ ok: true, value })
export const failed = <P = Problem>(problem: P): Failed<P> => ({ ok: false, problem })

/** Applies `f` to a value, passes a problem on. */
export const andThen = <T, U, P>(result: Result<T, P>, f: (value: T) => Result<U, P>): Result<U, P> =>
  result.ok ? f(result.value) : result

/** All values, or the first problem met. */
export function all<T, P>(results: readonly Result<T, P>[]): Result<T[], P> {
  const values: T[] = []
  for (const result of results) {
    if (!result.ok) return result
    values.push(result.value)
  }
  return ok(values)
}

/** For tests and examples: the value, or a thrown error carrying the problem's sentence. */
export function expectOk<T>(result: Result<T>): T {
  if (result.ok) return result.value
  throw new Error(`${result.problem.code}: ${result.problem.sentence}`)
}
