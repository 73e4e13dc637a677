import { dayAt, failed, ok, problem, type Result } from '../../kernel/index.js'
import type { FinishMix, Posted } from '../../wire/index.js'
import type { Context } from '../context.js'
import { zoneOf } from '../rolls/numbers.js'
import type { Rooms } from '../store.js'
import { minus, NOTHING, shareOf, toLedger } from './amounts.js'
import type { Container, Leg, Lot } from './port.js'
import { book, bottleFor, happenedAt, holdingContainer, legOf, nameOf } from './posting.js'
import { posted } from './views.js'

/** What was mixed is a lot: it takes from its packages and fills its bottles, all in one entry. */
export async function finishMix(context: Context, rooms: Rooms, asked: FinishMix): Promise<Result<Posted>> {
  const product = await rooms.products.newest(asked.product_id)
  if (product === null)
    return failed(problem('record.not-found', { what: 'product', id: asked.product_id }, 'product_id'))
  if (product.removed) return failed(problem('record.removed', { what: 'product' }, 'product_id'))
  const named = [...asked.from, ...asked.into].map(({ container_id }) => container_id)
  if (new Set(named).size !== named.length) return failed(problem('shelf.named-twice', {}, 'into'))
  const id = context.ids.next()
  const taken = await takenFrom(rooms, asked)
  if (!taken.ok) return taken
  const filled = await filledInto(rooms, asked, id)
  if (!filled.ok) return filled
  const at = happenedAt(
    context,
    asked.at,
    [...taken.value, ...filled.value].map(({ container }) => container),
  )
  if (!at.ok) return at
  const lot: Lot = {
    id,
    code: await nextCode(context, rooms),
    productId: product.id,
    parts: asked.parts,
    mixedAt: at.value,
    mixedBy: context.actor.id,
    mixed: filled.value.reduce((sum, { leg }) => sum + leg.held, 0),
    note: asked.note,
  }
  if ((await rooms.shelf.addLot(lot, product.statement.name)) === 'taken')
    throw new Error(`Lot ${lot.code} was numbered twice.`)
  const booked = await book(context, rooms, {
    at: at.value,
    note: asked.note,
    told: { kind: 'mixed', parts: asked.parts },
    legs: [...taken.value, ...filled.value].map(({ leg }) => leg),
  })
  return posted(context, rooms, booked, lot)
}

type Booked = { readonly container: Container; readonly leg: Leg }

async function takenFrom(rooms: Rooms, { from }: FinishMix): Promise<Result<Booked[]>> {
  const taken: Booked[] = []
  for (const [i, { container_id, amount }] of from.entries()) {
    const found = await holdingContainer(rooms, container_id, `from[${i}].container_id`)
    if (!found.ok) return found
    const { container } = found.value
    const wanted = toLedger(amount)
    // More than there is stays more than there is, so that the booking refuses it with both figures.
    const share = wanted > container.held ? { ...NOTHING, held: wanted } : shareOf(container, wanted)
    taken.push({ container, leg: legOf(container, minus(share)) })
  }
  return ok(taken)
}

async function filledInto(rooms: Rooms, { into }: FinishMix, lotId: string): Promise<Result<Booked[]>> {
  const filled: Booked[] = []
  for (const [i, { container_id, ml }] of into.entries()) {
    const field = `into[${i}].container_id`
    const found = await bottleFor(rooms, container_id, field)
    if (!found.ok) return found
    const { container } = found.value
    if (container.held > 0) return failed(problem('shelf.not-empty', { name: nameOf(found.value) }, field))
    const held = toLedger(ml)
    filled.push({ container, leg: legOf(container, { held, basis: held }, lotId) })
  }
  return ok(filled)
}

/** `26-007`: the year and a running number, short enough to be typed from a label. */
async function nextCode(context: Context, rooms: Rooms): Promise<string> {
  const year = dayAt(context.clock.now(), await zoneOf(context, rooms)).slice(0, 4)
  const n = await rooms.rolls.nextNumbers('lot', Number(year), 1)
  return `${year.slice(2)}-${String(n).padStart(3, '0')}`
}
