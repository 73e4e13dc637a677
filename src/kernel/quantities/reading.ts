import type { Problem } from '../problems/problem.js'

/**
 * What became of a typed text. Fields show `echo` beside themselves, so people see how they were read;
 * an `asked` text has two honest readings, and the person chooses: nothing is guessed.
 */
export type Reading<T> =
  | { readonly kind: 'read'; readonly value: T; readonly echo: string }
  | { readonly kind: 'asked'; readonly problem: Problem; readonly choices: readonly Choice<T>[] }
  | { readonly kind: 'refused'; readonly problem: Problem }

export interface Choice<T> {
  readonly value: T
  readonly label: string
}
