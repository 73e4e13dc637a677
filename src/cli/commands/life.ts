import { all, failed, ok, type Result } from '../../kernel/index.js'
import {
  type Age,
  ageOf,
  FILL_STATES,
  type FillState,
  KEEPING,
  type KeepingKind,
  type KeepingTimes,
} from '../../science/index.js'
import type { LifeAnswer, LifeQuestion } from '../../wire/index.js'
import { say, type Writer, writerFor } from '../../words/index.js'
import { tellWorked } from '../answer.js'
import { isJson, jsonIn } from '../asked.js'
import { cellsOf, listText, rowsOf } from '../lists.js'
import { type Common, numberOf, type Output, refuse, unitsOf, usage } from '../output.js'

export interface LifeOptions extends Common {
  readonly keeps?: KeepingKind
  readonly days?: readonly string[]
}

/** Prints how old a solution is by how it stood, and how long it keeps as it stands now. */
export async function life(file: string | undefined, options: LifeOptions, output: Output): Promise<number> {
  const text = await listText(file)
  if (!text.ok) return refuse(output, text.problem, options)
  const question = isJson(text.value)
    ? await jsonIn(text.value, 'the question', 'life-question')
    : asked(text.value, options)
  if (!question.ok) return refuse(output, question.problem, options)
  const age = ageOf(question.value.stretches, livesOf(question.value))
  if (!age.ok) return refuse(output, age.problem, options)
  const view = viewOf(question.value, age.value, writerFor(unitsOf(options)))
  return tellWorked(ok(view), options, output)
}

function asked(text: string, options: LifeOptions): Result<LifeQuestion> {
  const stretches = all(rowsOf(text).rows.map(stretchIn))
  if (!stretches.ok) return stretches
  const days = all((options.days ?? []).map((one) => stateIn(one, '=')))
  if (!days.ok) return days
  return ok({
    stretches: stretches.value,
    days: Object.fromEntries(days.value.map(({ state, days: life }) => [state, life])),
    ...(options.keeps === undefined ? {} : { keeps: options.keeps }),
  })
}

const stretchIn = (row: string) => stateIn(cellsOf(row).join(' '), ' ')

/** `half-full 12`, or `half-full=61` as an option. */
function stateIn(text: string, mark: ' ' | '='): Result<LifeQuestion['stretches'][number]> {
  const [name, days, ...rest] = text.split(mark)
  const state = FILL_STATES.find((one) => one === name)
  if (state === undefined || days === undefined || rest.length > 0)
    return failed(
      usage(
        `“${text}” should be a state and its days, like “half-full${mark}12”. States are ${FILL_STATES.join(', ')}.`,
      ),
    )
  const count = numberOf('days', days)
  return count.ok ? ok({ state, days: count.value }) : count
}

/** Stated days go before those of practice; a state of which neither speaks has no life. */
function livesOf({ keeps, days }: LifeQuestion): KeepingTimes {
  const practice = keeps === undefined ? null : KEEPING[keeps].days
  const of = (state: FillState) => days[state] ?? practice?.[state] ?? null
  return Object.fromEntries(FILL_STATES.map((state) => [state, of(state)])) as Record<FillState, number | null>
}

function viewOf({ days }: LifeQuestion, age: Age, writer: Writer): LifeAnswer {
  const { used, daysLeft, verdict, stretches } = age
  const { state } = stretches[stretches.length - 1] as Age['stretches'][number]
  return {
    used,
    days_left: daysLeft,
    verdict,
    stretches: stretches.map(({ life: life_days, ...one }) => ({ ...one, life_days })),
    sentences: [
      verdict === 'past'
        ? say('life.past', { used }, writer)
        : say('life.keeps', { used, days: daysLeft, state }, writer),
    ],
    working: [
      ...stretches.map((one) => ({
        line: say('life.stretch', one, writer),
        source: say(`life.source.${days[one.state] === undefined ? 'practice' : 'stated'}`, {}, writer),
      })),
      { line: say('life.sum', { used }, writer), source: say('life.source.law', {}, writer) },
    ],
  }
}
