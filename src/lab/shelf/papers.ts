import { failed, instantText, millilitres, ok, problem, type Result } from '../../kernel/index.js'
import { silverHeld } from '../../science/index.js'
import type { HandOverFacts, LabelFacts } from '../../wire/index.js'
import type { Context } from '../context.js'
import { writeCsv } from '../rolls/register/csv.js'
import type { Rooms } from '../store.js'
import { fromLedger, toRolls } from './amounts.js'
import { standingEntries } from './ledger.js'
import type { LedgerEntry } from './port.js'
import { lotView } from './views.js'

/** What the label of each of these lots says, in the order of the codes; the first unknown one is refused. */
export async function labelsOf(
  context: Context,
  rooms: Rooms,
  codes: readonly string[],
): Promise<Result<LabelFacts[]>> {
  const devices = new Map((await rooms.people.devices()).map(({ id, name }) => [id, name]))
  const labels: LabelFacts[] = []
  for (const code of codes) {
    const found = await lotView(context, rooms, await rooms.shelf.lotByCode(code), code)
    if (!found.ok) return found
    const { lot, containers } = found.value
    const product = await rooms.products.newest(lot.product_id)
    const ends = containers.flatMap(({ left }) => left?.limits.find(({ by }) => by === 'age')?.ends ?? [])
    labels.push({
      ...{ name: lot.product, code: lot.code, parts: lot.parts, mixed_at: lot.mixed_at },
      mixed_by: devices.get(lot.mixed_by) ?? '',
      use_by: ends.sort()[0] ?? null,
      hazards: product?.statement.hazards ?? [],
    })
  }
  return ok(labels)
}

const NONE = { low: 0, usual: 0, high: 0 }

/** Silver in so much waste, in grams, of which so much held silver and had met so many rolls. */
function silverOf(basis: number, met: number): HandOverFacts['silver_g'] {
  if (basis < 1000) return NONE
  const pour = { volume: millilitres(fromLedger(basis)), silver: { by: 'rolls', rolls: toRolls(met) } as const }
  const held = silverHeld([pour])
  return held.ok ? held.value.grams : NONE
}

/** What the record of a hand-over says. */
export async function handOverOf(rooms: Rooms, entryId: string): Promise<Result<HandOverFacts>> {
  const entry = await rooms.shelf.entry(entryId)
  const leg = entry?.legs[0]
  if (entry === null || entry.told.kind !== 'handed-over' || leg === undefined)
    return failed(problem('record.not-found', { what: 'hand-over', id: entryId }))
  const jug = await rooms.shelf.containers.newest(leg.containerId)
  return ok({
    ...{ at: instantText(entry.at), to: entry.told.to, note: entry.note },
    jug: jug?.statement.name ?? '',
    ml: fromLedger(-leg.held),
    rolls: toRolls(-leg.met),
    silver_g: silverOf(-leg.basis, -leg.met),
  })
}

const COLUMNS = [
  'at',
  'what',
  'jug',
  'of',
  'lot',
  'ml',
  'rolls',
  'silver_g_low',
  'silver_g',
  'silver_g_high',
  'to',
  'by',
  'note',
]

/**
 * Everything that went into jugs and out of them, as a table; what was taken back is not in it. Amounts are never below
 * zero: what happened says which way they went.
 */
export async function wasteLog(rooms: Rooms): Promise<string> {
  const jugs = (await rooms.shelf.all()).filter(({ kind }) => kind === 'jug')
  const entries = standingEntries(await rooms.shelf.entriesOf(jugs.map(({ id }) => id)))
  const ids = [...new Set(entries.flatMap(({ legs }) => legs.map(({ containerId }) => containerId)))]
  const names = new Map((await rooms.shelf.containers.newestOf(ids)).map(({ id, statement }) => [id, statement.name]))
  const lotIds = [...new Set(entries.flatMap(({ legs }) => legs.flatMap(({ lotId }) => lotId ?? [])))]
  const codes = new Map((await rooms.shelf.lots(lotIds)).map(({ id, code }) => [id, code]))
  const isJug = new Set(jugs.map(({ id }) => id))
  return writeCsv([COLUMNS, ...entries.flatMap((entry) => rowOf(entry, isJug, names, codes))])
}

const short = (grams: number): string => String(Number(grams.toPrecision(3)))

function rowOf(
  { at, told, by, note, legs }: LedgerEntry,
  isJug: ReadonlySet<string>,
  names: ReadonlyMap<string, string>,
  codes: ReadonlyMap<string, string>,
): string[][] {
  const into = legs.find(({ containerId }) => isJug.has(containerId))
  if (into === undefined) return []
  const from = legs.find(({ containerId }) => !isJug.has(containerId))
  const silver = silverOf(Math.abs(into.basis), Math.abs(into.met))
  return [
    [
      ...[instantText(at), told.kind, names.get(into.containerId) ?? ''],
      ...[names.get(from?.containerId ?? '') ?? '', codes.get(from?.lotId ?? '') ?? ''],
      ...[String(fromLedger(Math.abs(into.held))), String(toRolls(Math.abs(into.met)))],
      ...[short(silver.low), short(silver.usual), short(silver.high)],
      ...[told.kind === 'handed-over' ? told.to : '', by, note],
    ],
  ]
}
