import { writerFor } from '../../words/index.js'
import { tellWorked } from '../answer.js'
import { type TemperOptions, temperAsked } from '../mixing/temper-asked.js'
import { temperView } from '../mixing/temper-view.js'
import { type Common, type Output, refuse, unitsOf } from '../output.js'

/** Prints an answer about warm and cold: waters mixed, a tank poured, something that stands, baths side by side. */
export async function temper(
  file: string | undefined,
  options: TemperOptions & Common,
  output: Output,
): Promise<number> {
  const units = unitsOf(options)
  const asked = await temperAsked(file, options, units)
  if (!asked.ok) return refuse(output, asked.problem, options)
  return tellWorked(temperView(asked.value, writerFor(units)), options, output)
}
