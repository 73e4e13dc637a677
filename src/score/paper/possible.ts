import { dayAt, type Instant, type Problem, type TimeOfDay, wallClocks } from '../../kernel/index.js'
import type { RunEvent } from '../events/definition.js'
import { fold, type Placed, type TankState } from '../events/fold.js'
import { isFromPaper } from '../events/paper.js'
import type { Score, TankPlan } from '../plan/definition.js'
import { pourBefore } from '../plan/lay-out.js'
import { isBath } from '../recipe/kinds.js'
import { type SheetMoment, sheetMoments } from './moments.js'
import { aheadOf, type Place, timeAt } from './place.js'
import { beforeZero, type Dated, lastBefore, outOfOrder } from './tank.js'

/** Where and when events of a sheet came in. */
export interface CameIn {
  readonly zone: string
  readonly now: Instant
}

/** What cannot have been so, and the event that says it. */
export interface Impossible {
  readonly id: string
  readonly problem: Problem
}

/** The clock of the device on which a sheet was typed may be fast by so much, ms. Assumption. */
const FAST_MS = 60_000

/**
 * Whether what was typed in from paper can have been so, once it stands beside what is known: no instant that has not
 * come, no bath out before it went in, no step before the one that it follows. The form of the sheet finds the same
 * while it is typed; this is for whoever sends events without it. Null where all of it can be. What a screen wrote
 * down itself is never judged: its clock is a matter of its own.
 *
 * Of a whole run, so that a sheet which is sent in parts, or corrected, is judged by what stands in the end.
 */
export function impossibleOnPaper(
  score: Score,
  known: readonly RunEvent[],
  fresh: readonly RunEvent[],
  { zone, now }: CameIn,
): Impossible | null {
  const judged = new Set(fresh.filter(isFromPaper).map(({ id }) => id))
  if (judged.size === 0) return null
  const place = { clocks: wallClocks(zone), now: now + FAST_MS }
  const { events, tanks } = fold(score, [...known, ...fresh])
  const typed = events.filter(({ event, stands }) => stands && judged.has(event.id))
  for (const one of typed) {
    const ahead = notYet(one, { ...place, day: dayAt(one.at, zone) })
    if (ahead !== null) return { id: one.event.id, problem: ahead }
  }
  for (const plan of score.tanks) {
    const tank = tanks.find((one) => one.tank === plan.tank.tank)
    const found = tank === undefined ? null : disorderIn(plan, tank, { ...place, day: '' }, judged)
    if (found !== null) return found
  }
  return null
}

function notYet(one: Placed, place: Place): Problem | null {
  return one.event.kind === 'retracted' || isPlaced(one) ? null : aheadOf(place.now, one.at, timeOf(one, place), place)
}

/** Without a time of its own: it stands where the program put it. */
const isPlaced = ({ event: { statedTo } }: Placed): boolean => statedTo === 'placed'

const timeOf = ({ at, event: { statedTo } }: Placed, place: Pick<Place, 'clocks'>): TimeOfDay => ({
  ...timeAt(at, place),
  to: statedTo === 'minute' ? 'minute' : 'second',
})

/** A moment of the sheet with the event that tells it. */
interface Told extends Dated {
  readonly id: string
}

/** The first moment of a tank that would come before the one it follows, one of the two typed just now. */
function disorderIn(plan: TankPlan, tank: TankState, place: Place, judged: ReadonlySet<string>): Impossible | null {
  const { started } = tank
  const zero = started === null ? null : { at: started.at, planned: plan.tank.offset, time: timeOf(started, place) }
  const told: Told[] = []
  for (const moment of sheetMoments(plan)) {
    const one = toldOf(plan, tank, moment, place)
    if (one === null) continue
    const before = lastBefore(told, moment)
    const found = outOfOrder(one, before) ?? beforeZero(one, { ...place, zero })
    const follows = before?.id ?? started?.event.id ?? ''
    if (found !== null && (judged.has(one.id) || judged.has(follows))) return { id: one.id, problem: found }
    told.push(one)
  }
  return null
}

function toldOf({ laid }: TankPlan, { steps }: TankState, moment: SheetMoment, place: Place): Told | null {
  const state = steps.get(moment.index)
  const found = { in: state?.pouredIn, out: state?.pouredOut, done: state?.done }[moment.side] ?? null
  if (found === null || isPlaced(found)) return null
  const step = laid[moment.index]?.step
  const pour = moment.side === 'in' && step !== undefined && isBath(step) ? pourBefore(step) * 1000 : 0
  const drop: Placed = { ...found, at: found.at - pour }
  const byScreen = !isFromPaper(found.event)
  return { moment, at: drop.at, time: timeOf(drop, place), byScreen, id: found.event.id }
}
