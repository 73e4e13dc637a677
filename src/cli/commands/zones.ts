import { all, failed, ok, type Result } from '../../kernel/index.js'
import { contrastForN, nOfContrast, readZones, ZONE_MODELS, type ZoneModelName } from '../../science/index.js'
import type { ZonesAnswer, ZonesQuestion } from '../../wire/index.js'
import { say, type WorkingLine, type Writer, writerFor } from '../../words/index.js'
import { tellWorked } from '../answer.js'
import { isJson, jsonIn } from '../asked.js'
import { listText, numbersIn, rowsOf } from '../lists.js'
import { numbersOf } from '../options.js'
import { type Common, type Output, refuse, unitsOf, usage } from '../output.js'

export interface ZonesOptions extends Common {
  readonly model?: ZoneModelName
  readonly range?: string
  readonly gradient?: string
  readonly from?: string
  readonly to?: string
}

type Model = ZonesAnswer['models'][number]
const ALL_N = [-3, -2, -1, 0, 1, 2, 3]

/** Prints what each N asks by each model for itself, and judges a series of zones when one is given. */
export async function zones(file: string | undefined, options: ZonesOptions, output: Output): Promise<number> {
  const question = await asked(file, options)
  if (!question.ok) return refuse(output, question.problem, options)
  return tellWorked(answered(question.value, writerFor(unitsOf(options))), options, output)
}

/** A file holds the densities of zones, or the whole question as JSON. */
async function asked(file: string | undefined, options: ZonesOptions): Promise<Result<ZonesQuestion>> {
  const text = file === undefined ? ok(null) : await listText(file)
  if (!text.ok) return text
  if (text.value !== null && isJson(text.value)) return jsonIn(text.value, 'the question', 'zones-question')
  const given = numbersOf(options, ['range', 'gradient', 'from', 'to'])
  if (!given.ok) return given
  const { range: density_range, gradient, from: from_zone = 1, to: to_zone = 8 } = given.value
  const question = { model: options.model, density_range, gradient, from_zone, to_zone }
  if (text.value === null) return ok(question)
  const numbers = all(rowsOf(text.value).rows.map((row) => numbersIn(row, '0.02 0.11 0.21')))
  return numbers.ok ? ok({ ...question, densities: numbers.value.flat() }) : numbers
}

function answered(question: ZonesQuestion, writer: Writer): Result<ZonesAnswer> {
  const models = modelsBy(question)
  if (!models.ok) return models
  const read = readBy(question)
  if (!read.ok) return read
  if (read.value !== null)
    return ok({
      models: [],
      read: read.value.answer,
      sentences: readSentences(read.value, writer),
      working: [readWork(read.value, writer)],
    })
  const apart = models.value.length > 1 ? [say('zones.apart', {}, writer)] : []
  return ok({
    models: models.value,
    read: null,
    sentences: [...models.value.flatMap((model) => tableOf(model, question, writer)), ...apart],
    working: models.value.flatMap((model) => workOf(model, writer)),
  })
}

function modelsBy({ model, density_range }: ZonesQuestion): Result<Model[]> {
  if (density_range !== undefined && model === undefined)
    return failed(usage('A density range belongs to one model: say which, --model no-flare or --model flare.'))
  const names = model === undefined ? (Object.keys(ZONE_MODELS) as ZoneModelName[]) : [model]
  return all(names.map((name) => modelOf(name, density_range)))
}

function modelOf(name: ZoneModelName, range: number | undefined): Result<Model> {
  const rows = all(ALL_N.map((n) => contrastForN(n, name, range)))
  if (!rows.ok) return rows
  const { normalStops, densityRange, flare } = ZONE_MODELS[name]
  return ok({
    model: name,
    normal_stops: normalStops,
    density_range: range ?? densityRange,
    flare,
    rows: rows.value.map(({ n, stops, gradient }) => ({ n, stops, gradient })),
  })
}

/** A model row by row, or which N a gradient is by it; a sentence of refusal where that is past N−3 or N+3. */
function tableOf(model: Model, { gradient, density_range }: ZonesQuestion, writer: Writer): string[] {
  const { normal_stops: stops, density_range: range, flare } = model
  const head =
    model.model === 'flare'
      ? say('zones.model.flare', { stops, range, flare }, writer)
      : say('zones.model.no-flare', { stops, range }, writer)
  if (gradient === undefined) return [head, ...model.rows.map((row) => say('zones.row', row, writer))]
  const found = nOfContrast(gradient, model.model, density_range)
  return [head, found.ok ? say('zones.of-gradient', { gradient, n: found.value.n }, writer) : found.problem.sentence]
}

const workOf = ({ model, density_range: range, flare, rows }: Model, writer: Writer): WorkingLine[] =>
  rows.map((row) => ({
    line: say('zones.work', { ...row, range, flare }, writer),
    source: say(`zones.source.${model}`, {}, writer),
  }))

interface Read {
  readonly answer: NonNullable<ZonesAnswer['read']>
  readonly densities: readonly number[]
}

/** Null when no zones were read. */
function readBy({ densities, from_zone, to_zone }: ZonesQuestion): Result<Read | null> {
  if (densities === undefined) return ok(null)
  const found = readZones(densities, from_zone, to_zone)
  if (!found.ok) return found
  const { speedMet, gradient } = found.value
  return ok({ densities, answer: { speed_met: speedMet, gradient, from_zone, to_zone } })
}

function readSentences({ answer, densities }: Read, writer: Writer): string[] {
  const density = densities[1] as number
  return [
    say(answer.speed_met ? 'zones.speed-met' : 'zones.speed-missed', { density }, writer),
    say('zones.read', { gradient: answer.gradient, from: answer.from_zone, to: answer.to_zone }, writer),
  ]
}

function readWork({ answer, densities }: Read, writer: Writer): WorkingLine {
  const { from_zone: from, to_zone: to, gradient } = answer
  const [low, high] = [densities[from] as number, densities[to] as number]
  return {
    line: say('zones.work.read', { low, high, zones: to - from, gradient }, writer),
    source: say('zones.source.read', {}, writer),
  }
}
