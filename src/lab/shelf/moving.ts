import { failed, problem, type Result } from '../../kernel/index.js'
import type { Discard, HandOver, MeasureContents, MovePortion, Posted } from '../../wire/index.js'
import type { Context } from '../context.js'
import type { Rooms } from '../store.js'
import { fromLedger, minus, NOTHING, shareOf, toLedger } from './amounts.js'
import { mayGoInto } from './jugs.js'
import type { Portion } from './port.js'
import { book, bottleFor, happenedAt, holdingContainer, legOf, nameOf, standingContainer } from './posting.js'
import { posted } from './views.js'

const amountOf = (asked: number | null, held: number): number => (asked === null ? held : toLedger(asked))

/** Pours a portion into another bottle of the same lot or an empty one; or tops a bath up from any bottle or package. */
export async function movePortion(context: Context, rooms: Rooms, asked: MovePortion): Promise<Result<Posted>> {
  if (asked.from_id === asked.into_id) return failed(problem('shelf.into-itself', {}, 'into_id'))
  const from = await holdingContainer(rooms, asked.from_id, 'from_id')
  if (!from.ok) return from
  const into = await bottleFor(rooms, asked.into_id, 'into_id')
  if (!into.ok) return into
  const [source, target] = [from.value.container, into.value.container]
  const tops = asked.top_up
  if (tops && target.lotId === null) return failed(problem('shelf.empty', { name: nameOf(into.value) }, 'into_id'))
  if (source.unit !== 'ml' || (!tops && from.value.statement.kind !== 'bottle'))
    return failed(problem('shelf.mix-it-first', { name: nameOf(from.value) }, 'from_id'))
  const at = happenedAt(context, asked.at, [source, target])
  if (!at.ok) return at
  const share = shareOf(source, amountOf(asked.amount, source.held))
  const booked = await book(context, rooms, {
    at: at.value,
    note: asked.note,
    told: { kind: tops ? 'topped-up' : 'moved' },
    legs: [legOf(source, minus(share)), legOf(target, share, tops ? target.lotId : source.lotId)],
  })
  return posted(context, rooms, booked)
}

/** Spent baths go into a jug; only what holds no silver and is no poison may be said to have gone another way. */
export async function discard(context: Context, rooms: Rooms, asked: Discard): Promise<Result<Posted>> {
  const found = await holdingContainer(rooms, asked.container_id, 'container_id')
  if (!found.ok) return found
  const { container, product } = found.value
  const jug = asked.where === 'jug' ? await jugFor(rooms, asked.jug_id) : null
  if (jug !== null && !jug.ok) return jug
  const may = await mayGoInto(rooms, { product, unit: container.unit, where: asked.where, jug: jug?.value ?? null })
  if (!may.ok) return may
  const at = happenedAt(context, asked.at, [container, ...(jug === null ? [] : [jug.value.container])])
  if (!at.ok) return at
  const share = shareOf(container, amountOf(asked.amount, container.held))
  // In a jug only the volume, and of a fixer its silver, live on.
  const silver = product.role === 'fixer'
  const waste: Portion = { ...NOTHING, held: share.held, basis: silver ? share.held : 0, met: silver ? share.met : 0 }
  const booked = await book(context, rooms, {
    at: at.value,
    note: asked.note,
    told: { kind: 'discarded', where: asked.where },
    legs: [legOf(container, minus(share)), ...(jug === null ? [] : [legOf(jug.value.container, waste, null)])],
  })
  return posted(context, rooms, booked)
}

async function jugFor(rooms: Rooms, id: string | null) {
  if (id === null) return failed(problem('shelf.which-jug', {}, 'jug_id'))
  const found = await standingContainer(rooms, id, 'jug_id')
  if (!found.ok || found.value.statement.kind === 'jug') return found
  return failed(problem('shelf.not-a-jug', { name: nameOf(found.value) }, 'jug_id'))
}

/** Waste given to whoever takes it: a jug's contents, or a part, with what silver is in that. */
export async function handOver(context: Context, rooms: Rooms, asked: HandOver): Promise<Result<Posted>> {
  const jug = await jugFor(rooms, asked.jug_id)
  if (!jug.ok) return jug
  const { container } = jug.value
  if (container.held <= 0) return failed(problem('shelf.empty', { name: nameOf(jug.value) }, 'jug_id'))
  const at = happenedAt(context, asked.at, [container])
  if (!at.ok) return at
  const share = shareOf(container, amountOf(asked.ml, container.held))
  const booked = await book(context, rooms, {
    at: at.value,
    note: asked.note,
    told: { kind: 'handed-over', to: asked.to },
    legs: [legOf(container, minus(share))],
  })
  return posted(context, rooms, booked)
}

/** What was found by measuring, where the book says otherwise. The difference is an entry, and the old book stays. */
export async function measureContents(context: Context, rooms: Rooms, asked: MeasureContents): Promise<Result<Posted>> {
  const found = await standingContainer(rooms, asked.container_id, 'container_id')
  if (!found.ok) return found
  const { container, statement } = found.value
  if (container.held <= 0) return failed(problem('shelf.empty', { name: nameOf(found.value) }, 'container_id'))
  if (toLedger(asked.seen) !== container.held)
    return failed(problem('shelf.changed-meanwhile', { name: nameOf(found.value) }))
  const at = happenedAt(context, asked.at, [container])
  if (!at.ok) return at
  const change = toLedger(asked.found) - container.held
  // A package's count goes by what is in it; a bath's by what it was filled with.
  const alone =
    statement.kind === 'package' ? { held: change, basis: Math.max(change, -container.basis) } : { held: change }
  const booked = await book(context, rooms, {
    at: at.value,
    note: asked.note,
    told: { kind: 'measured', found: fromLedger(toLedger(asked.found)) },
    legs: [legOf(container, asked.found === 0 ? minus(shareOf(container, container.held)) : alone)],
    demands: { [container.id]: { seen: container.seq } },
  })
  return posted(context, rooms, booked)
}
