import { andThen } from '../../kernel/index.js'
import { writerFor } from '../../words/index.js'
import { tellWorked } from '../answer.js'
import { type FormulaOptions, formulaAsked } from '../mixing/formula-asked.js'
import { formulaView } from '../mixing/formula-view.js'
import { type Common, type Output, unitsOf } from '../output.js'

/** Prints how a bath is mixed by weight: what to weigh, in which order, with which caution where. */
export async function formula(
  file: string | undefined,
  options: FormulaOptions & Common,
  output: Output,
): Promise<number> {
  const units = unitsOf(options)
  const question = await formulaAsked(file, options, units)
  return tellWorked(
    andThen(question, (one) => formulaView(one, writerFor(units))),
    options,
    output,
  )
}
