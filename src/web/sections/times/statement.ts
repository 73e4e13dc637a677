import type { TimeRecord, TimeStatement } from '../../../wire/index.js'

/** What is stated of a time, without what the bench adds when it keeps it. */
export function statementOf({
  id: _id,
  revision: _revision,
  saved_at: _at,
  removed: _removed,
  ...stated
}: TimeRecord): TimeStatement {
  return stated
}
