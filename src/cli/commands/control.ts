import { all, failed, ok, type Result } from '../../kernel/index.js'
import type { ControlQuestion } from '../../wire/index.js'
import { writerFor } from '../../words/index.js'
import { tell } from '../answer.js'
import { isJson, jsonIn } from '../asked.js'
import { board } from '../board.js'
import { cellsOf, listText, rowsOf } from '../lists.js'
import { controlView } from '../negatives/control-view.js'
import { pairOf } from '../options.js'
import { type Common, type Output, refuse, unitsOf, usage } from '../output.js'

export interface ControlOptions extends Common {
  readonly limits?: ControlQuestion['limits']
  readonly steps?: 'film' | 'radiograph'
  readonly aim?: readonly string[]
  readonly second?: readonly string[]
}

/** Prints the charts of control strips and whether to act or to wait. */
export async function control(file: string | undefined, options: ControlOptions, output: Output): Promise<number> {
  const text = await listText(file)
  if (!text.ok) return refuse(output, text.problem, options)
  const question = isJson(text.value)
    ? await jsonIn(text.value, 'the question', 'control-question')
    : asked(text.value, options)
  if (!question.ok) return refuse(output, question.problem, options)
  const writer = writerFor(unitsOf(options))
  const view = controlView(question.value, writer)
  if (!view.ok) return refuse(output, view.problem, options)
  const { charts, sentence, working } = view.value
  const lines = [sentence, ...charts.map((chart) => chart.sentence)]
  return tell({ view: view.value, lines, working: () => board(working) }, options, output)
}

/** Rows of `day base-fog speed-step contrast`, or of `day base-fog step step …` with --steps. A day may be left out. */
function asked(text: string, options: ControlOptions): Result<ControlQuestion> {
  const strips = all(rowsOf(text).rows.map((row) => stripIn(row, options.steps !== undefined)))
  if (!strips.ok) return strips
  const aims = quantities('aim', options.aim ?? [])
  if (!aims.ok) return aims
  const second = quantities('second', options.second ?? [])
  if (!second.ok) return second
  return ok({
    limits: options.limits ?? 'small-lab',
    strips: strips.value,
    aims: aims.value,
    second: second.value,
    ...(options.steps === undefined ? {} : { steps: options.steps }),
  })
}

const NUMBER = /^\d+(\.\d+)?$/

function stripIn(row: string, whole: boolean): Result<ControlQuestion['strips'][number]> {
  const cells = cellsOf(row)
  const labelled = cells.length > 0 && !NUMBER.test(cells[0] as string)
  const label = labelled ? (cells[0] as string) : ''
  const numbers = labelled ? cells.slice(1) : cells
  const enough = whole ? numbers.length >= 4 : numbers.length === 3
  if (!enough || !numbers.every((cell) => NUMBER.test(cell)))
    return failed(
      usage(`“${row}” is not a control strip. Write day, base and fog, speed step, contrast: “5-Mar 0.12 0.60 0.61”.`),
    )
  const [base_fog = 0, ...rest] = numbers.map(Number)
  if (whole) return ok({ label, base_fog, densities: rest })
  const [speed_step = 0, contrast = 0] = rest
  return ok({ label, base_fog, speed_step, contrast })
}

const QUANTITIES = ['base-fog', 'speed-step', 'contrast'] as const

function quantities(option: string, texts: readonly string[]): Result<ControlQuestion['aims']> {
  const found: { [quantity in (typeof QUANTITIES)[number]]?: number } = {}
  for (const text of texts) {
    const cut = text.indexOf('=')
    const quantity = QUANTITIES.find((one) => one === text.slice(0, cut))
    const value = pairOf(option, `0${text.slice(cut)}`, `${QUANTITIES[0]}=0.12`)
    if (quantity === undefined || !value.ok)
      return failed(usage(`--${option} is “${text}”; it should be like “${QUANTITIES.join('=0.60”, “')}=0.60”.`))
    found[quantity] = value.value[1]
  }
  return ok(found)
}
