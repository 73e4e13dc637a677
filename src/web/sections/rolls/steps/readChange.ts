import { failed, ok, problem, type Result } from '../../../../kernel/index.js'
import { type Known, readDue, readIndex, readProcess, readWanted } from '../../../../planning/index.js'
import type { ChangeRollsInput } from '../../../shared/api/index.js'

type Change = ChangeRollsInput['change']

/** What can be changed on many rolls at once, with an example of each. */
export const CHANGES = [
  ['due', 'the due day', 'in 2 weeks; empty for none'],
  ['treatment', 'what is wanted', 'as 800; empty for as usual'],
  ['exposure_index', 'the index', '400; empty for unknown'],
  ['film', 'the film', 'Tarn 100'],
  ['whose', 'whose it is', 'Ida; empty for own film'],
  ['process', 'the chemistry', 'black-and-white'],
] as const
export type Changed = (typeof CHANGES)[number][0]

/** A change as it is typed; stops cannot be counted here, since every roll may have another index. */
export function readChange(what: Changed, text: string, known: Known): Result<Change> {
  const typed = text.trim()
  const into = <T>(result: Result<T>): Result<Change> => (result.ok ? ok({ [what]: result.value } as Change) : result)
  if (what === 'treatment') return into(readWanted(typed, null))
  if (what === 'film')
    return typed === '' ? failed(problem('intake.missing', { what: 'The film', example: 'Tarn 100' })) : into(ok(typed))
  if (what === 'process') return into(readProcess(typed))
  if (typed === '') return into(ok(null))
  if (what === 'due') return into(readDue(typed, known))
  return what === 'exposure_index' ? into(readIndex(typed)) : into(ok(typed))
}
