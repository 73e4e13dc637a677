import { type Instant, type Problem, problem, type TimeOfDay, writeTimeOnClock } from '../../kernel/index.js'
import type { StepState, TankState } from '../events/fold.js'
import type { TankPlan } from '../plan/definition.js'
import { pourBefore } from '../plan/lay-out.js'
import { isBath } from '../recipe/kinds.js'
import type { Finding, WrittenStep, WrittenTank } from './definition.js'
import { boxOf, type SheetMoment, type Side, sheetMoments } from './moments.js'
import { type Anchor, aheadOf, expectedAt, instantOf, oddAt, type Place, surelyBefore, timeAt } from './place.js'

/** A moment of a tank with its instant, by the sheet or by what a screen wrote down before. */
export interface Dated {
  readonly moment: SheetMoment
  readonly at: Instant
  readonly time: TimeOfDay
  readonly byScreen: boolean
}

export interface DatedTank {
  readonly dated: readonly Dated[]
  readonly moments: readonly (readonly [field: string, at: Instant])[]
  readonly findings: readonly Finding[]
}

const FIELD = { in: 'in_at', out: 'out_at', done: 'done_at' } as const

/**
 * Gives every moment of a tank its instant, one after the other, each nearest to where the one before it leads to
 * expect it. What cannot be is found and leads nowhere.
 */
export function dateTank(
  plan: TankPlan,
  written: WrittenTank,
  field: string,
  start: Anchor | null,
  place: Place,
  known: TankState | undefined,
): DatedTank {
  const dated: Dated[] = []
  const moments: [string, Instant][] = []
  const findings: Finding[] = []
  for (const moment of sheetMoments(plan)) {
    const at = written.steps.findIndex(({ step }) => step === moment.index)
    const own = written.steps[at]
    const place_ = `${field}.steps[${at}].${FIELD[moment.side]}`
    const time = boxOf(own, moment.side)
    const byScreen = knownAt(plan, known?.steps.get(moment.index), moment)
    const find = (found: Problem | null, stands: Finding['stands']) => {
      if (found !== null) findings.push({ field: place_, problem: found, stands })
      return found !== null
    }
    if (byScreen !== null) {
      const shown = timeAt(byScreen, place)
      if (time !== null) find(problem('paper.known', { name: moment.name, at: writeTimeOnClock(shown) }), 'never')
      dated.push({ moment, at: byScreen, time: shown, byScreen: true })
      continue
    }
    if (time === null || own === undefined) continue
    if (own.leftOut !== null) {
      find(problem('paper.left-out', { name: moment.name }), 'never')
      continue
    }
    const before = lastBefore(dated, moment)
    const anchor: Anchor | null = before === undefined ? start : { ...before, planned: before.moment.planned }
    const instant = instantOf(time, expectedAt(anchor, moment.planned), place)
    moments.push([place_, instant])
    const one: Dated = { moment, at: instant, time, byScreen: false }
    const impossible =
      find(outOfOrder(one, before) ?? beforeZero(one, place), 'never') ||
      find(aheadOf(place.now, instant, time, place), 'never')
    if (impossible) continue
    if (anchor !== null)
      find(oddAt(wordsOf(moment), instant, time, moment.planned, anchor), own.sure ? 'told' : 'by-saying-so')
    dated.push(one)
  }
  return { dated, moments, findings }
}

/** The moment that has to come before: of a step inside a bath that bath's pour, else whatever was last. */
export const lastBefore = <D extends Dated>(dated: readonly D[], { index, inside }: SheetMoment): D | undefined =>
  dated.findLast(({ moment }) =>
    inside ? moment.side === 'in' && moment.index < index : !moment.inside && moment.index <= index,
  )

/** What a screen wrote down, as a moment of the sheet. */
function knownAt({ laid }: TankPlan, step: StepState | undefined, { index, side }: SheetMoment): Instant | null {
  if (side === 'out') return step?.pouredOut?.at ?? null
  if (side === 'done') return step?.done?.at ?? null
  const bath = laid[index]?.step
  if (step?.pouredIn == null || bath === undefined || !isBath(bath)) return null
  return step.pouredIn.at - pourBefore(bath) * 1000
}

const WORDS: Readonly<Record<Side, (name: string) => string>> = {
  in: (name) => `${name} in`,
  out: (name) => `${name} out`,
  done: (name) => name,
}
const wordsOf = ({ name, side }: SheetMoment): string => WORDS[side](name)

/** What is wrong with a moment that was surely before the one that it follows. */
export function outOfOrder({ moment, at, time }: Dated, before: Dated | undefined): Problem | null {
  if (before === undefined || !surelyBefore(at, time, before)) return null
  const [own, other] = [writeTimeOnClock(time), writeTimeOnClock(before.time)]
  if (moment.side === 'out' && before.moment.index === moment.index)
    return problem('paper.out-before-in', { name: moment.name, at: own, before: other })
  return problem('paper.out-of-order', {
    name: wordsOf(moment),
    at: own,
    other: wordsOf(before.moment),
    before: other,
  })
}

/** What is wrong with a moment that was surely before zero by the clock. */
export function beforeZero({ moment, at, time }: Dated, { zero = null }: Place): Problem | null {
  if (zero === null || !surelyBefore(at, time, zero)) return null
  const [own, other] = [writeTimeOnClock(time), writeTimeOnClock(zero.time)]
  return problem('paper.out-of-order', { name: wordsOf(moment), at: own, other: 'Zero', before: other })
}

/** Boxes that the sheet does not have: only somebody who sends a sheet without the form can fill them in. */
export function misplaced({ laid }: TankPlan, { steps }: WrittenTank, field: string): Finding[] {
  return steps.flatMap((written, i): Finding[] => {
    const place = `${field}.steps[${i}]`
    const step = laid[written.step]?.step
    const never = (found: Problem, at = place): Finding[] => [{ field: at, problem: found, stands: 'never' }]
    if (step === undefined) {
      const [bath, last] = [written.step, laid.length - 1]
      return never(problem('paper.unknown-step', { bath, last }), `${place}.step`)
    }
    if (steps.findIndex((other) => other.step === written.step) !== i)
      return never(problem('paper.step-twice', { name: step.name }))
    const foreign = (isBath(step) ? ['doneAt'] : ['inAt', 'outAt']) as readonly (keyof WrittenStep)[]
    const looks = !isBath(step) && step.kind === 'look'
    const wrong = foreign.some((box) => written[box] !== null) || (written.clearing !== null && !looks)
    return wrong ? never(problem('paper.not-a-box', { name: step.name })) : []
  })
}
