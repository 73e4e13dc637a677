import { failed, type Instant, ok, type Problem, problem, type Result } from '../../kernel/index.js'
import { throughList } from '../../planning/index.js'
import type { RollStatement, TakeInRolls, RollRecord as View } from '../../wire/index.js'
import type { Context } from '../context.js'
import { plannedRolls } from '../runs/reels.js'
import type { Rooms } from '../store.js'
import { freshNumbers, numberFromBlock } from './numbers.js'
import type { RollNumber, RollRecord, RollRevision } from './port.js'
import { checkRoll } from './rules.js'
import { freshView, viewOf } from './shape.js'

export const WHAT = 'roll'

export const within = (found: Problem, place: string): Result<never> =>
  failed({ ...found, field: found.field === undefined ? place : `${place}.${found.field}` })

/** Takes rolls in: all of them or, when one cannot be right, none. Each has its number from then on. */
export async function takeInRolls(
  context: Context,
  rooms: Rooms,
  asked: TakeInRolls,
): Promise<Result<{ rolls: View[] }>> {
  if (asked.order_id !== null) {
    const order = await rooms.orders.newest(asked.order_id)
    if (order === null || order.removed)
      return failed(problem('record.not-found', { what: 'order', id: asked.order_id }, 'order_id'))
  }
  const statements: RollStatement[] = []
  for (const [i, { statement }] of asked.rolls.entries()) {
    const sound = checkRoll(statement)
    if (!sound.ok) return within(sound.problem, `rolls[${i}].statement`)
    statements.push(sound.value)
  }
  const numbers = await numbersFor(context, rooms, asked)
  if (!numbers.ok) return numbers
  const twins = await twinsFor(rooms, statements)
  const rolls: RollRecord[] = []
  for (const [i, statement] of statements.entries()) {
    const number = numbers.value[i] as RollNumber
    const roll = newRoll(context, { number, statement, twin: twins[i] ?? null, orderId: asked.order_id })
    if ((await rooms.rolls.add(roll)) === 'taken')
      return within(problem('roll.number-taken', { number: number.text }), `rolls[${i}].number`)
    await rooms.feed.tell({ kind: 'rolls', subject: roll.id }, context.clock.now())
    rolls.push(roll)
  }
  return ok({ rolls: rolls.map(freshView) })
}

type New = Pick<RollRecord, 'number' | 'statement' | 'twin' | 'orderId'>

function newRoll(context: Context, made: New): RollRecord {
  const now: Instant = context.clock.now()
  return {
    ...made,
    id: context.ids.next(),
    takenInAt: now,
    takenInBy: context.actor.id,
    revision: 1,
    state: 'taken-in',
    stateAt: now,
    runId: null,
    hook: '',
  }
}

/** Numbers from the device's own block where it gave one, fresh ones for the rest. */
async function numbersFor(context: Context, rooms: Rooms, asked: TakeInRolls): Promise<Result<RollNumber[]>> {
  const fresh = await freshNumbers(context, rooms, asked.rolls.filter(({ number }) => number === null).length)
  const numbers: RollNumber[] = []
  for (const [i, { number }] of asked.rolls.entries()) {
    const reserved = number === null ? ok(fresh.shift() as RollNumber) : await numberFromBlock(context, rooms, number)
    if (!reserved.ok) return within(reserved.problem, `rolls[${i}].number`)
    numbers.push(reserved.value)
  }
  return ok(numbers)
}

/** Somebody else's film gets a twin-check number: one sticker on the roll, one on the slip. */
async function twinsFor(rooms: Rooms, statements: readonly RollStatement[]): Promise<(number | null)[]> {
  const count = statements.filter(({ whose }) => whose !== null).length
  let next = count === 0 ? 0 : await rooms.rolls.nextNumbers('twin', 0, count)
  return statements.map(({ whose }) => (whose === null ? null : next++))
}

/** A roll whose row is held from here to the end of the write. */
export async function heldRoll(rooms: Rooms, id: string): Promise<Result<RollRecord>> {
  const [roll] = await rooms.rolls.hold([id])
  return roll === undefined ? failed(problem('record.not-found', { what: WHAT, id })) : ok(roll)
}

/**
 * Writes the next revision of a roll that is held. Refused when it says another process or another person of a roll
 * in a plan, so that it could not have been planned there.
 */
export async function nextRevision(
  context: Context,
  rooms: Rooms,
  roll: RollRecord,
  made: Pick<RollRevision, 'statement' | 'orderId' | 'batchId'>,
): Promise<Result<RollRecord>> {
  const fits = await fitsItsPlan(rooms, roll, made.statement)
  if (!fits.ok) return fits
  const revised: RollRecord = { ...roll, revision: roll.revision + 1, statement: made.statement, orderId: made.orderId }
  const now = context.clock.now()
  await rooms.rolls.revise(revised, {
    ...made,
    rollId: roll.id,
    revision: revised.revision,
    savedAt: now,
    savedBy: context.actor.id,
  })
  await rooms.feed.tell({ kind: 'rolls', subject: roll.id }, now)
  return ok(revised)
}

async function fitsItsPlan(rooms: Rooms, { id, number, statement: old }: RollRecord, next: RollStatement) {
  if (old.process === next.process && old.whose === next.whose) return ok('fits')
  const tank = (await plannedRolls(rooms)).get(id)
  if (tank === undefined) return ok('fits')
  const may = throughList({ ...next, number: number.text }, tank.recipe.process, tank.crosses_because ?? '')
  return may.ok ? may : within(may.problem, 'statement.process')
}

const seenAs = (roll: RollRecord, seen: number): Result<null> =>
  roll.revision === seen
    ? ok(null)
    : failed(problem('record.changed-meanwhile', { what: WHAT, current: roll.revision, seen }))

export async function correctRoll(
  context: Context,
  rooms: Rooms,
  id: string,
  seen: number,
  statement: RollStatement,
): Promise<Result<View>> {
  const roll = await heldRoll(rooms, id)
  if (!roll.ok) return roll
  const newest = seenAs(roll.value, seen)
  if (!newest.ok) return newest
  const sound = checkRoll(statement)
  if (!sound.ok) return within(sound.problem, 'statement')
  const made = { statement: sound.value, orderId: roll.value.orderId, batchId: null }
  return shown(rooms, await nextRevision(context, rooms, roll.value, made))
}

/** Goes back to the words before the last correction; undoing twice is redoing. */
export async function undoRoll(context: Context, rooms: Rooms, id: string, seen: number): Promise<Result<View>> {
  const roll = await heldRoll(rooms, id)
  if (!roll.ok) return roll
  const newest = seenAs(roll.value, seen)
  if (!newest.ok) return newest
  const before = await rooms.rolls.revision(id, roll.value.revision - 1)
  if (before === null) return failed(problem('roll.nothing-to-undo', { number: roll.value.number.text }))
  const made = { statement: before.statement, orderId: before.orderId, batchId: null }
  return shown(rooms, await nextRevision(context, rooms, roll.value, made))
}

const shown = async (rooms: Rooms, roll: Result<RollRecord>): Promise<Result<View>> =>
  roll.ok ? ok(await viewOf(rooms, roll.value)) : roll
