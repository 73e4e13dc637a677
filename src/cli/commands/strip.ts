import { andThen } from '../../kernel/index.js'
import { characteristicCurve } from '../../science/index.js'
import { writerFor } from '../../words/index.js'
import { tell } from '../answer.js'
import { board } from '../board.js'
import { listText } from '../lists.js'
import { type StripOptions, stripAsked, stripInput } from '../negatives/strip-asked.js'
import { stripLines, stripView } from '../negatives/strip-view.js'
import { type Common, type Output, refuse, unitsOf } from '../output.js'

/** Prints what a strip of densities says: speed, contrasts, each with its interval. */
export async function strip(file: string | undefined, options: StripOptions & Common, output: Output): Promise<number> {
  const text = await listText(file)
  if (!text.ok) return refuse(output, text.problem, options)
  const asked = await stripAsked(text.value, options)
  if (!asked.ok) return refuse(output, asked.problem, options)
  const curve = andThen(stripInput(asked.value), characteristicCurve)
  if (!curve.ok) return refuse(output, curve.problem, options)
  const writer = writerFor(unitsOf(options))
  const view = stripView(curve.value, asked.value, writer)
  return tell({ view, lines: stripLines(view, writer), working: () => board(view.working) }, options, output)
}
