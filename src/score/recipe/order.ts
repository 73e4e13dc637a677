import { type Problem, problem } from '../../kernel/index.js'
import type { ActKind, BathKind, Recipe, Step } from './definition.js'
import { isBath } from './kinds.js'

/** What is wrong with the order of the steps. */
export function orderProblems({ steps }: Recipe): Problem[] {
  return [
    ...sameIds(steps),
    ...severalDevelopingTimes(steps),
    ...steps.flatMap((step, i) => [
      ...partedAt(steps, step, i),
      ...lostAct(steps, step, i),
      ...tooSoon(steps, step, i),
    ]),
  ]
}

function sameIds(steps: readonly Step[]): Problem[] {
  const at = steps.findIndex(({ id }, i) => steps.findIndex((other) => other.id === id) !== i)
  const double = steps[at]
  return double === undefined ? [] : [problem('recipe.same-id', { id: double.id }, `steps[${at}].id`)]
}

/** One film in one developer: one developing time for one list. */
function severalDevelopingTimes(steps: readonly Step[]): Problem[] {
  const ones = steps.filter((step) => isBath(step) && step.time.law === 'by-developing-time')
  return ones.length > 1 ? [problem('recipe.several-developing-times', { count: ones.length }, 'steps')] : []
}

function partedAt(steps: readonly Step[], step: Step, i: number): Problem[] {
  if (!isBath(step) || !step.neverPartFromNext) return []
  const next = steps[i + 1]
  if (next !== undefined && isBath(next)) return []
  return [problem('recipe.parted', { name: step.name, next: next?.name ?? 'nothing' }, `steps[${i}]`)]
}

/** A step inside a bath needs that bath before it, or another step inside the same bath. */
function lostAct(steps: readonly Step[], step: Step, i: number): Problem[] {
  if (isBath(step) || step.within === null) return []
  const before = steps[i - 1]
  if (before !== undefined && (isBath(before) || before.within !== null)) return []
  return [problem('recipe.act-without-bath', { name: step.name }, `steps[${i}]`)]
}

const NEEDS_LIGHT: readonly ActKind[] = ['lid-off', 'look', 'squeeze', 'hang-up', 're-expose']
/** From the pour of one of these on, light does no more harm. */
const LIGHT_SAFE: readonly BathKind[] = ['fix', 'single-bath', 'clear', 'reversal', 'bleach']

function tooSoon(steps: readonly Step[], step: Step, i: number): Problem[] {
  if (isBath(step) || !NEEDS_LIGHT.includes(step.kind)) return []
  const safe = steps.slice(0, i).some((before) => isBath(before) && LIGHT_SAFE.includes(before.kind))
  return safe ? [] : [problem('recipe.light-too-soon', { name: step.name }, `steps[${i}]`)]
}
