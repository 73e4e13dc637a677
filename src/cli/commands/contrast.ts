import { failed, ok, type Result, readDuration, type Seconds } from '../../kernel/index.js'
import { watkinsTime } from '../../science/index.js'
import type { ContrastQuestion } from '../../wire/index.js'
import { writerFor } from '../../words/index.js'
import { tell } from '../answer.js'
import { isJson, jsonIn } from '../asked.js'
import { board } from '../board.js'
import { listText } from '../lists.js'
import { contrastLines, contrastView } from '../negatives/contrast-view.js'
import { familyBy, stripsIn } from '../negatives/family.js'
import type { StripOptions } from '../negatives/strip-asked.js'
import { numbersOf } from '../options.js'
import { type Common, type Output, refuse, typed, unitsOf, usage } from '../output.js'

export interface ContrastOptions extends Common, StripOptions {
  readonly wanted?: string
  readonly measure?: ContrastQuestion['measure']
  readonly appearance?: string
  readonly watkins?: string
}

/** Prints one's own time for a wanted contrast, with the speed and the fog there where strips tell them. */
export async function contrast(file: string | undefined, options: ContrastOptions, output: Output): Promise<number> {
  const text = await listText(file)
  if (!text.ok) return refuse(output, text.problem, options)
  const question = isJson(text.value)
    ? await jsonIn(text.value, 'the question', 'contrast-question')
    : asked(text.value, options)
  if (!question.ok) return refuse(output, question.problem, options)
  const family = familyBy(question.value)
  if (!family.ok) return refuse(output, family.problem, options)
  const compared = comparedTime(question.value)
  if (!compared.ok) return refuse(output, compared.problem, options)
  const writer = writerFor(unitsOf(options))
  const view = contrastView(family.value, question.value, compared.value, writer)
  return tell({ view, lines: contrastLines(view, writer), working: () => board(view.working) }, options, output)
}

function asked(text: string, options: ContrastOptions): Result<ContrastQuestion> {
  const numbers = numbersOf(options, ['wanted', 'scatter', 'watkins'])
  if (!numbers.ok) return numbers
  const { wanted, scatter, watkins } = numbers.value
  if (wanted === undefined) return failed(usage('Say which contrast you want: --wanted 0.62.'))
  const appearance = options.appearance === undefined ? ok(undefined) : typed(readDuration(options.appearance))
  if (!appearance.ok) return appearance
  if ((appearance.value === undefined) !== (watkins === undefined))
    return failed(usage('A comparison by Watkins’ rule needs both --appearance and --watkins.'))
  const strips = stripsIn(text, options)
  if (!strips.ok) return strips
  return ok({
    wanted,
    measure: options.measure ?? 'g-bar',
    ...strips.value,
    ...(scatter === undefined ? {} : { scatter }),
    ...(appearance.value === undefined || watkins === undefined
      ? {}
      : { appearance: { time_s: appearance.value, factor: watkins } }),
  })
}

function comparedTime({ appearance }: ContrastQuestion): Result<Seconds | null> {
  return appearance === undefined ? ok(null) : watkinsTime(appearance.time_s as Seconds, appearance.factor)
}
