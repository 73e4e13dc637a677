/**
 * A registered problem. The sentence says what is wrong, with the value, and what would be right; `{name}` is
 * filled from the problem's details.
 */
export interface Registered {
  readonly sentence: string
  readonly status: 400 | 401 | 403 | 404 | 409 | 413 | 415 | 421 | 422 | 429 | 500 | 503
  /**
   * 64 the command was typed wrongly, 65 the data is not usable, 66 not found, 69 something needed is not
   * available, 70 a bug, 73 it cannot be written, 75 try again later, 77 not allowed.
   */
  readonly exit: 64 | 65 | 66 | 69 | 70 | 73 | 75 | 77
  /** File below docs/guide and heading: `times#sheet-points`. */
  readonly help: string
}

export const registered = (
  status: Registered['status'],
  exit: Registered['exit'],
  help: string,
  sentence: string,
): Registered => ({ sentence, status, exit, help })

/** Data that cannot be used as it is, which most problems are. */
export const unusable = (help: string, sentence: string): Registered => registered(422, 65, help, sentence)
