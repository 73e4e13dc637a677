import { failed, ok, type Problem, problem, type Result } from '../../kernel/index.js'
import type { AddContainer, ContainerRecord, ContainerStatement } from '../../wire/index.js'
import type { Context } from '../context.js'
import { nameTaken } from '../names.js'
import { type Stated, statementCommands } from '../statements.js'
import type { Rooms } from '../store.js'
import { NOTHING, toLedger } from './amounts.js'
import type { Container } from './port.js'
import { book, CONTAINER, legOf } from './posting.js'
import { recordOf } from './views.js'

const commands = statementCommands<ContainerStatement>({
  what: CONTAINER,
  feed: 'shelf',
  port: (rooms) => rooms.shelf.containers,
  wrong: (statement, others) => taken(statement, others),
})

/** Bottles and jugs are told apart by their names; packages of one product may be alike. */
function taken(statement: ContainerStatement, others: readonly Stated<ContainerStatement>[]): Problem | null {
  if (statement.kind === 'package') return null
  const names = others.flatMap((other) => (other.statement.kind === statement.kind ? other.statement.name : []))
  return nameTaken(statement.kind, statement.name, names, 'statement.name')
}

const roomOf = (statement: ContainerStatement): number | null =>
  statement.kind === 'package' ? null : toLedger(statement.holds_ml)
const unitOf = (statement: ContainerStatement): Container['unit'] =>
  statement.kind === 'package' ? statement.unit : 'ml'

/** A package, bottle or jug comes to the shelf; what is in it is its first entry. */
export async function addContainer(
  context: Context,
  rooms: Rooms,
  asked: AddContainer,
): Promise<Result<ContainerRecord>> {
  const { statement } = asked
  if (statement.kind === 'package') {
    const product = await rooms.products.newest(statement.product_id)
    if (product === null || product.removed)
      return failed(problem('record.not-found', { what: 'product', id: statement.product_id }, 'statement.product_id'))
  }
  const holds = toLedger(asked.holds ?? (statement.kind === 'package' ? statement.full : 0))
  if (statement.kind === 'bottle' && holds > 0)
    return failed(problem('shelf.bottles-come-empty', { name: statement.name }, 'holds'))
  const kept = await commands.keep(context, rooms, statement)
  if (!kept.ok) return kept
  const at = context.clock.now()
  const container: Container = {
    ...NOTHING,
    id: kept.value.id,
    kind: statement.kind,
    unit: unitOf(statement),
    room: roomOf(statement),
    lotId: null,
    seq: 0,
    changedAt: at,
  }
  await rooms.shelf.addContainer(container)
  if (holds > 0) {
    // Waste that was there before the book began is taken as holding silver.
    const legs = [legOf(container, { held: holds, basis: holds })]
    const booked = await book(context, rooms, { at, note: '', told: { kind: 'brought-in' }, legs })
    if (!booked.ok) return booked
  }
  return shown(rooms, ok(kept.value))
}

export async function correctContainer(
  context: Context,
  rooms: Rooms,
  id: string,
  seen: number,
  statement: ContainerStatement,
): Promise<Result<ContainerRecord>> {
  const [container, before] = [await rooms.shelf.container(id), await rooms.shelf.containers.newest(id)]
  if (container === null || before === null) return failed(problem('record.not-found', { what: CONTAINER, id }))
  const other = before.statement
  const sameProduct =
    other.kind !== 'package' || (statement.kind === 'package' && other.product_id === statement.product_id)
  if (statement.kind !== container.kind || unitOf(statement) !== container.unit || !sameProduct)
    return failed(problem('shelf.stays-what-it-is', {}, 'statement.kind'))
  const room = roomOf(statement)
  if (room !== null && room < container.held)
    return failed(problem('shelf.holds-more', { held: container.held / 1000, room: room / 1000 }, 'statement.holds_ml'))
  if (room !== null) await rooms.shelf.setRoom(id, room)
  return shown(rooms, await commands.correct(context, rooms, id, seen, statement))
}

/** Only an empty one goes: what is in it would be lost from the book. */
export async function removeContainer(
  context: Context,
  rooms: Rooms,
  id: string,
  seen: number,
): Promise<Result<ContainerRecord>> {
  const container = await rooms.shelf.container(id)
  if (container !== null && container.held > 0) return failed(problem('shelf.goes-when-empty', {}))
  return shown(rooms, await commands.remove(context, rooms, id, seen))
}

/** The words before the last change; what is in it is not words, and is taken back by its entry. */
export async function undoContainer(
  context: Context,
  rooms: Rooms,
  id: string,
  seen: number,
): Promise<Result<ContainerRecord>> {
  const done = await commands.undo(context, rooms, id, seen)
  if (!done.ok) return done
  const container = await rooms.shelf.container(id)
  if (done.value.removed && container !== null && container.held > 0)
    return failed(problem('shelf.goes-when-empty', {}))
  const room = roomOf(done.value.statement)
  if (room !== null && container !== null) {
    if (room < container.held)
      return failed(problem('shelf.holds-more', { held: container.held / 1000, room: room / 1000 }))
    await rooms.shelf.setRoom(id, room)
  }
  return shown(rooms, done)
}

async function shown(rooms: Rooms, done: Result<Stated<ContainerStatement>>): Promise<Result<ContainerRecord>> {
  if (!done.ok) return done
  const container = await rooms.shelf.container(done.value.id)
  if (container === null) throw new Error(`Container ${done.value.id} has words and no row.`)
  return ok(recordOf(container, done.value))
}
