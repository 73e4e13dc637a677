import { all, failed, ok, type Result, readMass, readVolume, type UnitSystem } from '../../kernel/index.js'
import type { ReplenishQuestion } from '../../wire/index.js'
import { writerFor } from '../../words/index.js'
import { tellWorked } from '../answer.js'
import { isJson, jsonIn } from '../asked.js'
import { volumesOf } from '../baths/quantities.js'
import { replenishView } from '../baths/replenish-view.js'
import { listText, rowsOf } from '../lists.js'
import { numbersOf } from '../options.js'
import { type Common, type Output, refuse, typed, unitsOf, usage } from '../output.js'

export interface ReplenishOptions extends Common {
  readonly volume?: string
  readonly rate?: string
  readonly gives?: string
  readonly uses?: string
  readonly replenisher?: string
  readonly start?: string
  readonly rolls?: string
  readonly within?: string
}

/** Prints where a replenished bath settles, and what the book of its volumes comes to. */
export async function replenish(file: string | undefined, options: ReplenishOptions, output: Output): Promise<number> {
  const units = unitsOf(options)
  // Without a file there is no book to read: the bath alone is asked by options.
  const text = file === undefined ? ok(null) : await listText(file)
  if (!text.ok) return refuse(output, text.problem, options)
  const question = await asked(text.value, options, units)
  if (!question.ok) return refuse(output, question.problem, options)
  return tellWorked(replenishView(question.value, writerFor(units)), options, output)
}

async function asked(
  text: string | null,
  options: ReplenishOptions,
  system: UnitSystem,
): Promise<Result<ReplenishQuestion>> {
  if (text !== null && isJson(text)) return jsonIn(text, 'the question', 'replenish-question')
  const volumes = volumesOf(options, ['volume', 'rate'], system)
  if (!volumes.ok) return volumes
  const { volume, rate } = volumes.value
  if (volume === undefined) return failed(usage('Say how much the bath holds: --volume 1L.'))
  const book = text === null ? ok(null) : all(rowsOf(text).rows.map((row) => entryIn(row, system)))
  if (!book.ok) return book
  const bath = rate === undefined ? ok(null) : bathBy(options, volume, rate)
  if (!bath.ok) return bath
  if (bath.value === null && book.value === null)
    return failed(usage('Say how much is replaced a roll (--rate 70mL), or give a file with the book of the bath.'))
  return ok({
    ...(bath.value === null ? {} : { bath: bath.value }),
    ...(book.value === null ? {} : { book: { start_ml: volume, entries: book.value } }),
  })
}

function bathBy(options: ReplenishOptions, volume: number, rate: number): Result<ReplenishQuestion['bath'] | null> {
  const { gives, uses } = options
  const mass = gives ?? uses
  if (mass === undefined || (gives !== undefined && uses !== undefined))
    return failed(usage('Say what a roll gives (--gives 50mg) or what it uses up (--uses 0.1g): one of the two.'))
  const grams = typed(readMass(mass, { system: 'metric', what: 'the mass a roll gives or uses up' }))
  if (!grams.ok) return grams
  const numbers = numbersOf(options, ['replenisher', 'start', 'rolls', 'within'])
  if (!numbers.ok) return numbers
  const { replenisher = 0, start = 0, rolls, within = 5 } = numbers.value
  return ok({
    volume_ml: volume,
    rate_ml: rate,
    per_roll_g: uses === undefined ? grams.value : -grams.value,
    replenisher_g_per_l: replenisher,
    start_g_per_l: start,
    within: within / 100,
    ...(rolls === undefined ? {} : { rolls }),
  })
}

type Entry = NonNullable<ReplenishQuestion['book']>['entries'][number]

/** `70 mL, 50 mL, 20 mL`: added, discarded, carried out; commas part the volumes. */
function entryIn(row: string, system: UnitSystem): Result<Entry> {
  const cells = row.split(/[,;\t]/).map((cell) => cell.trim())
  if (cells.length !== 3)
    return failed(
      usage(`“${row}” is not an entry. Write what was added, discarded and carried out: “70mL, 50mL, 20mL”.`),
    )
  const volumes = all(cells.map((cell) => typed(readVolume(cell === '' ? '0 mL' : cell, { system }))))
  if (!volumes.ok) return volumes
  const [added_ml = 0, discarded_ml = 0, carried_out_ml = 0] = volumes.value
  return ok({ added_ml, discarded_ml, carried_out_ml })
}
