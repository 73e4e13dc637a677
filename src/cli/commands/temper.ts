import { writerFor } from '../../words/index.js'
import { tell } from '../answer.js'
import { board } from '../board.js'
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
  const view = temperView(asked.value, writerFor(units))
  if (!view.ok) return refuse(output, view.problem, options)
  const { sentences, working } = view.value
  return tell({ view: view.value, lines: sentences, working: () => board(working) }, options, output)
}
