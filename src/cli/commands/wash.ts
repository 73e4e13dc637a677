import { writerFor } from '../../words/index.js'
import { tell } from '../answer.js'
import { board } from '../board.js'
import { listText } from '../lists.js'
import { type Common, type Output, refuse, unitsOf } from '../output.js'
import { type WashOptions, washAsked } from '../waste/wash-asked.js'
import { washView } from '../waste/wash-view.js'

/** Prints what a wash leaves in film, as an estimate, and whether that is enough. */
export async function wash(file: string | undefined, options: WashOptions & Common, output: Output): Promise<number> {
  const units = unitsOf(options)
  const text = await listText(file)
  if (!text.ok) return refuse(output, text.problem, options)
  const question = washAsked(text.value, options, units)
  if (!question.ok) return refuse(output, question.problem, options)
  const view = washView(question.value, writerFor(units))
  if (!view.ok) return refuse(output, view.problem, options)
  const { sentences, working } = view.value
  return tell({ view: view.value, lines: sentences, working: () => board(working) }, options, output)
}
