import { failed, type Instant, instantText, ok, problem, type Result } from '../../kernel/index.js'
import type { ChangeRolls, MoveRolls, RollBatch } from '../../wire/index.js'
import type { Context } from '../context.js'
import type { Rooms } from '../store.js'
import { nextRevision, WHAT, within } from './commands.js'
import type { RollEvent, RollRecord } from './port.js'
import { checkRoll } from './rules.js'
import { summaryOf } from './shape.js'
import { mayMove, standingSteps, whereabouts } from './states.js'

/** Rolls that are all there, held for the write. */
async function heldRolls(rooms: Rooms, ids: readonly string[]): Promise<Result<RollRecord[]>> {
  const held = await rooms.rolls.hold(ids)
  const missing = ids.find((id) => !held.some((roll) => roll.id === id))
  return missing === undefined ? ok(held) : failed(problem('record.not-found', { what: WHAT, id: missing }, 'roll_ids'))
}

/** A step for many rolls at once: all take it or none does. Its batch takes it back. */
export async function moveRolls(context: Context, rooms: Rooms, asked: MoveRolls): Promise<Result<RollBatch>> {
  const held = await heldRolls(rooms, asked.roll_ids)
  if (!held.ok) return held
  const inPlan = await areInPlan(rooms, held.value, asked.run_id)
  if (!inPlan.ok) return inPlan
  const at = asked.at === null ? ok(context.clock.now()) : stepTime(context, asked.at)
  if (!at.ok) return at
  const batchId = context.ids.next()
  const moved: RollRecord[] = []
  for (const roll of held.value) {
    const may = mayMove(roll, asked.state, asked.reason)
    if (!may.ok) return may
    if (asked.at !== null && at.value < roll.stateAt)
      return failed(
        problem('roll.step-before-last', { number: roll.number.text, last: instantText(roll.stateAt) }, 'at'),
      )
    moved.push(await step(context, rooms, roll, { ...asked, at: at.value, batchId, retracts: null }))
  }
  return ok({ batch_id: batchId, rolls: moved.map(summaryOf) })
}

/** A roll is of a run only by its plan, which was checked: no step goes round that. */
async function areInPlan(rooms: Rooms, rolls: readonly RollRecord[], runId: string | null): Promise<Result<null>> {
  if (runId === null) return ok(null)
  const run = await rooms.runs.run(runId)
  if (run === null) return failed(problem('record.not-found', { what: 'run', id: runId }, 'run_id'))
  const planned = run.plan.tanks.flatMap(({ on_reels }) => on_reels.map(({ roll }) => roll?.roll_id))
  const other = rolls.find(({ id }) => !planned.includes(id))
  return other === undefined ? ok(null) : failed(problem('roll.not-in-run', { number: other.number.text }, 'run_id'))
}

function stepTime(context: Context, text: string): Result<Instant> {
  const at = Date.parse(text)
  return at <= context.clock.now() ? ok(at) : failed(problem('roll.step-in-future', { at: text }, 'at'))
}

type Step = Pick<MoveRolls, 'run_id' | 'hook' | 'reason'> & {
  readonly state: RollEvent['state']
  readonly at: Instant
  readonly batchId: string | null
  readonly retracts: string | null
}

/** Writes a step of a roll that is held, and where the roll then is. */
export async function step(context: Context, rooms: Rooms, roll: RollRecord, taken: Step): Promise<RollRecord> {
  const event: RollEvent = {
    id: context.ids.next(),
    rollId: roll.id,
    // Steps are told in the order of their instants, so two of one roll never share one.
    at: taken.state === null ? taken.at : Math.max(taken.at, roll.stateAt + 1),
    by: context.actor.id,
    state: taken.state,
    runId: taken.run_id,
    hook: taken.hook,
    reason: taken.reason,
    batchId: taken.batchId,
    retracts: taken.retracts,
  }
  const now = whereabouts(roll.takenInAt, [...(await rooms.rolls.events([roll.id])), event])
  await rooms.rolls.addEvent(event, now)
  await rooms.feed.tell({ kind: 'rolls', subject: roll.id }, context.clock.now())
  return { ...roll, ...now }
}

/** The same words changed on many rolls at once: all of them or none. Its batch takes it back. */
export async function changeRolls(context: Context, rooms: Rooms, asked: ChangeRolls): Promise<Result<RollBatch>> {
  const held = await heldRolls(rooms, asked.roll_ids)
  if (!held.ok) return held
  const { order_id, ...words } = asked.change
  if (order_id != null) {
    const order = await rooms.orders.newest(order_id)
    if (order === null || order.removed)
      return failed(problem('record.not-found', { what: 'order', id: order_id }, 'change.order_id'))
  }
  const batchId = context.ids.next()
  const changed: RollRecord[] = []
  for (const roll of held.value) {
    const sound = checkRoll({ ...roll.statement, ...words })
    if (!sound.ok) return within(sound.problem, 'change')
    const orderId = order_id === undefined ? roll.orderId : order_id
    const revised = await nextRevision(context, rooms, roll, { statement: sound.value, orderId, batchId })
    if (!revised.ok) return revised
    changed.push(revised.value)
  }
  return ok({ batch_id: batchId, rolls: changed.map(summaryOf) })
}

/**
 * Takes back what a batch did, where nothing was done to those rolls since. One roll that went on keeps all of them
 * as they are: half an undo would be worse than none.
 */
export async function undoBatch(context: Context, rooms: Rooms, batchId: string): Promise<Result<RollBatch>> {
  const { revisions, events } = await rooms.rolls.batch(batchId)
  const ids = [...new Set([...revisions, ...events].map(({ rollId }) => rollId))]
  if (ids.length === 0) return failed(problem('record.not-found', { what: 'change', id: batchId }))
  const held = await heldRolls(rooms, ids)
  if (!held.ok) return held
  const undoing = context.ids.next()
  const undone: RollRecord[] = []
  for (const roll of held.value) {
    const revised = revisions.find((revision) => revision.rollId === roll.id)
    const moved = events.find((event) => event.rollId === roll.id && event.state !== null)
    const back = revised
      ? await unrevised(context, rooms, roll, revised.revision, undoing)
      : await unmoved(context, rooms, roll, moved, undoing)
    if (!back.ok) return back
    undone.push(back.value)
  }
  return ok({ batch_id: undoing, rolls: undone.map(summaryOf) })
}

const wentOn = (roll: RollRecord): Result<never> =>
  failed(problem('roll.went-on', { number: roll.number.text }, 'batch_id'))

async function unrevised(
  context: Context,
  rooms: Rooms,
  roll: RollRecord,
  revision: number,
  batchId: string,
): Promise<Result<RollRecord>> {
  if (roll.revision !== revision) return wentOn(roll)
  const before = await rooms.rolls.revision(roll.id, revision - 1)
  if (before === null) throw new Error(`Roll ${roll.id} has no revision ${revision - 1}.`)
  const made = { statement: before.statement, orderId: before.orderId, batchId }
  return nextRevision(context, rooms, roll, made)
}

async function unmoved(
  context: Context,
  rooms: Rooms,
  roll: RollRecord,
  moved: RollEvent | undefined,
  batchId: string,
): Promise<Result<RollRecord>> {
  const last = standingSteps(await rooms.rolls.events([roll.id])).at(-1)
  if (moved === undefined || last?.id !== moved.id) return wentOn(roll)
  const taken: Step = {
    state: null,
    run_id: null,
    hook: '',
    reason: '',
    at: context.clock.now(),
    batchId,
    retracts: moved.id,
  }
  return ok(await step(context, rooms, roll, taken))
}
