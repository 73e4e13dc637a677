import { failed, ok, problem, type Result } from '../../kernel/index.js'
import type { RollStatement } from '../../wire/index.js'

/** What is said of a roll must fit together: a length only of 135, sheets only of sheets, a push not to its own index. */
export function checkRoll(statement: RollStatement): Result<RollStatement> {
  const { format, frames, sheets, treatment, exposure_index, remarks, process } = statement
  if (frames !== null && format !== '135')
    return failed(problem('roll.frames-of-135-only', { format, frames }, 'frames'))
  if (sheets > 1 && !isSheet(format)) return failed(problem('roll.sheets-of-sheets-only', { format, sheets }, 'sheets'))
  if (treatment.as === 'index' && treatment.index === exposure_index)
    return failed(problem('roll.push-to-own-index', { index: treatment.index }, 'treatment'))
  if (remarks.includes('chromogenic') && process !== 'colour-negative')
    return failed(problem('roll.chromogenic-is-colour', {}, 'process'))
  return ok({ ...statement, remarks: [...new Set(remarks)] })
}

export const isSheet = (format: RollStatement['format']): boolean => format.includes('x')
