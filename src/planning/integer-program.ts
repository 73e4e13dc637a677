import type { Result } from '../kernel/index.js'

/** A sum of variables, each with its factor. */
export type Sum = Readonly<Record<string, number>>

/**
 * An integer program: whole-numbered variables between bounds, linear limits, one sum to make smallest. The
 * models of loads are stated in this form; who solves it is not their business.
 */
export interface IntegerProgram {
  readonly minimise: Sum
  readonly limits: readonly {
    readonly sum: Sum
    readonly is: 'at most' | 'at least' | 'exactly'
    readonly bound: number
  }[]
  /** Every variable, with its lowest and highest whole value. */
  readonly variables: Readonly<Record<string, { readonly low: number; readonly high: number }>>
}

/** What came of it, and why it stopped: proven best, or the best found when time ran out. */
export interface Solution {
  readonly stop: 'optimal' | 'time limit'
  readonly objective: number
  readonly values: Readonly<Record<string, number>>
}

/** How a search is called off: the part of an AbortSignal that is needed, named here since this folder knows no host. */
export interface Cancellation {
  readonly aborted: boolean
  addEventListener(type: 'abort', listener: () => void, options?: { once?: boolean }): void
}

/** The port. Refuses a program without solution (`loads.impossible`) and one that found nothing in time. */
export interface IntegerSolver {
  solve(program: IntegerProgram, within_ms: number, cancel?: Cancellation): Promise<Result<Solution>>
}
