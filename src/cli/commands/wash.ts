import { washView } from '../../lab/index.js'
import { writerFor } from '../../words/index.js'
import { tellWorked } from '../answer.js'
import { listText } from '../lists.js'
import { type Common, type Output, refuse, unitsOf } from '../output.js'
import { type WashOptions, washAsked } from '../waste/wash-asked.js'

/** Prints what a wash leaves in film, as an estimate, and whether that is enough. */
export async function wash(file: string | undefined, options: WashOptions & Common, output: Output): Promise<number> {
  const units = unitsOf(options)
  const text = await listText(file)
  if (!text.ok) return refuse(output, text.problem, options)
  const question = await washAsked(text.value, options, units)
  if (!question.ok) return refuse(output, question.problem, options)
  return tellWorked(washView(question.value, writerFor(units)), options, output)
}
