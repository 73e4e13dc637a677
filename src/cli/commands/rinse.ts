import { BENCH_ROLES, type BenchRole, between } from '../../planning/index.js'
import { say } from '../../words/index.js'
import { tell } from '../answer.js'
import { type Common, type Output, refuse, unitsOf, usage } from '../output.js'

/** Says what comes between two baths in one graduate or on one thermometer, and why. */
export async function rinse(before: string, next: string, options: Common, output: Output): Promise<number> {
  const unknown = [before, next].find((role) => !BENCH_ROLES.includes(role as BenchRole))
  if (unknown !== undefined)
    return refuse(output, usage(`“${unknown}” is no kind of bath; say one of ${BENCH_ROLES.join(', ')}.`), options)
  const rule = between(before as BenchRole, next as BenchRole)
  const units = unitsOf(options)
  const lines = [say('order.do', rule, units), say('order.because', rule, units)]
  return tell({ view: { before, next, ...rule }, lines, working: () => [] }, options, output)
}
