import { failed, type Millilitres, millilitres, ok, type Ratio, type Result, readRatio } from '../../kernel/index.js'
import {
  aceticAcid,
  blendOf,
  chained,
  concentrateAndStock,
  dilutedAcetic,
  dryFor,
  eachReading,
  intoOrUpTo,
  type Mixture,
  mix,
  mostFromStocks,
  weighedFor,
} from '../../science/index.js'
import type { DiluteAnswer, DiluteQuestion } from '../../wire/index.js'
import { say, type WorkingLine, type Writer } from '../../words/index.js'
import { usage } from '../output.js'
import { dropsView, floorView, measureView } from './measure-view.js'

type Asked<Ask extends DiluteQuestion['ask']> = Extract<DiluteQuestion, { ask: Ask }>
type Mixed = Extract<DiluteAnswer, { ask: 'ratio' }>['readings'][number]

/** The answer to a question about solutions, with its sentences and its working. */
export function diluteView(question: DiluteQuestion, w: Writer): Result<DiluteAnswer> {
  switch (question.ask) {
    case 'ratio':
      return ratio(question, w)
    case 'chain':
      return chain(question, w)
    case 'into':
      return into(question, w)
    case 'stock':
      return stock(question, w)
    case 'blend':
      return blend(question, w)
    case 'percent':
      return percent(question, w)
    case 'acetic':
      return acetic(question, w)
    case 'floor':
      return floorView(question, w)
    case 'measure':
      return measureView(question, w)
    case 'drops':
      return dropsView(question, w)
  }
}

const mixedOf = (parts: readonly number[], { total, parts: volumes }: Mixture): Mixed => ({
  parts: [...parts],
  total_ml: total,
  volumes_ml: [...volumes],
})
const saying = ({ parts, volumes_ml, total_ml }: Mixed) => ({
  parts,
  volumes: volumes_ml,
  total: total_ml as Millilitres,
})

/** Each part's share of the total. */
function shares({ parts, volumes_ml, total_ml }: Mixed, w: Writer): WorkingLine[] {
  const whole = parts.reduce((sum, part) => sum + part, 0)
  const total = millilitres(total_ml)
  return parts.map((part, i) => ({
    line: say('dilute.work.share', { part, whole, total, volume: millilitres(volumes_ml[i] as number) }, w),
    source: say('dilute.source.additive', {}, w),
  }))
}

function ratio({ ratio: given, total_ml, stocks_ml }: Asked<'ratio'>, w: Writer): Result<DiluteAnswer> {
  const read = readingsOf(given)
  if (!read.ok) return read
  if (stocks_ml !== undefined) return limited(read.value, stocks_ml, w)
  if (total_ml === undefined) return failed(usage('Say how much of it, --total 500mL, or what there is, --stock 50mL.'))
  const each = eachReading(read.value, total_ml)
  if (!each.ok) return each
  const readings = each.value.map(({ ratio: { parts }, mixture }) => mixedOf(parts, mixture))
  const [first, second] = each.value
  const stronger = first === undefined || second === undefined ? null : second.strength / first.strength
  return ok({
    ask: 'ratio',
    readings,
    stronger,
    limited_by: null,
    left_ml: null,
    sentences: [
      ...readings.map((mixed) => say('dilute.mixed', saying(mixed), w)),
      ...(stronger === null ? [] : [say('dilute.two-readings', { stronger: Math.max(stronger, 1 / stronger) }, w)]),
    ],
    working: readings.flatMap((mixed) => shares(mixed, w)),
  })
}

/** One reading, or both of a colon: nothing is chosen between them. */
function readingsOf(given: Asked<'ratio'>['ratio']): Result<readonly Ratio[]> {
  if (typeof given !== 'string') return ok([{ parts: given }])
  const reading = readRatio(given)
  if (reading.kind === 'refused') return failed(reading.problem)
  return ok(reading.kind === 'read' ? [reading.value] : reading.choices.map(({ value }) => value))
}

type Stocks = readonly (Millilitres | null)[]

function limited([first, second]: readonly Ratio[], stocks: Stocks, w: Writer): Result<DiluteAnswer> {
  if (first === undefined || second !== undefined)
    return failed(usage('This ratio is read in two ways. Write it with a plus to see how far a stock goes.'))
  const { parts } = first
  const found = mostFromStocks(parts, stocks)
  if (!found.ok) return found
  const { mixture, limitedBy, left } = found.value
  const mixed = mixedOf(parts, mixture)
  const over = left.flatMap((volume, part) => (volume === null || volume < 0.05 ? [] : [{ part, left: volume }]))
  return ok({
    ask: 'ratio',
    readings: [mixed],
    stronger: null,
    limited_by: limitedBy,
    left_ml: [...left],
    sentences: [
      say('dilute.mixed', saying(mixed), w),
      say('dilute.limited', { part: limitedBy, of: parts.length }, w),
      ...over.map((one) => say('dilute.left', { ...one, of: parts.length }, w)),
    ],
    working: shares(mixed, w),
  })
}

function chain({ ratios, total_ml }: Asked<'chain'>, w: Writer): Result<DiluteAnswer> {
  const all = chained(ratios)
  if (!all.ok) return all
  const parts = [...all.value]
  const mixture = total_ml === undefined ? null : mix(parts, total_ml)
  if (mixture?.ok === false) return mixture
  const mixed = mixture === null ? null : mixedOf(parts, mixture.value)
  return ok({
    ask: 'chain',
    parts,
    mixed,
    sentences: [
      say('dilute.chain', { ratios, parts }, w),
      ...(mixed === null ? [] : [say('dilute.mixed', saying(mixed), w)]),
    ],
    working: [
      {
        line: say('dilute.work.factor', { factor: 1 + all.value[1] }, w),
        source: say('dilute.source.additive', {}, w),
      },
      ...(mixed === null ? [] : shares(mixed, w)),
    ],
  })
}

function into({ amount_ml, volume_ml }: Asked<'into'>, w: Writer): Result<DiluteAnswer> {
  const found = intoOrUpTo(amount_ml, volume_ml)
  if (!found.ok) return found
  const { madeUpTo, pouredInto } = found.value
  const [upTo, poured] = [madeUpTo, pouredInto].map(({ parts, mixture }) => mixedOf(parts, mixture)) as [Mixed, Mixed]
  return ok({
    ask: 'into',
    made_up_to: upTo,
    poured_into: poured,
    sentences: [say('dilute.made-up-to', saying(upTo), w), say('dilute.poured-into', saying(poured), w)],
    working: [...shares(upTo, w), ...shares(poured, w)],
  })
}

const isPair = (parts: readonly number[]): parts is [number, number] => parts.length === 2

function stock({ stock: made, working, total_ml }: Asked<'stock'>, w: Writer): Result<DiluteAnswer> {
  if (!isPair(made) || !isPair(working))
    return failed(usage('Concentrate and stock are compared by two parts each, such as 1+3 and 1+31.'))
  const found = concentrateAndStock(made, working)
  if (!found.ok) return found
  const { fromConcentrate, fromStock, factor } = found.value
  const stockParts = fromStock[1] < 1e-9 ? [1] : fromStock
  const [concentrate, thinned] = [mix(fromConcentrate, total_ml), mix(stockParts, total_ml)]
  if (!concentrate.ok) return concentrate
  if (!thinned.ok) return thinned
  const from = { concentrate: mixedOf(fromConcentrate, concentrate.value), stock: mixedOf(stockParts, thinned.value) }
  return ok({
    ask: 'stock',
    factor,
    from_concentrate: from.concentrate,
    from_stock: from.stock,
    sentences: [
      say('dilute.from-concentrate', saying(from.concentrate), w),
      say('dilute.from-stock', { ...saying(from.stock), factor }, w),
    ],
    working: [...shares(from.concentrate, w), ...shares(from.stock, w)],
  })
}

function blend({ strong, weak, wanted, total_ml }: Asked<'blend'>, w: Writer): Result<DiluteAnswer> {
  const found = blendOf(strong, weak, wanted, total_ml)
  if (!found.ok) return found
  const { strong: strongVolume, weak: weakVolume } = found.value
  return ok({
    ask: 'blend',
    strong_ml: strongVolume,
    weak_ml: weakVolume,
    sentences: [say('dilute.blend', { strong, weak, wanted, strongVolume, weakVolume }, w)],
    working: [
      {
        line: say('dilute.work.criss-cross', { strong, weak, wanted }, w),
        source: say('dilute.source.balance', {}, w),
      },
    ],
  })
}

function percent({ percent: wanted, total_ml, density }: Asked<'percent'>, w: Writer): Result<DiluteAnswer> {
  if (density === undefined) {
    const dissolved = dryFor(wanted, total_ml)
    if (!dissolved.ok) return dissolved
    const said = { percent: wanted, total: total_ml, dissolved: dissolved.value }
    return ok({
      ask: 'percent',
      by: 'weight-in-volume',
      dissolved_g: dissolved.value,
      water_g: null,
      sentences: [say('dilute.dry', said, w)],
      working: [{ line: say('dilute.work.percent', said, w), source: say('dilute.source.balance', {}, w) }],
    })
  }
  const found = weighedFor(wanted, density, total_ml)
  if (!found.ok) return found
  const { dissolved, water } = found.value
  return ok({
    ask: 'percent',
    by: 'weight',
    dissolved_g: dissolved,
    water_g: water,
    sentences: [say('dilute.by-weight', { percent: wanted, dissolved, water, total: total_ml }, w)],
    working: [{ line: say('dilute.work.density', { density }, w), source: say('dilute.source.stated', {}, w) }],
  })
}

function acetic({ from, wanted, total_ml }: Asked<'acetic'>, w: Writer): Result<DiluteAnswer> {
  const found = dilutedAcetic(from, wanted, total_ml)
  if (!found.ok) return found
  const both = [from, wanted].map((strength) => ({ percent: strength, acid: aceticAcid(strength) }))
  const weaker = both[1]?.acid
  if (!weaker?.ok) return weaker ?? failed(usage('Say how strong, --want 2.'))
  const { acid, acidVolume, water } = found.value
  return ok({
    ask: 'acetic',
    acid_g: acid,
    acid_ml: acidVolume,
    water_g: water,
    mol_per_litre: weaker.value.molarity,
    sentences: [
      say('dilute.acetic', { from, wanted, acid, acidVolume, water, total: total_ml }, w),
      say('dilute.acid-caution', {}, w),
    ],
    working: both.flatMap(({ percent: strength, acid: known }) =>
      known.ok
        ? [
            {
              line: say('dilute.work.acid-density', { percent: strength, density: known.value.density }, w),
              source: say('dilute.source.density-table', {}, w),
            },
          ]
        : [],
    ),
  })
}
