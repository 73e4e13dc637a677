import { writerFor } from '../../words/index.js'
import { tellWorked } from '../answer.js'
import { type DiluteOptions, diluteAsked } from '../mixing/dilute-asked.js'
import { diluteView } from '../mixing/dilute-view.js'
import { type Common, type Output, refuse, unitsOf } from '../output.js'

/** Prints an answer about solutions: ratios, stocks, percent, floors, what to measure with. */
export async function dilute(
  file: string | undefined,
  options: DiluteOptions & Common,
  output: Output,
): Promise<number> {
  const units = unitsOf(options)
  const asked = await diluteAsked(file, options, units)
  if (!asked.ok) return refuse(output, asked.problem, options)
  return tellWorked(diluteView(asked.value, writerFor(units)), options, output)
}
