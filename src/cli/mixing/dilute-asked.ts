import { all, failed, type Millilitres, ok, type Result, readVolume, type UnitSystem } from '../../kernel/index.js'
import type { DiluteQuestion } from '../../wire/index.js'
import { isJson, jsonIn } from '../asked.js'
import { listText } from '../lists.js'
import { numbersOf } from '../options.js'
import { numberOf, typed, usage } from '../output.js'
import { needed, partsOf, volumeOf } from './typed.js'

/** How a question about solutions is typed. */
export interface DiluteOptions {
  readonly for?: DiluteQuestion['ask']
  readonly ratio?: readonly string[]
  readonly total?: string
  readonly stock?: readonly string[]
  readonly amount?: string
  readonly from?: string
  readonly weak?: string
  readonly want?: string
  readonly density?: string
  readonly floor?: string
  readonly rolls?: string
  readonly tank?: readonly string[]
  readonly graduate?: readonly string[]
  readonly dropsEach?: string
}

/** The question out of options, or whole out of JSON. */
export async function diluteAsked(
  file: string | undefined,
  options: DiluteOptions,
  system: UnitSystem,
): Promise<Result<DiluteQuestion>> {
  if (file !== undefined) {
    const text = await listText(file)
    if (!text.ok) return text
    return isJson(text.value)
      ? await jsonIn(text.value, 'the question', 'dilute-question')
      : failed(usage('A file for dilute holds the question as JSON; ratios are typed with --ratio.'))
  }
  return asked(options, system)
}

function asked(options: DiluteOptions, system: UnitSystem): Result<DiluteQuestion> {
  switch (options.for ?? 'ratio') {
    case 'ratio':
      return ratio(options, system)
    case 'chain':
      return chain(options, system)
    case 'into':
      return into(options, system)
    case 'stock':
      return stock(options, system)
    case 'blend':
      return percents(options, system, ({ weak = 0, want, from }, total_ml) =>
        from === undefined || want === undefined
          ? missing('--from 28 --want 2')
          : ok({ ask: 'blend', strong: from, weak, wanted: want, total_ml }),
      )
    case 'percent':
      return percents(options, system, ({ want, density }, total_ml) =>
        want === undefined
          ? missing('--want 10')
          : ok({ ask: 'percent', percent: want, total_ml, ...(density === undefined ? {} : { density }) }),
      )
    case 'acetic':
      return percents(options, system, ({ from, want }, total_ml) =>
        from === undefined || want === undefined
          ? missing('--from 99.5 --want 28')
          : ok({ ask: 'acetic', from, wanted: want, total_ml }),
      )
    case 'floor':
      return floor(options, system)
    case 'measure':
      return measure(options, system)
    case 'drops':
      return drops(options, system)
  }
}

const missing = (like: string): Result<never> => failed(usage(`Say how strong, in per cent, such as ${like}.`))
const one = (options: DiluteOptions): string | undefined => options.ratio?.[0]
const allParts = (ratios: readonly string[] = []) => all(ratios.map((text) => partsOf('ratio', text)))

function ratio(options: DiluteOptions, system: UnitSystem): Result<DiluteQuestion> {
  const text = needed('ratio', '1+9', one(options))
  if (!text.ok) return text
  const total = options.total === undefined ? null : volumeOf('total', options.total, system)
  if (total?.ok === false) return total
  const stocks = all((options.stock ?? []).map((volume) => stockOf(volume, system)))
  if (!stocks.ok) return stocks
  return ok({
    ask: 'ratio',
    ratio: text.value,
    ...(total === null ? {} : { total_ml: total.value }),
    ...(stocks.value.length === 0 ? {} : { stocks_ml: stocks.value }),
  })
}

/** A volume, or `enough`. */
const stockOf = (text: string, system: UnitSystem): Result<Millilitres | null> =>
  text === 'enough' ? ok(null) : typed(readVolume(text, { system }))

function chain(options: DiluteOptions, system: UnitSystem): Result<DiluteQuestion> {
  const ratios = allParts(options.ratio)
  if (!ratios.ok) return ratios
  const total = options.total === undefined ? null : volumeOf('total', options.total, system)
  if (total?.ok === false) return total
  const chained = { ask: 'chain' as const, ratios: ratios.value.map((parts) => [...parts]) }
  return ok(total === null ? chained : { ...chained, total_ml: total.value })
}

function into(options: DiluteOptions, system: UnitSystem): Result<DiluteQuestion> {
  const amount = volumeOf('amount', options.amount, system)
  if (!amount.ok) return amount
  const volume = volumeOf('total', options.total, system)
  return volume.ok ? ok({ ask: 'into', amount_ml: amount.value, volume_ml: volume.value }) : volume
}

/** The first ratio is the stock's, the second the working bath's, both from the concentrate. */
function stock(options: DiluteOptions, system: UnitSystem): Result<DiluteQuestion> {
  const ratios = allParts(options.ratio)
  if (!ratios.ok) return ratios
  const [first, second, third] = ratios.value
  if (first === undefined || second === undefined || third !== undefined)
    return failed(usage('Two ratios from the concentrate: the stock’s and the bath’s, --ratio 1+3 --ratio 1+31.'))
  const total = volumeOf('total', options.total, system)
  return total.ok ? ok({ ask: 'stock', stock: [...first], working: [...second], total_ml: total.value }) : total
}

type Percents = { readonly [name in 'from' | 'weak' | 'want' | 'density']?: number }

function percents(
  options: DiluteOptions,
  system: UnitSystem,
  make: (percents: Percents, total: Millilitres) => Result<DiluteQuestion>,
): Result<DiluteQuestion> {
  const total = volumeOf('total', options.total, system)
  if (!total.ok) return total
  const numbers = numbersOf(options, ['from', 'weak', 'want', 'density'])
  return numbers.ok ? make(numbers.value, total.value) : numbers
}

function floor(options: DiluteOptions, system: UnitSystem): Result<DiluteQuestion> {
  const ratios = allParts(options.ratio)
  if (!ratios.ok) return ratios
  const [first, ...others] = ratios.value
  if (first === undefined) return failed(usage('--ratio is missing, such as --ratio 1+25.'))
  const volume = volumeOf('total', options.total, system)
  if (!volume.ok) return volume
  const least = volumeOf('floor', options.floor, system)
  if (!least.ok) return least
  const rolls = numberOf('rolls', options.rolls ?? '')
  if (!rolls.ok) return rolls
  const tanks = all((options.tank ?? []).map((text) => tankOf(text, system)))
  if (!tanks.ok) return tanks
  return ok({
    ask: 'floor',
    ratio: [...first],
    volume_ml: volume.value,
    floor_ml: least.value,
    rolls: rolls.value,
    tanks: tanks.value,
    others: others.map((parts) => [...parts]),
  })
}

type Tank = Extract<DiluteQuestion, { ask: 'floor' }>['tanks'][number]

/** `two-reel 600mL 2`: name, what it holds, rolls. */
function tankOf(text: string, system: UnitSystem): Result<Tank> {
  const cut = text.trim().match(/^(.+?)\s+(\S+)\s+(\d+)$/)
  if (!cut)
    return failed(usage(`“${text}” is no tank. Write its name, what it holds and its rolls, “two-reel 600mL 2”.`))
  const holds = typed(readVolume(cut[2] as string, { system }))
  return holds.ok ? ok({ name: cut[1] as string, holds_ml: holds.value, rolls: Number(cut[3]) }) : holds
}

function measure(options: DiluteOptions, system: UnitSystem): Result<DiluteQuestion> {
  const volume = volumeOf('amount', options.amount, system)
  if (!volume.ok) return volume
  const graduates = all((options.graduate ?? []).map((text) => graduateOf(text, system)))
  if (!graduates.ok) return graduates
  const asks = { ask: 'measure' as const, volume_ml: volume.value }
  return ok(graduates.value.length === 0 ? asks : { ...asks, graduates: graduates.value })
}

type Graduate = NonNullable<Extract<DiluteQuestion, { ask: 'measure' }>['graduates']>[number]

/** `100mL 2mL` or `syringe 10mL 0.5mL`: what it holds, and mark to mark. */
function graduateOf(text: string, system: UnitSystem): Result<Graduate> {
  const cut = text.trim().match(/^(?:(graduate|syringe)\s+)?(\S+)\s+(\S+)$/i)
  if (!cut) return failed(usage(`“${text}” is no graduate. Write what it holds and its marks, “100mL 2mL”.`))
  const both = all([cut[2] as string, cut[3] as string].map((volume) => typed(readVolume(volume, { system }))))
  if (!both.ok) return both
  const [holds_ml, marks_ml] = both.value as [Millilitres, Millilitres]
  return ok({ kind: cut[1]?.toLowerCase() === 'syringe' ? 'syringe' : 'graduate', holds_ml, marks_ml })
}

function drops(options: DiluteOptions, system: UnitSystem): Result<DiluteQuestion> {
  const volume = volumeOf('amount', options.amount, system)
  if (!volume.ok) return volume
  const each = numbersOf(options, ['dropsEach'])
  if (!each.ok) return each
  const { dropsEach } = each.value
  return ok({ ask: 'drops', volume_ml: volume.value, ...(dropsEach === undefined ? {} : { drops_each: dropsEach }) })
}
