import { failed, type Problem, type Result } from '../../kernel/index.js'
import { type BasisInput, defineBasis, type TimeBasis } from '../../science/index.js'
import type { TimeStatement } from './port.js'

/** What the science works on, out of what was stated. */
const inputOf = (statement: TimeStatement): BasisInput => ({
  kind: statement.kind,
  law: statement.law,
  points: statement.points,
  developerClass: statement.developerClass,
  ...(statement.coefficient === null ? {} : { coefficient: statement.coefficient }),
  ...(statement.usable === null ? {} : { usable: statement.usable }),
  ...(statement.window === null ? {} : { window: statement.window }),
})

export const basisOf = (statement: TimeStatement): Result<TimeBasis> => defineBasis(inputOf(statement))

const within = (problem: Problem, place: string): Problem => ({
  ...problem,
  field: problem.field === undefined ? place : `${place}.${problem.field}`,
})

/** A statement is kept only if a time can be worked out from it. `place` names it within a list. */
export function checked(statement: TimeStatement, place: string): Result<TimeStatement> {
  const basis = basisOf(statement)
  return basis.ok ? { ok: true, value: statement } : failed(within(basis.problem, place))
}
