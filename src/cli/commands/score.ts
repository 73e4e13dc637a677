import { failed, ok, type Result, readDuration, readTemperature } from '../../kernel/index.js'
import { basisOf, timeStatementOf } from '../../lab/index.js'
import {
  changeOf,
  type Job,
  plan,
  type Recipe,
  type Score,
  type ScoreWarning,
  SHIPPED_RECIPES,
  type TankConditions,
  type TankPlan,
} from '../../score/index.js'
import type { ScoreAnswer } from '../../wire/index.js'
import { say, type Writer, warningSentence, writerFor } from '../../words/index.js'
import { tell } from '../answer.js'
import { jsonAs, questionIn } from '../asked.js'
import { type BasisOptions, basisFrom } from '../basis.js'
import { board } from '../board.js'
import { listText } from '../lists.js'
import { type Common, type Output, refuse, typed, unitsOf, usage } from '../output.js'
import { scoreWorking } from '../score-working.js'

export interface ScoreOptions extends Common, BasisOptions {
  readonly developerTime?: string
  readonly at?: string
}

interface Asked {
  readonly recipe: Recipe
  readonly development: TankConditions['development']
}

/**
 * Prints the score of a list of baths: one that comes with the program by its id, one's own from a file of JSON, or a
 * whole question in JSON on standard input.
 */
export async function score(name: string, options: ScoreOptions, output: Output): Promise<number> {
  const asked = name === '-' ? await byJson() : await byOptions(name, options)
  if (!asked.ok) return refuse(output, asked.problem, options)
  const { recipe, development } = asked.value
  const planned = plan([{ recipe, conditions: { tank: 'A', development } }])
  if (!planned.ok) return refuse(output, planned.problem, options)
  const writer = writerFor(unitsOf(options))
  const [tank] = planned.value.tanks as readonly [TankPlan]
  const view = viewOf(planned.value, tank, scoreWorking(tank, development, writer), writer)
  return tell(
    { view, lines: linesOf(planned.value, tank, writer), working: () => board(view.working) },
    options,
    output,
  )
}

async function byOptions(name: string, options: ScoreOptions): Promise<Result<Asked>> {
  const recipe = await recipeNamed(name)
  if (!recipe.ok) return recipe
  const development = developmentOf(options)
  return development.ok ? ok({ recipe: recipe.value, development: development.value }) : development
}

async function byJson(): Promise<Result<Asked>> {
  const question = await questionIn('-', 'score-question')
  if (!question.ok) return question
  const { recipe: stated, developer_time_s: own, time, at_c } = question.value
  const recipe = typeof stated === 'string' ? await recipeNamed(stated) : ok(stated)
  if (!recipe.ok) return recipe
  const temperature = (at_c ?? null) as Own['temperature']
  if (time === undefined)
    return ok({
      recipe: recipe.value,
      development: own === undefined ? null : { from: 'own', time: own as Own['time'], temperature },
    })
  if (own !== undefined) return failed(usage('Give developer_time_s, or time with at_c, but not both.'))
  if (temperature === null) return failed(usage('Say at what temperature: at_c.'))
  const basis = basisOf(timeStatementOf(time))
  return basis.ok
    ? ok({ recipe: recipe.value, development: { from: 'basis', basis: basis.value, temperature } })
    : basis
}

/** A file is told from an id by its ending. */
async function recipeNamed(name: string): Promise<Result<Recipe>> {
  const shipped = SHIPPED_RECIPES.find(({ id }) => id === name)
  if (shipped !== undefined) return ok(shipped)
  if (!name.endsWith('.json')) {
    const known = SHIPPED_RECIPES.map(({ id }) => id).join(', ')
    return failed(usage(`There is no list of baths called ${name}. Name a file of JSON, or one of ${known}.`))
  }
  const text = await listText(name)
  if (!text.ok) return text
  const { schemas } = await import('../../wire/index.js')
  return jsonAs(text.value, `${name} is no list of baths`, schemas.Recipe)
}

/** `--developer-time` is the person's own figure; points with `--at` are worked out as `wetside time` does. */
function developmentOf(options: ScoreOptions): Result<TankConditions['development']> {
  const at = options.at === undefined ? null : typed(readTemperature(options.at, { system: unitsOf(options) }))
  if (at?.ok === false) return at
  if ((options.point ?? []).length === 0) return ownTime(options.developerTime, at?.value ?? null)
  if (options.developerTime !== undefined)
    return failed(usage('Give --developer-time, or --point with --at, but not both.'))
  if (at === null) return failed(usage('Say at what temperature: --at 21.6C.'))
  const basis = basisFrom(options, unitsOf(options))
  return basis.ok ? ok({ from: 'basis', basis: basis.value, temperature: at.value }) : basis
}

type Own = Extract<TankConditions['development'], { from: 'own' }>

function ownTime(text: string | undefined, temperature: Own['temperature']): Result<Own | null> {
  if (text === undefined) return ok(null)
  const time = typed(readDuration(text, { what: 'a developing time' }))
  return time.ok ? ok({ from: 'own', time: time.value, temperature }) : time
}

const sentenceOf = (warning: ScoreWarning, writer: Writer): string =>
  warning.code === 'development'
    ? warningSentence(warning.warning, writer)
    : say(`score.warning.${warning.code}`, warning as never, writer)

function viewOf(
  { length, handsBusy, warnings }: Score,
  { tank, baths, jobs }: TankPlan,
  working: ScoreAnswer['working'],
  writer: Writer,
): ScoreAnswer {
  return {
    recipe: { id: tank.recipe.id, name: tank.recipe.name },
    length_s: length,
    hands_busy_s: handsBusy,
    baths: baths.map((bath) => ({
      id: bath.id,
      name: bath.name,
      clock_start_s: bath.clockStart,
      drain_start_s: bath.drainStart,
      clock_end_s: bath.clockEnd,
      drain_end_s: bath.drainEnd,
    })),
    jobs: jobs.map(({ id, kind, start, end, parts }) => ({
      id,
      kind,
      start_s: start,
      end_s: end,
      parts: parts.map((part) => ({ part: part.part, start_s: part.start, end_s: part.end })),
    })),
    warnings: warnings.map((warning) => ({ code: warning.code, sentence: sentenceOf(warning, writer) })),
    working,
  }
}

function linesOf(score: Score, plan: TankPlan, writer: Writer): string[] {
  const { baths, jobs, length, tank } = plan
  const head = say(
    'score.description',
    { baths: baths.length, length: length as never, hands: score.handsBusy },
    writer,
  )
  const turns = jobs.filter(({ kind }) => kind === 'turn')
  const lines = jobs.flatMap((job) => {
    if (job.kind !== 'turn') return [lineOf(job.start, headingOf(plan, job, writer), writer)]
    // The turns of a bath are one line, at the first of them.
    const all = turns.filter(({ index }) => index === job.index)
    if (all[0] !== job) return []
    const name = tank.recipe.steps[job.index]?.name ?? ''
    const last = all.at(-1)?.start ?? job.start
    const said = { name, length: (job.end - job.start) as never, count: all.length, last: last as never }
    return [lineOf(job.start, say('score.turns', said, writer), writer)]
  })
  return [`${tank.recipe.name}: ${head}`, ...lines, ...score.warnings.map((warning) => sentenceOf(warning, writer))]
}

const lineOf = (at: number, text: string, writer: Writer): string => `${writer.time(at).padStart(7)}  ${text}`

function headingOf({ laid, tank }: TankPlan, job: Job, writer: Writer): string {
  const name = tank.recipe.steps[job.index]?.name ?? ''
  if (job.kind === 'drain') return say('sheet.job.out', { name }, writer)
  if (job.kind === 'check') return say('sheet.job.check', { name }, writer)
  if (job.kind !== 'change') return name
  const { how, ...names } = changeOf(laid, job)
  return say(`sheet.job.${how}`, names, writer)
}
