import type { Instant } from '../../kernel/index.js'
import type { TankState } from '../events/fold.js'
import { adaptFacts, type OpenFacts, readingsSince } from '../mishaps/adapt.js'
import type { Facts, Laid, StepFacts, Tank, TankPlan } from '../plan/definition.js'
import { layOut } from '../plan/lay-out.js'
import { isBath } from '../recipe/kinds.js'
import type { ReadingTold } from './definition.js'
import { goThrough } from './readings.js'
import type { Followable } from './screen.js'

/** A run so far, laid out under its plan. */
export interface Reckoned {
  /** Instant of the tank's zero, ms. */
  readonly zeroMs: Instant
  readonly facts: Facts
  readonly laid: readonly Laid[]
  readonly readings: readonly ReadingTold[]
}

/**
 * The instant of the tank's zero: told by the earliest step that has been poured; before any pour by the start
 * that was pressed; before that it is when the tank is expected to begin.
 */
export function zeroOf(plan: TankPlan, state: TankState, begins: Instant): Instant {
  for (const { index, in: clockStart, out } of plan.laid) {
    const step = state.steps.get(index)
    const poured = step?.pouredIn ?? null
    if (poured !== null) return poured.at - clockStart * 1000
    const emptied = step?.pouredOut ?? null
    if (emptied !== null) return emptied.at - out * 1000
  }
  return state.started?.at ?? begins
}

/**
 * Lays a run out: what is known, what the readings that count make of it, and what follows from there. A tank that has
 * not begun is expected to begin at `begins`.
 */
export function reckon(plan: TankPlan, state: TankState, now: Instant, begins: Instant = now): Reckoned {
  const zeroMs = zeroOf(plan, state, begins)
  const secondsOf = (at: number): number => (at - zeroMs) / 1000
  const { tank } = plan
  const bare = adaptFacts(bareFacts(tank, state, secondsOf), { tank, state, secondsOf })
  // Once a tank is said to be over nothing waits any more: what nobody confirmed is taken as the plan has it.
  const until = state.finished === null ? secondsOf(now) : null
  const before = laidOut(tank, bare, until)
  const developing = before.find(({ development }) => development?.from === 'basis')
  if (developing === undefined) return { zeroMs, facts: bare, laid: before, readings: [] }
  const { index } = developing
  const since = readingsSince(state)
  const { readings, told } = goThrough(
    {
      development: developing.development as Followable,
      zeroMs,
      clockStart: developing.in,
      pouredOut: bare.get(index)?.pouredOut ?? null,
    },
    state.readings.filter(({ event, at }) => event.bath === index && at > since),
  )
  if (readings.length === 0) return { zeroMs, facts: bare, laid: before, readings: told }
  const facts = new Map(bare).set(index, { ...bare.get(index), readings })
  return { zeroMs, facts, laid: laidOut(tank, facts, until), readings: told }
}

/** A run that was planned can be laid out: what could not be followed was screened away. */
export function laidOut(tank: Tank, facts: Facts, now: number | null): Laid[] {
  const laid = layOut(tank, facts, now)
  if (!laid.ok) throw new Error(`A planned run cannot be laid out: ${laid.problem.sentence}`)
  return laid.value
}

function bareFacts(tank: Tank, state: TankState, secondsOf: (at: number) => number): OpenFacts {
  const facts: OpenFacts = new Map()
  for (const [index, step] of state.steps) {
    const isAct = !isBath(tank.recipe.steps[index] as (typeof tank.recipe.steps)[number])
    const clearing = step.done?.event.clearing ?? null
    const own: StepFacts = {
      ...(step.pouredIn === null ? {} : { pouredIn: secondsOf(step.pouredIn.at) }),
      ...(step.pouredOut === null ? {} : { pouredOut: secondsOf(step.pouredOut.at) }),
      ...(step.skipped === null ? {} : { skipped: true }),
      ...(step.done === null || !isAct ? {} : { done: secondsOf(step.done.at) }),
    }
    facts.set(index, { ...facts.get(index), ...own })
    const clears = clearing === null ? -1 : clearedBath(tank, index)
    if (clearing !== null && clears !== -1) facts.set(clears, { ...facts.get(clears), clearing })
  }
  return facts
}

/** The bath in which a look at step `index` has seen the film clear. */
const clearedBath = (tank: Tank, index: number): number =>
  tank.recipe.steps.findLastIndex((step, i) => i <= index && isBath(step) && step.time.law === 'by-clearing')
