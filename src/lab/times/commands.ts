import { all, ok, type Result } from '../../kernel/index.js'
import type { TimeRecord as TimeView, TimeStatement as TimeWire } from '../../wire/index.js'
import type { Context } from '../context.js'
import { correct, keepFirst, remove, revise, undo } from '../revisions.js'
import type { Rooms } from '../store.js'
import type { TimeRecord } from './port.js'
import { checked } from './rules.js'
import { statementOf, viewOf } from './shape.js'

const WHAT = 'developing time'

async function told(context: Context, rooms: Rooms, done: Result<TimeRecord>): Promise<Result<TimeView>> {
  if (!done.ok) return done
  await rooms.feed.tell({ kind: 'times', subject: done.value.id }, context.clock.now())
  return ok(viewOf(done.value))
}

/** Keeps developing times, all of them or none. */
export async function keepTimes(
  context: Context,
  rooms: Rooms,
  times: readonly TimeWire[],
): Promise<Result<{ times: TimeView[] }>> {
  const statements = all(times.map((time, index) => checked(statementOf(time), `times[${index}]`)))
  if (!statements.ok) return statements
  // What was kept in one act was kept at one instant: the newest are otherwise some of them, by chance.
  const at = context.clock.now()
  const once: Context = { ...context, clock: { now: () => at } }
  const kept: TimeView[] = []
  for (const statement of statements.value) {
    const done = await told(once, rooms, ok(await keepFirst(once, rooms.times, statement)))
    if (!done.ok) return done
    kept.push(done.value)
  }
  return ok({ times: kept })
}

export async function correctTime(
  context: Context,
  rooms: Rooms,
  id: string,
  seen: number,
  time: TimeWire,
): Promise<Result<TimeView>> {
  const statement = checked(statementOf(time), 'statement')
  if (!statement.ok) return statement
  return told(context, rooms, await revise(context, rooms.times, WHAT, id, seen, correct(WHAT, statement.value)))
}

export const removeTime = async (context: Context, rooms: Rooms, id: string, seen: number): Promise<Result<TimeView>> =>
  told(context, rooms, await revise(context, rooms.times, WHAT, id, seen, remove(WHAT)))

export const undoTime = async (context: Context, rooms: Rooms, id: string, seen: number): Promise<Result<TimeView>> =>
  told(context, rooms, await revise(context, rooms.times, WHAT, id, seen, undo(rooms.times)))
