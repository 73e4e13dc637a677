import { ok } from '../../kernel/index.js'
import { fixView } from '../../lab/index.js'
import { writerFor } from '../../words/index.js'
import { tellWorked } from '../answer.js'
import { type FixOptions, fixAsked } from '../baths/fix-asked.js'
import { listText } from '../lists.js'
import { type Common, type Output, refuse, unitsOf } from '../output.js'

/** Prints how long to fix now, how many rolls a fixer has left, and whether two baths rotate. */
export async function fix(file: string | undefined, options: FixOptions & Common, output: Output): Promise<number> {
  const units = unitsOf(options)
  // Without a file nothing is read: a clearing test alone is asked by options.
  const text = file === undefined ? ok(null) : await listText(file)
  if (!text.ok) return refuse(output, text.problem, options)
  const question = await fixAsked(text.value, options, units)
  if (!question.ok) return refuse(output, question.problem, options)
  return tellWorked(fixView(question.value, writerFor(units)), options, output)
}
