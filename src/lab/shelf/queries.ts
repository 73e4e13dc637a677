import {
  compareNames,
  DAY_MS,
  failed,
  instantText,
  type Millilitres,
  millilitres,
  ok,
  problem,
  type Result,
} from '../../kernel/index.js'
import { silverHeld } from '../../science/index.js'
import type { FindLots, JugView, LotHeads, LotView, Shelf } from '../../wire/index.js'
import type { Context } from '../context.js'
import type { Rooms } from '../store.js'
import { fromLedger, toRolls } from './amounts.js'
import { standingEntries } from './ledger.js'
import { dateText } from './left.js'
import type { Container, LedgerEntry } from './port.js'
import { productsOf } from './products.js'
import { headOf, type Known, knownOf, lotView, onShelf, recordOf } from './views.js'

/** All that stands on the shelf, by name: bottles, packages, jugs of waste. */
export async function shelf(context: Context, rooms: Rooms): Promise<Shelf> {
  const containers = await rooms.shelf.all()
  const known = await knownOf(rooms, containers)
  const jugs = containers.filter(({ kind }) => kind === 'jug')
  const poured = await rooms.shelf.entriesOf(jugs.map(({ id }) => id))
  const shown = containers.flatMap((container) =>
    container.kind === 'jug' ? [] : (onShelf(context, known, container) ?? []),
  )
  const named = (one: (typeof shown)[number]) => one.statement.name || one.product
  const ordered = shown.sort((a, b) => compareNames(named(a), named(b)) || (a.id < b.id ? -1 : 1))
  return {
    bottles: ordered.filter(({ statement }) => statement.kind === 'bottle'),
    packages: ordered.filter(({ statement }) => statement.kind === 'package'),
    jugs: jugs
      .flatMap((jug) => jugView(context, known, jug, poured) ?? [])
      .sort((a, b) => compareNames(a.name, b.name)),
  }
}

const NO_SILVER = { low: 0, usual: 0, high: 0 }

/** A jug with its silver as an estimate, and when it will be full at the present pace. */
function jugView(context: Context, known: Known, jug: Container, all: readonly LedgerEntry[]): JugView | null {
  const said = known.said.get(jug.id)
  if (said === undefined || said.statement.kind !== 'jug') return null
  const { held, basis, met } = jug
  const silver = silverIn(held, basis, met)
  const opened = openedAt(jug.id, all)
  const free = (jug.room ?? held) - held
  const now = context.clock.now()
  const days = opened === null ? 0 : Math.max(1, (now - opened) / DAY_MS)
  const fullOn = opened === null || held === 0 || free <= 0 ? null : now + (free / held) * days * DAY_MS
  return {
    id: jug.id,
    name: said.statement.name,
    holds_ml: said.statement.holds_ml,
    held_ml: fromLedger(held),
    silver_rich_ml: fromLedger(basis),
    rolls: toRolls(met),
    silver_g: silver,
    opened_at: opened === null ? null : instantText(opened),
    // Less room than a tank's bath takes is no room.
    full: free < FULL_UNDER_UL,
    full_on: dateText(fullOn, now),
    record: recordOf(jug, said),
  }
}

const FULL_UNDER_UL = 250_000

function silverIn(held: number, basis: number, met: number): JugView['silver_g'] {
  const ml = (amount: number): Millilitres => millilitres(fromLedger(amount))
  const rest = held - basis
  const pours = [
    ...(basis >= 1000 ? [{ volume: ml(basis), silver: { by: 'rolls', rolls: toRolls(met) } as const }] : []),
    ...(rest >= 1000 ? [{ volume: ml(rest), silver: { by: 'none' } as const }] : []),
  ]
  const silver = pours.length === 0 ? null : silverHeld(pours)
  return silver?.ok ? silver.value.grams : NO_SILVER
}

/** When the first waste of this filling went in. */
function openedAt(jugId: string, entries: readonly LedgerEntry[]): number | null {
  let [held, opened] = [0, null as number | null]
  for (const entry of standingEntries(entries)) {
    const leg = entry.legs.find(({ containerId }) => containerId === jugId)
    if (leg === undefined) continue
    if (held <= 0) opened = entry.at
    held += leg.held
    if (held <= 0) opened = null
  }
  return opened
}

export async function getLot(context: Context, rooms: Rooms, id: string): Promise<Result<LotView>> {
  return lotView(context, rooms, await rooms.shelf.lot(id), id)
}

/** By the code on its label, as it was typed or scanned: a whole address will do. */
export async function lotByCode(context: Context, rooms: Rooms, typed: string): Promise<Result<LotView>> {
  const code = typed.trim().split('/').at(-1) ?? ''
  return lotView(context, rooms, await rooms.shelf.lotByCode(code), code)
}

const AFTER = /^(\d+)_([0-9a-f-]{36})$/

/** Lots of all times, newest first, a page at a time. */
export async function findLots(rooms: Rooms, { words, after, most }: FindLots): Promise<Result<LotHeads>> {
  const place = after === null ? null : after.match(AFTER)
  if (after !== null && place === null)
    return failed(problem('request.invalid', { reason: `“${after}” is no place in a list of lots.` }, 'after'))
  const from = place === null ? null : { mixedAt: Number(place[1]), id: place[2] as string }
  const { lots, found } = await rooms.shelf.findLots({ words, after: from, most })
  const products = await productsOf(
    rooms,
    lots.map(({ productId }) => productId),
  )
  const heads = lots.flatMap((lot) => {
    const product = products.get(lot.productId)
    return product === undefined ? [] : [headOf(lot, product)]
  })
  const last = lots.length === most ? lots.at(-1) : undefined
  return ok({ lots: heads, found, next: last ? `${last.mixedAt}_${last.id}` : null })
}
