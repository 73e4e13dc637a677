import { ok } from '../../kernel/index.js'
import { writerFor } from '../../words/index.js'
import { tell } from '../answer.js'
import { type FixOptions, fixAsked } from '../baths/fix-asked.js'
import { fixView } from '../baths/fix-view.js'
import { board } from '../board.js'
import { listText } from '../lists.js'
import { type Common, type Output, refuse, unitsOf } from '../output.js'

/** Prints how long to fix now, how many rolls a fixer has left, and whether two baths rotate. */
export async function fix(file: string | undefined, options: FixOptions & Common, output: Output): Promise<number> {
  const units = unitsOf(options)
  // Without a file nothing is read: a clearing test alone is asked by options.
  const text = file === undefined ? ok(null) : await listText(file)
  if (!text.ok) return refuse(output, text.problem, options)
  const question = fixAsked(text.value, options, units)
  if (!question.ok) return refuse(output, question.problem, options)
  const view = fixView(question.value, writerFor(units))
  if (!view.ok) return refuse(output, view.problem, options)
  const { sentences, working } = view.value
  return tell({ view: view.value, lines: sentences, working: () => board(working) }, options, output)
}
