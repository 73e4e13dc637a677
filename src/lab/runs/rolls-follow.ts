import type { Instant } from '../../kernel/index.js'
import type { TankFollowing } from '../../score/index.js'
import type { Context } from '../context.js'
import { step } from '../rolls/many.js'
import type { RollEvent, RollRecord, RollState } from '../rolls/port.js'
import { mayMove, standingSteps } from '../rolls/states.js'
import type { Rooms } from '../store.js'
import type { Progress, RunRecord } from './port.js'
import type { Followed } from './queries.js'

/** Where a run that is under way has its rolls; null while they still wait. */
type Put = Extract<RollState, 'loaded' | 'developed'>

/** An abandoned tank had its film in it as soon as something was poured; what becomes of it a person says. */
function putBy({ phase }: TankFollowing, { state }: Followed, name: string): Put | null {
  if (phase === 'done') return 'developed'
  if (phase === 'running') return 'loaded'
  if (phase === 'not-started') return null
  const steps = state.tanks.find(({ tank }) => tank === name)?.steps.values() ?? []
  return [...steps].some(({ pouredIn }) => pouredIn !== undefined) ? 'loaded' : null
}

/**
 * Moves the rolls of a run along with it, in the same write as the events: loaded when their tank is under way,
 * developed when it is done, back to waiting when its beginning was a mistake. What it comes to depends on all
 * events alone, so events that come late, twice or in another order move nothing twice. A roll that went on by
 * hand since (hung, lost) stays where it is. While a device's time is in doubt nothing moves.
 */
export async function moveRollsOf(
  context: Context,
  rooms: Rooms,
  run: RunRecord,
  followed: Followed,
  { startedAt, endedAt }: Progress,
): Promise<void> {
  const now = context.clock.now()
  const when = { loaded: Math.min(startedAt ?? now, now), developed: Math.min(endedAt ?? now, now) }
  const put = new Map<string, Put | null>()
  for (const { conditions, on_reels } of run.plan.tanks) {
    const tank = followed.following.tanks.find(({ tank: name }) => name === conditions.tank)
    if (tank === undefined) continue
    for (const { roll } of on_reels) if (roll) put.set(roll.roll_id, putBy(tank, followed, conditions.tank))
  }
  if (put.size === 0) return
  const held = await rooms.rolls.hold([...put.keys()])
  const events = await rooms.rolls.events([...put.keys()])
  for (const roll of held) {
    const own = events.filter(({ rollId }) => rollId === roll.id)
    await moveRoll(context, rooms, run, { roll, own, put: put.get(roll.id) ?? null, when })
  }
}

interface Move {
  readonly roll: RollRecord
  readonly own: readonly RollEvent[]
  readonly put: Put | null
  /** When the run began and ended, not when that became known. */
  readonly when: Readonly<Record<Put, Instant>>
}

async function moveRoll(context: Context, rooms: Rooms, run: RunRecord, { roll, own, put, when }: Move): Promise<void> {
  // The run's own last step, while nothing has happened to the roll since.
  const last = standingSteps(own).at(-1)
  const byRun = last?.runId === run.id && (last.state === 'loaded' || last.state === 'developed') ? last : null
  if (byRun !== null && beyond(byRun.state as Put, put)) {
    const back = {
      state: null,
      run_id: null,
      hook: '',
      reason: '',
      at: context.clock.now(),
      batchId: null,
      retracts: byRun.id,
    }
    const moved = await step(context, rooms, roll, back)
    const retracting = { ...byRun, id: '', state: null, runId: null, retracts: byRun.id }
    return moveRoll(context, rooms, run, { roll: moved, own: [...own, retracting], put, when })
  }
  const others = roll.runId !== null && roll.runId !== run.id
  if (put === null || others || !mayMove(roll, put, '').ok) return
  await step(context, rooms, roll, {
    state: put,
    run_id: run.id,
    hook: '',
    reason: '',
    at: when[put],
    batchId: null,
    retracts: null,
  })
}

const beyond = (state: Put, put: Put | null): boolean => put === null || (state === 'developed' && put === 'loaded')
