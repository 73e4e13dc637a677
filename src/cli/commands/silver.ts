import { all, failed, type Millilitres, ok, type Result, readVolume, type UnitSystem } from '../../kernel/index.js'
import { type JugPour, SILVER_RULE, type SilverHeld, silverHeld } from '../../science/index.js'
import type { SilverAnswer, SilverQuestion } from '../../wire/index.js'
import { say, type WorkingLine, type Writer, writerFor } from '../../words/index.js'
import { tellWorked } from '../answer.js'
import { isJson, jsonIn } from '../asked.js'
import { listText, rowsOf } from '../lists.js'
import { numbersOf, pairOf } from '../options.js'
import { type Common, numberOf, type Output, refuse, typed, unitsOf, usage } from '../output.js'

export interface SilverOptions extends Common {
  readonly limit?: string
  readonly silver?: string
}

type Asked = SilverQuestion['pours'][number]

/** Prints how much silver a waste jug holds, against the limits; never whether it may be poured away. */
export async function silver(file: string | undefined, options: SilverOptions, output: Output): Promise<number> {
  const units = unitsOf(options)
  const text = await listText(file)
  if (!text.ok) return refuse(output, text.problem, options)
  const question = isJson(text.value)
    ? await jsonIn(text.value, 'the question', 'silver-question')
    : asked(text.value, options, units)
  if (!question.ok) return refuse(output, question.problem, options)
  const held = silverHeld(question.value.pours.map(pourOf), question.value.own_limit_mg_per_l)
  if (!held.ok) return refuse(output, held.problem, options)
  const view = viewOf(question.value, held.value, writerFor(units))
  return tellWorked(ok(view), options, output)
}

function asked(text: string, options: SilverOptions, system: UnitSystem): Result<SilverQuestion> {
  const film = options.silver === undefined ? ok(null) : pairOf('silver', options.silver, '5=0.6')
  if (!film.ok) return film
  const of = film.value === null ? {} : { silver: { g_per_m2: film.value[0], share: film.value[1] } }
  const pours = all(rowsOf(text).rows.map((row) => pourIn(row, of, system)))
  if (!pours.ok) return pours
  const numbers = numbersOf(options, ['limit'])
  if (!numbers.ok) return numbers
  const { limit } = numbers.value
  return ok({ pours: pours.value, ...(limit === undefined ? {} : { own_limit_mg_per_l: limit }) })
}

const ROW = /^(?<volume>\S+)\s+(?:(?<kind>rolls|read)\s+(?<amount>\S+)(?:\s+(?<off>\S+))?|water)$/

/** `1L rolls 12`, `500mL read 2.5 0.5` with what the reading may be off, `2L water`. */
function pourIn(row: string, of: Pick<Asked & { by: 'rolls' }, 'silver'>, system: UnitSystem): Result<Asked> {
  const groups = ROW.exec(row)?.groups
  if (groups === undefined || (groups.kind === 'rolls' && groups.off !== undefined))
    return failed(usage(`“${row}” is not a pour. Write “1L rolls 12”, “500mL read 2.5 0.5” or “2L water”.`))
  const volume = typed(readVolume(groups.volume as string, { system, what: 'what was poured in' }))
  if (!volume.ok) return volume
  if (groups.kind === undefined) return ok({ by: 'none', volume_ml: volume.value })
  const amount = numberOf(groups.kind, groups.amount as string)
  if (!amount.ok) return amount
  if (groups.kind === 'rolls') return ok({ by: 'rolls', volume_ml: volume.value, rolls: amount.value, ...of })
  const off = numberOf(groups.kind, groups.off ?? '0')
  return off.ok ? ok({ by: 'reading', volume_ml: volume.value, g_per_l: amount.value, off_by_g_per_l: off.value }) : off
}

function pourOf(pour: Asked): JugPour {
  const volume = pour.volume_ml as Millilitres
  if (pour.by === 'none') return { volume, silver: { by: 'none' } }
  if (pour.by === 'reading')
    return { volume, silver: { by: 'reading', gramsPerLitre: pour.g_per_l, offBy: pour.off_by_g_per_l } }
  const film = pour.silver && { gramsPerM2: pour.silver.g_per_m2, share: pour.silver.share }
  return { volume, silver: { by: 'rolls', rolls: pour.rolls, ...(film === undefined ? {} : { film }) } }
}

function viewOf(question: SilverQuestion, held: SilverHeld, writer: Writer): SilverAnswer {
  const { grams, rule, own, volume, silverRich } = held
  const against = ({ limit, says }: SilverHeld['rule']) => ({ limit_mg_per_l: limit, says })
  return {
    volume_ml: volume,
    silver_rich_ml: silverRich,
    grams,
    g_per_l: held.gramsPerLitre,
    undiluted_mg_per_l: held.undiluted,
    rule: against(rule),
    own: own && against(own),
    origin: held.origin,
    sentences: [
      say('silver.held', { ...grams, volume: volume as Millilitres }, writer),
      say('silver.strength', { gramsPerLitre: held.gramsPerLitre.usual, undiluted: held.undiluted.usual }, writer),
      say('silver.rule', { ...rule, year: SILVER_RULE.asOf }, writer),
      ...(own === null ? [] : [say('silver.own', own, writer)]),
      ...(volume > silverRich ? [say('silver.water', { grams: grams.usual }, writer)] : []),
      say('silver.decides', {}, writer),
    ],
    working: question.pours.map((pour) => lineOf(pour, writer)),
  }
}

function lineOf(pour: Asked, writer: Writer): WorkingLine {
  const volume = pour.volume_ml as Millilitres
  if (pour.by === 'none')
    return { line: say('silver.working.none', { volume }, writer), source: say('silver.source.none', {}, writer) }
  if (pour.by === 'reading')
    return {
      line: say('silver.working.reading', { volume, gramsPerLitre: pour.g_per_l, offBy: pour.off_by_g_per_l }, writer),
      source: say('silver.source.reading', {}, writer),
    }
  return {
    line: say('silver.working.rolls', { volume, rolls: pour.rolls }, writer),
    source: say(pour.silver === undefined ? 'silver.source.rolls' : 'silver.source.film', {}, writer),
  }
}
