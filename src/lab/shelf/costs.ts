import { failed, ok, problem, type Result } from '../../kernel/index.js'
import type { ProductStatement, RunCost, ShelfCost } from '../../wire/index.js'
import type { Rooms } from '../store.js'
import { fromLedger, toRolls } from './amounts.js'
import { standingEntries } from './ledger.js'
import { rollsPerLitre } from './limits.js'
import type { LedgerEntry, Lot } from './port.js'
import { productsOf } from './products.js'

/** Money in one currency, and whether everything that went in had a price. */
interface Sum {
  readonly minor: number
  readonly currency: string
  readonly whole: boolean
}

/** Stock of stock of stock: nobody mixes further, and a circle would never end. */
const DEEPEST = 6

/** What went into a lot costs, by the prices on its packages; null where none of them has one, or where currencies differ. */
async function sumOf(rooms: Rooms, lotId: string, entries: readonly LedgerEntry[], depth = 0): Promise<Sum | null> {
  let [minor, whole, currency] = [0, true, null as string | null]
  for (const entry of standingEntries(entries)) {
    if (entry.told.kind !== 'mixed' && entry.told.kind !== 'topped-up') continue
    if (!entry.legs.some((leg) => leg.lotId === lotId && leg.held > 0)) continue
    for (const leg of entry.legs.filter(({ held }) => held < 0)) {
      const part = await partOf(rooms, leg, depth)
      if (part === null) whole = false
      else if (currency !== null && currency !== part.currency) return null
      else [minor, whole, currency] = [minor + part.minor, whole && part.whole, part.currency]
    }
  }
  return currency === null ? null : { minor, currency, whole }
}

async function partOf(rooms: Rooms, leg: LedgerEntry['legs'][number], depth: number): Promise<Sum | null> {
  if (leg.lotId === null) {
    const said = await rooms.shelf.containers.newest(leg.containerId)
    if (said?.statement.kind !== 'package' || said.statement.price === null) return null
    const { price, full } = said.statement
    return { minor: (price.minor * fromLedger(-leg.held)) / full, currency: price.currency, whole: true }
  }
  const lot = depth < DEEPEST ? await rooms.shelf.lot(leg.lotId) : null
  const sum = lot === null ? null : await sumOf(rooms, lot.id, await rooms.shelf.entriesOfLots([lot.id]), depth + 1)
  return lot === null || sum === null ? null : { ...sum, minor: (sum.minor * -leg.held) / lot.mixed }
}

/** Everything that came into a lot: as it was mixed, and what topped it up since. */
const madeOf = (lot: Lot, entries: readonly LedgerEntry[]): number =>
  standingEntries(entries).reduce(
    (sum, { told, legs }) =>
      told.kind === 'topped-up'
        ? sum + legs.reduce((some, leg) => some + (leg.lotId === lot.id ? Math.max(0, leg.held) : 0), 0)
        : sum,
    lot.mixed,
  )

/** What a lot costs, and a roll in it: by its count where it has one, else by the film that it met and what that took. */
export async function costOfLot(
  rooms: Rooms,
  lot: Lot,
  product: ProductStatement,
  entries: readonly LedgerEntry[],
): Promise<ShelfCost | null> {
  const sum = await sumOf(rooms, lot.id, entries)
  if (sum === null) return null
  const { minor, currency, whole } = sum
  return { minor, currency, whole, per_roll_minor: perRoll(minor, lot, product, entries) }
}

function perRoll(minor: number, lot: Lot, product: ProductStatement, entries: readonly LedgerEntry[]): number | null {
  const made = madeOf(lot, entries)
  const capacity = product.use === 'single-use' ? null : rollsPerLitre(product)
  if (capacity !== null) return minor / ((capacity.value * fromLedger(made)) / 1000)
  let [rolls, poured] = [0, 0]
  for (const { told } of standingEntries(entries))
    if (told.kind === 'used') [rolls, poured] = [rolls + told.rolls, poured + told.poured_ml]
  if (rolls === 0) return null
  // A bath that goes back costs all of itself; one that is used once costs what was poured.
  return (minor * (product.use === 'single-use' ? Math.min(1, poured / fromLedger(made)) : 1)) / rolls
}

/** What a run took of the lots that were booked for it; null where nothing of it has a price. */
export async function costOfRun(rooms: Rooms, runId: string): Promise<Result<RunCost>> {
  if ((await rooms.runs.run(runId)) === null) return failed(problem('record.not-found', { what: 'run', id: runId }))
  const uses = await rooms.shelf.usesOfRun(runId)
  const lots = await rooms.shelf.lots([
    ...new Set(uses.flatMap(({ legs }) => legs.flatMap(({ lotId }) => lotId ?? []))),
  ])
  const products = await productsOf(
    rooms,
    lots.map(({ productId }) => productId),
  )
  const baths: RunCost['baths'] = []
  for (const lot of lots) {
    const product = products.get(lot.productId)
    if (product === undefined) continue
    const entries = await rooms.shelf.entriesOfLots([lot.id])
    const cost = await costOfLot(rooms, lot, product, entries)
    const own = uses.filter(({ legs }) => legs.some(({ lotId }) => lotId === lot.id))
    const minor = cost === null ? null : takenBy(own, cost, lot, product, entries)
    baths.push({ lot_id: lot.id, code: lot.code, product: product.name, minor, currency: cost?.currency ?? null })
  }
  const priced = baths.filter(({ minor }) => minor !== null)
  const currencies = new Set(priced.map(({ currency }) => currency))
  const one = currencies.size === 1 ? (priced[0]?.currency ?? null) : null
  const minor = one === null ? null : priced.reduce((sum, bath) => sum + (bath.minor ?? 0), 0)
  return ok({ baths, minor, currency: one, whole: priced.length === baths.length })
}

function takenBy(
  uses: readonly LedgerEntry[],
  { minor, per_roll_minor }: ShelfCost,
  lot: Lot,
  product: ProductStatement,
  entries: readonly LedgerEntry[],
): number | null {
  if (product.use === 'single-use') {
    const poured = uses.reduce((sum, { told }) => sum + (told.kind === 'used' ? told.poured_ml : 0), 0)
    return (minor * poured) / fromLedger(madeOf(lot, entries))
  }
  const worked = uses.reduce((sum, { legs }) => sum + legs.reduce((some, leg) => some + leg.worked, 0), 0)
  return per_roll_minor === null ? null : per_roll_minor * toRolls(worked)
}
