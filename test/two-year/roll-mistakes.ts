import type { ProblemCode } from '../../src/kernel/index.js'
import type { RollStatement } from '../../src/wire/index.js'

/** A roll typed wrongly at first, which must not be taken in. */
export interface WrongRoll {
  readonly what: string
  readonly code: ProblemCode
  readonly of: (statement: RollStatement) => RollStatement
}

/** What people type of a roll that cannot be: made in turn, on every fifth group. */
export const WRONG_ROLLS: readonly WrongRoll[] = [
  {
    what: 'gives roll film a number of frames',
    code: 'roll.frames-of-135-only',
    of: (statement) => ({ ...statement, format: '120', frames: 12, sheets: 1 }),
  },
  {
    what: 'counts cassettes as sheets',
    code: 'roll.sheets-of-sheets-only',
    of: (statement) => ({ ...statement, format: '135', frames: null, sheets: 3 }),
  },
  {
    what: 'pushes a film to the index it was exposed at',
    code: 'roll.push-to-own-index',
    of: (statement) => ({ ...statement, exposure_index: 400, treatment: { as: 'index', index: 400 } }),
  },
  {
    what: 'puts chromogenic film down as black-and-white',
    code: 'roll.chromogenic-is-colour',
    of: (statement) => ({ ...statement, process: 'black-and-white', remarks: ['chromogenic'] }),
  },
]
