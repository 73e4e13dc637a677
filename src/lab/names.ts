import { nameKey, type Problem, problem } from '../kernel/index.js'

/** Refuses a name that another record bears; capitals do not matter. */
export const nameTaken = (what: string, name: string, others: readonly string[], field: string): Problem | null =>
  others.some((other) => nameKey(other) === nameKey(name)) ? problem('record.name-taken', { what, name }, field) : null
