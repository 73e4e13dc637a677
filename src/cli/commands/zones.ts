import { all, failed, ok, type Result } from '../../kernel/index.js'
import { contrastForN, nOfContrast, readZones, ZONE_MODELS, type ZoneModelName } from '../../science/index.js'
import type { ZonesAnswer } from '../../wire/index.js'
import { say, type WorkingLine, type Writer, writerFor } from '../../words/index.js'
import { tell } from '../answer.js'
import { board } from '../board.js'
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
  const writer = writerFor(unitsOf(options))
  const models = modelsBy(options)
  if (!models.ok) return refuse(output, models.problem, options)
  const read = file === undefined ? ok(null) : await readBy(file, options)
  if (!read.ok) return refuse(output, read.problem, options)
  const inverse = inverseBy(options, writer)
  if (!inverse.ok) return refuse(output, inverse.problem, options)
  const judged = read.value === null ? [] : readSentences(read.value, writer)
  const tables = models.value.flatMap((model) => tableOf(model, inverse.value[model.model], writer))
  const apart = models.value.length > 1 ? [say('zones.apart', {}, writer)] : []
  const sentences = [...judged, ...(file === undefined ? [...tables, ...apart] : [])]
  const view: ZonesAnswer = {
    models: file === undefined ? models.value : [],
    read: read.value?.answer ?? null,
    sentences,
    working:
      read.value === null ? models.value.flatMap((model) => workOf(model, writer)) : [readWork(read.value, writer)],
  }
  return tell({ view, lines: sentences, working: () => board(view.working) }, options, output)
}

function modelsBy({ model, range }: ZonesOptions): Result<Model[]> {
  if (range !== undefined && model === undefined)
    return failed(usage('A density range belongs to one model: say which, --model no-flare or --model flare.'))
  const given = numbersOf({ range }, ['range'])
  if (!given.ok) return given
  const names = model === undefined ? (Object.keys(ZONE_MODELS) as ZoneModelName[]) : [model]
  return all(names.map((name) => modelOf(name, given.value.range)))
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

/** Which N a gradient is, by each model that was asked for; a sentence of refusal where it is past N−3 or N+3. */
function inverseBy(options: ZonesOptions, writer: Writer): Result<Partial<Record<ZoneModelName, string>>> {
  const given = numbersOf(options, ['gradient', 'range'])
  if (!given.ok) return given
  const { gradient, range } = given.value
  if (gradient === undefined) return ok({})
  const names = Object.keys(ZONE_MODELS) as ZoneModelName[]
  return ok(
    Object.fromEntries(
      names.map((name) => {
        const found = nOfContrast(gradient, name, range)
        return [
          name,
          found.ok ? say('zones.of-gradient', { gradient, n: found.value.n }, writer) : found.problem.sentence,
        ]
      }),
    ),
  )
}

function tableOf(model: Model, inverse: string | undefined, writer: Writer): string[] {
  const { normal_stops: stops, density_range: range, flare } = model
  const head =
    model.model === 'flare'
      ? say('zones.model.flare', { stops, range, flare }, writer)
      : say('zones.model.no-flare', { stops, range }, writer)
  if (inverse !== undefined) return [head, inverse]
  return [head, ...model.rows.map((row) => say('zones.row', row, writer))]
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

async function readBy(file: string, options: ZonesOptions): Promise<Result<Read>> {
  const text = await listText(file)
  if (!text.ok) return text
  const numbers = all(rowsOf(text.value).rows.map((row) => numbersIn(row, '0.02 0.11 0.21')))
  if (!numbers.ok) return numbers
  const given = numbersOf(options, ['from', 'to'])
  if (!given.ok) return given
  const { from = 1, to = 8 } = given.value
  const densities = numbers.value.flat()
  const found = readZones(densities, from, to)
  if (!found.ok) return found
  const { speedMet, gradient } = found.value
  return ok({ densities, answer: { speed_met: speedMet, gradient, from_zone: from, to_zone: to } })
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
