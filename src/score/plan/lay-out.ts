import { failed, ok, type Result } from '../../kernel/index.js'
import type { Act, Bath, Step } from '../recipe/definition.js'
import { develops, isBath } from '../recipe/kinds.js'
import { isBefore } from '../recipe/moments.js'
import type { Facts, Known, Laid, StepFacts, Tank } from './definition.js'
import { bathLength } from './length.js'

/** Where the laying out has got to. */
interface Cursor {
  /** Hands free of the step before, seconds from the tank's zero. */
  readonly free: number
  /** The last bath that was not skipped. */
  readonly before: Laid | null
}

/**
 * Every step of a tank in time, seconds from its zero (the beginning of the first pour). Without facts and
 * `now` it is the plan; with them it is the run: what was confirmed stands, what is overdue waits at `now`, and
 * everything after follows from there. One function, so that plan and run cannot differ.
 *
 * Cost: linear in steps, plus the dose of the developing bath.
 */
export function layOut(tank: Tank, facts: Facts, now: number | null): Result<Laid[]> {
  const laid: Laid[] = []
  let cursor: Cursor = { free: 0, before: null }
  for (const [index, step] of tank.recipe.steps.entries()) {
    const own = facts.get(index) ?? {}
    const later = nextPress(tank.recipe.steps, facts, index)
    const one = isBath(step)
      ? bathAt(tank, step, { index, own, later, now, cursor })
      : ok(actAt(step, { index, own, later, now, cursor }))
    if (!one.ok) return failed(one.problem)
    laid.push(one.value)
    cursor = onward(cursor, one.value)
  }
  return ok(laid)
}

function onward(cursor: Cursor, one: Laid): Cursor {
  if (one.skipped) return cursor
  if (isBath(one.step)) return { free: one.free, before: one }
  return one.step.within === null ? { ...cursor, free: one.free } : cursor
}

interface Place {
  readonly index: number
  readonly own: StepFacts
  /** The earliest confirmation of a later step, which implies that this one is over. */
  readonly later: number | null
  readonly now: number | null
  readonly cursor: Cursor
}

/** When the next later step that says anything began: a bath poured in or out, an act between baths done. */
function nextPress(steps: readonly Step[], facts: Facts, index: number): number | null {
  for (let i = index + 1; i < steps.length; i++) {
    const [step, own] = [steps[i] as Step, facts.get(i)]
    if (own === undefined) continue
    const pressed = isBath(step) ? (own.pouredIn ?? own.pouredOut) : step.within === null ? own.done : undefined
    if (pressed === undefined) continue
    return isBath(step) && own.pouredIn !== undefined ? pressed - pourBefore(step) : pressed
  }
  return null
}

/** Seconds between the first drop of a bath and its clock's start. */
export const pourBefore = ({ convention, handling }: Bath): number =>
  convention.starts === 'end-of-pour' ? handling.pour.seconds : 0

/** Seconds of draining inside the bath's time. */
export const drainInside = ({ convention, handling }: Bath): number =>
  convention.ends === 'end-of-drain' ? handling.drain.seconds : 0

function bathAt(tank: Tank, bath: Bath, place: Place): Result<Laid> {
  const { index, own, cursor } = place
  const expected = cursor.free + (cursor.before === null ? 0 : bath.handling.cap.seconds) + pourBefore(bath)
  const skipped = own.skipped === true && own.pouredIn === undefined && own.pouredOut === undefined
  if (skipped) return ok(skippedAt(index, bath, cursor.free))
  const started = clockStart(bath, place, expected)
  const length = bathLength(tank, bath, started.at, own)
  if (!length.ok) return length
  const due = Math.max(started.at, started.at + length.value.seconds - drainInside(bath))
  const out = outOf(bath, place, started.at, due)
  return ok({
    index,
    step: bath,
    skipped: false,
    in: started.at,
    inBy: started.by,
    out: out.at,
    outBy: out.by,
    due,
    clockEnd: out.at + drainInside(bath),
    free: out.at + bath.handling.drain.seconds,
    course: length.value.course,
    development: length.value.development,
    agitation: own.agitation ?? bath.agitation,
  })
}

interface Moment {
  readonly at: number
  readonly by: Known
}

/**
 * A bath that goes in as part of one unbreakable change is taken to have gone in at its second once the bath
 * before is out; a developing bath waits to be confirmed, unless it may not be parted from the bath before.
 */
function clockStart(bath: Bath, { own, later, now, cursor }: Place, expected: number): Moment {
  if (own.pouredIn !== undefined) return { at: own.pouredIn, by: 'pressed' }
  const pressed = own.pouredOut ?? later
  if (pressed !== null && pressed !== undefined) return { at: Math.min(expected, pressed), by: 'implied' }
  if (now === null) return { at: expected, by: 'expected' }
  if (isPartOfChange(bath, cursor)) return { at: expected, by: 'implied' }
  return isBefore(expected, now) ? { at: now, by: 'waiting' } : { at: expected, by: 'expected' }
}

function isPartOfChange(bath: Bath, { before, free }: Cursor): boolean {
  if (before === null || !(before.outBy === 'pressed' || before.outBy === 'implied') || before.free !== free)
    return false
  return !develops(bath) || (before.step as Bath).neverPartFromNext
}

function outOf(bath: Bath, { own, later, now }: Place, started: number, due: number): Moment {
  if (own.pouredOut !== undefined) return { at: Math.max(started, own.pouredOut), by: 'pressed' }
  if (later !== null) {
    const latest = later - bath.handling.drain.seconds
    return { at: Math.max(started, Math.min(due, latest)), by: 'implied' }
  }
  if (now === null || !isBefore(due, now)) return { at: due, by: 'expected' }
  return { at: now, by: 'waiting' }
}

const skippedAt = (index: number, step: Step, at: number): Laid => ({
  index,
  step,
  skipped: true,
  in: at,
  inBy: 'implied',
  out: at,
  outBy: 'implied',
  due: at,
  clockEnd: at,
  free: at,
  course: null,
  development: null,
  agitation: null,
})

function actAt(act: Act, { index, own, later, now, cursor }: Place): Laid {
  if (own.skipped === true && own.done === undefined) return skippedAt(index, act, cursor.free)
  const start = act.within === null ? cursor.free : (cursor.before?.in ?? 0) + act.within
  const due = start + act.length.seconds
  const end = endOfAct(act, own, later, now, due)
  const at = end.at
  return {
    ...skippedAt(index, act, start),
    skipped: false,
    in: Math.min(start, at),
    inBy: end.by,
    out: at,
    outBy: end.by,
    due,
    clockEnd: at,
    free: at,
  }
}

function endOfAct(act: Act, own: StepFacts, later: number | null, now: number | null, due: number): Moment {
  if (own.done !== undefined) return { at: own.done, by: 'pressed' }
  if (later !== null) return { at: Math.min(due, later), by: 'implied' }
  // Inside a bath nothing waits for it: the bath's own clock goes on.
  if (now === null || !isBefore(due, now) || act.within !== null) return { at: due, by: 'expected' }
  return { at: now, by: 'waiting' }
}
